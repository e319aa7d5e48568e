"""Writes ../scipy-fitted-filters.csv: errors left by filters that SciPy fits.

A response is a row of bells; fewer bells than it has are fitted to flatten it, by
scipy.optimize.least_squares within bounds from many seeded starts. What is printed is the smallest
RMS error found. The level to flatten to is the median. Run with Python 3, NumPy and SciPy.
"""
import numpy as np
import scipy
from scipy import optimize, signal

from tables import table

RATE = 48000
LOW, HIGH = 100, 10000
BOOST, CUT, Q_LOW, Q_HIGH = 4, 12, 0.5, 6
G = 10**0.3

CASES = {
    "two_bells": (2, [(300, 2, 6), (2500, 1.5, -3)]),
    "three_by_two": (2, [(250, 3, 7), (900, 1, 4), (4000, 2, -3)]),
    "five_by_three": (3, [(180, 4, 6), (420, 2, -3), (1100, 1, 5), (2600, 3, -2.5), (6000, 2, 4)]),
}

points = 1000 * G ** ((2 * np.arange(-120, 120) + 1) / 48)
points = points[(points >= LOW) & (points <= HIGH)]


def bell(f, q, gain):
    """The bell of the Audio EQ Cookbook by SciPy's bilinear transform."""
    a = 10 ** (gain / 40)
    w = 2 * RATE * np.tan(np.pi * f / RATE)
    return np.hstack(
        signal.bilinear([1, a / q * w, w * w], [1, w / (a * q), w * w], fs=RATE)
    ).reshape(1, 6)


def level(bells):
    total = np.zeros(len(points))
    for one in bells:
        _, h = signal.sosfreqz(bell(*one), worN=points, fs=RATE)
        total += 20 * np.log10(np.abs(h))
    return total


def best(count, measured):
    wanted = np.median(measured) - measured
    low = np.tile([np.log(LOW), np.log(Q_LOW), -CUT], count)
    high = np.tile([np.log(HIGH), np.log(Q_HIGH), BOOST], count)
    random = np.random.default_rng(1)

    def residuals(x):
        return level([(np.exp(f), np.exp(q), g) for f, q, g in x.reshape(-1, 3)]) - wanted

    fits = []
    for _ in range(40):
        start = low + (high - low) * random.uniform(0.05, 0.95, len(low))
        fits.append(optimize.least_squares(residuals, start, bounds=(low, high)))
    return min(np.sqrt(np.mean(fit.fun**2)) for fit in fits)


with table("scipy-fitted-filters.csv") as out:
    out.write(
        "# title: RMS error left, dB, when a response of several bells is flattened by fewer\n"
        "# kind: computed\n# source: SciPy, scipy.optimize.least_squares on curves of scipy.signal.sosfreqz\n"
        f"# edition: SciPy {scipy.__version__}, NumPy {np.__version__}\n"
        "# typed: written by scipy/fitted_filters.py; smallest of 40 seeded starts\n"
        "# confirmed: an independent general-purpose library\n"
        "case,count,sections,before_db,after_db\n"
    )
    for name, (count, bells) in CASES.items():
        measured = level(bells)
        before = np.sqrt(np.mean((measured - np.median(measured)) ** 2))
        sections = " ".join(f"{v:.17g}" for one in bells for v in bell(*one).ravel())
        out.write(f"{name},{count},{sections},{before:.6f},{best(count, measured):.6f}\n")
