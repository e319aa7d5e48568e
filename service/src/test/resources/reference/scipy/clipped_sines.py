"""Writes scipy-clipped-sines.csv and scipy-harmonic-fits.csv: python3 clipped_sines.py

The first integrates the Fourier coefficients of a clipped sine numerically. The second fits a sine
and its harmonics to made-up captures by least squares, at the frequency they were made with: another
way than a windowed spectrum.
"""
import numpy as np
import scipy
from scipy.integrate import quad

from tables import table

EDITION = f"# edition: SciPy {scipy.__version__}, NumPy {np.__version__}\n"
TYPED = "# typed: written by scipy/clipped_sines.py\n# confirmed: an independent general-purpose library\n"


def coefficient(order, top, bottom):
    breaks = sorted({0, np.arcsin(top), np.pi - np.arcsin(top), np.pi + np.arcsin(bottom),
                     2 * np.pi - np.arcsin(bottom), np.pi, 2 * np.pi})

    def part(turn):
        return sum(quad(lambda t: np.clip(np.sin(t), -bottom, top) * turn(order * t), a, b,
                        limit=200)[0] for a, b in zip(breaks, breaks[1:])) / np.pi

    return np.hypot(part(np.sin), part(np.cos))


with table("scipy-clipped-sines.csv") as out:
    out.write("# title: Harmonics over fundamental of a sine of amplitude 1 held at top and bottom\n"
              "# kind: computed\n# source: SciPy, scipy.integrate.quad over the Fourier integrals, harmonics 2 to 20\n")
    out.write(EDITION + TYPED)
    out.write("top,bottom,fundamental,all_percent,even_percent,odd_percent\n")
    for top, bottom in [(0.99, 0.99), (0.95, 0.95), (0.9, 0.9), (0.8, 0.8), (0.5, 0.5), (0.1, 0.1),
                        (0.9, 1), (0.7, 1), (0.8, 0.9), (0.95, 0.9)]:
        b = [coefficient(n, top, bottom) for n in range(1, 21)]
        even = np.sqrt(sum(x * x for x in b[1::2]))
        odd = np.sqrt(sum(x * x for x in b[2::2]))
        out.write(",".join(f"{x:.8f}" for x in (
            top, bottom, b[0], 100 * np.hypot(even, odd) / b[0], 100 * even / b[0],
            100 * odd / b[0])) + "\n")

RATE, SIZE = 8000, 1200
random = np.random.default_rng(20240611)
with table("scipy-harmonic-fits.csv") as out:
    out.write("# title: Harmonics up to 2000 Hz of noisy clipped sines at a rate of 8000 Hz\n"
              "# kind: computed\n# source: NumPy, numpy.linalg.lstsq of sine, harmonics and mean; noise of a fixed seed\n")
    out.write(EDITION + TYPED)
    out.write("tone_hz,fundamental_rms,even_percent,odd_percent,samples\n")
    for tone, top, bottom, noise in [(123.4, 0.6, 0.6, 0.0005), (211.7, 0.5, 0.65, 0.001),
                                     (97.3, 0.69, 0.69, 0.001), (333.3, 0.3, 0.3, 0.002)]:
        t = np.arange(SIZE) / RATE
        fine = np.arange(SIZE * 16) / (RATE * 16)
        wave = np.clip(0.7 * np.sin(2 * np.pi * tone * fine + 0.3), -bottom, top)
        count = int(2400 // tone)
        columns = [np.ones(len(fine))]
        for n in range(1, count + 1):
            columns += [np.sin(2 * np.pi * n * tone * fine), np.cos(2 * np.pi * n * tone * fine)]
        exact = np.linalg.lstsq(np.array(columns).T, wave, rcond=None)[0]
        basis = [np.ones(SIZE)]
        for n in range(1, count + 1):
            basis += [np.sin(2 * np.pi * n * tone * t), np.cos(2 * np.pi * n * tone * t)]
        basis = np.array(basis).T
        samples = np.round(basis @ exact + noise * random.standard_normal(SIZE), 5)
        fit = np.linalg.lstsq(basis, samples, rcond=None)[0]
        rms = [np.hypot(fit[2 * n - 1], fit[2 * n]) / np.sqrt(2)
               for n in range(1, int(2000 // tone) + 1)]
        even = np.sqrt(sum(x * x for x in rms[1::2]))
        odd = np.sqrt(sum(x * x for x in rms[2::2]))
        out.write(f"{tone},{rms[0]:.8f},{100 * even / rms[0]:.5f},{100 * odd / rms[0]:.5f},"
                  + " ".join(f"{x:g}" for x in samples) + "\n")
