#!/usr/bin/env python3
"""Drivers and boxes that make textbook filters, found with SciPy alone.


A high-pass filter of order four from scipy.signal is held against the denominator of a vented box
with leaks, s^4 + s^3 (1/qts + h/ql) + s^2 (1 + alpha + h^2 + h/(ql qts)) + s (h^2/qts + h/ql) + h^2
in units of the driver's resonance, and solved for qts, alpha, h and the filter's frequency.
Corners, peak and delay then come from the filter's own poles, not from the box.
"""
import numpy as np
import scipy
from scipy import optimize, signal

from tables import printer

emit = printer("scipy-vented-alignments.csv")


def highpass(name):
    if name == "butterworth":
        poles = signal.butter(4, 1, "highpass", analog=True, output="zpk")[1]
    elif name.startswith("quasi"):
        # |G|^2 = y^8 / (y^8 + c y^2 + 1), y^2 = -s^2; the stable half of its poles.
        roots = np.roots([1, 0, 0, 0, 0, 0, -float(name.split("-")[1]), 0, 1])
        poles = roots[roots.real < 0]
    elif name == "bessel":
        poles = signal.bessel(4, 1, "highpass", analog=True, output="zpk", norm="phase")[1]
    else:
        ripple = float(name.split("-")[1])
        poles = signal.cheby1(4, ripple, 1, "highpass", analog=True, output="zpk")[1]
    return poles / np.prod(np.abs(poles)) ** 0.25


def solve(poles, ql):
    b3, b2, b1 = np.real(np.poly(poles))[1:4]

    def misfit(u):
        qts, alpha, h, w = u
        return [
            1 / qts + h / ql - b3 * w,
            1 + alpha + h * h + h / (ql * qts) - b2 * w**2,
            h * h / qts + h / ql - b1 * w**3,
            h * h - w**4,
        ]

    found = optimize.fsolve(misfit, [0.4, 1.2, 1.0, 1.0], xtol=1e-13)
    assert max(map(abs, misfit(found))) < 1e-11
    return found


def level(poles, x):
    return 20 * np.log10(x**4 / np.abs(np.prod(1j * x - poles)))


def delay(poles, x):
    """Times the driver's resonance in Hz: the sum over the poles, in closed form."""
    s = 1j * x - poles
    return np.sum(np.real(1 / s)) / (2 * np.pi)


def corner(poles, drop):
    xs = np.geomspace(20, 0.05, 4000)
    below = np.argmax([level(poles, x) < -drop for x in xs])
    return optimize.brentq(lambda x: level(poles, x) + drop, xs[below], xs[below - 1], xtol=1e-14)


def peak(poles):
    xs = np.geomspace(0.05, 200, 4000)
    best = xs[np.argmax([level(poles, x) for x in xs])]
    found = optimize.minimize_scalar(
        lambda x: -level(poles, x), bounds=(best / 1.01, best * 1.01), method="bounded",
        options={"xatol": 1e-12})
    return -found.fun if found.fun < -1e-9 else 0.0


emit(f"""# title: Drivers and vented boxes that make Butterworth, Bessel, Chebyshev and quasi-Butterworth filters of order four
# kind: computed
# source: SciPy {scipy.__version__}, scipy.signal.butter, bessel and cheby1 and numpy.roots for the poles, scipy.optimize.fsolve for driver and box
# edition: script scipy/vented_alignments.py, which gives the equations; ql 100000 stands for none; delays are times the driver's resonance
# typed: not typed
# confirmed: the Butterworth rows round to Thiele's lossless B4 (0.383, 1.414, 1) and to Small's with QL 7 (0.405, 1.061, 1)
filter,ql,qts,alpha,h,f3_over_fs,f10_over_fs,peak_db,x1,delay1,x2,delay2""")
for name in ["butterworth", "bessel", "chebyshev-0.2", "chebyshev-1.0", "quasi-1", "quasi-4"]:
    for ql in [100000, 7]:
        unit = highpass(name)
        qts, alpha, h, w = solve(unit, ql)
        poles = unit * w
        row = [qts, alpha, h, corner(poles, 10 * np.log10(2)), corner(poles, 10),
               peak(poles), 0.7, delay(poles, 0.7), 1.6, delay(poles, 1.6)]
        emit(",".join([name, str(ql)] + [f"{v:.10g}" for v in row]))
