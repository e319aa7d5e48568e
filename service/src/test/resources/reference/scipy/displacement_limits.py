"""Lowest high-pass corner that keeps a cone within its displacement, by bisection.

Writes crossover-displacement-limits.csv; nothing here comes from the service. For each corner the
largest displacement is looked for on a dense grid; the corner is bisected until it is xmax.
"""
import numpy as np
import scipy
from scipy import optimize, signal

from tables import printer

emit = printer("crossover-displacement-limits.csv")

RHO = 1.2041


def largest(corner, kind, order, sd, fs, q, level):
    lo, hi = min(fs, corner) / 50, 4 * max(fs, corner)
    grid = np.geomspace(lo, hi, 60001)
    # Newton and a piston: force constant, p(1 m) = rho * Sd * acceleration / (2 pi), half space.
    pressure = 20e-6 * 10 ** (level / 20)
    top = pressure * 2 * np.pi / (RHO * sd * 1e-4) * np.sqrt(2)  # peak acceleration, m/s2
    b, a = [1 / (2 * np.pi * fs) ** 2], [1 / (2 * np.pi * fs) ** 2, 1 / (2 * np.pi * fs * q), 1]
    cone = abs(signal.freqs(b, a, 2 * np.pi * grid)[1])          # displacement per acceleration
    n, times = (order, 1) if kind == "butterworth" else (order // 2, 2)
    hb, ha = signal.butter(n, 1, "highpass", analog=True)
    skirt = abs(signal.freqs(hb, ha, grid / corner)[1]) ** times
    return np.max(top * cone * skirt) * 1000


emit("# title: Lowest high-pass corner that keeps the displacement of a driver within xmax")
emit("# kind: computed\n# source: SciPy, scipy.optimize.brentq over the largest displacement on a grid of 60001"
      " frequencies; mass, spring and damper of the driver and scipy.signal.butter (analog=True),"
      " Linkwitz-Riley as two of half the order; pressure of a piston in half space at 1 m from its"
      " acceleration")
emit(f"# edition: SciPy {scipy.__version__}; air 1.2041 kg/m³")
emit("# typed: written by scipy/displacement_limits.py beside this table")
emit("# confirmed: far above the resonance the corners are those worked by hand in"
      " crossover-skirts-by-hand.csv")
emit("kind,order,sd_cm2,xmax_mm,fs_hz,qts,level_db_spl,lowest_hz")
DRIVERS = ((6.2, 0.4, 1100, 0.8, 103), (6.2, 0.25, 600, 1.4, 110), (137, 5, 60, 0.6, 103),
           (50, 1, 250, 0.5, 112))
for sd, xmax, fs, q, level in DRIVERS:
    for kind, order in (("butterworth", 1), ("butterworth", 2), ("butterworth", 3),
                        ("linkwitz_riley", 2), ("linkwitz_riley", 4), ("linkwitz_riley", 8)):
        f = lambda lg: largest(np.exp(lg), kind, order, sd, fs, q, level) - xmax
        if f(np.log(1)) <= 0:
            emit(f"{kind},{order},{sd},{xmax},{fs},{q},{level},0")
            continue
        corner = np.exp(optimize.brentq(f, np.log(1), np.log(1e6), xtol=1e-10))
        emit(f"{kind},{order},{sd},{xmax},{fs},{q},{level},{corner:.4f}")
