"""Writes scipy-noise-bands.csv and scipy-low-shelves.csv: python3 noise_bands.py

Third-octave levels of made-up noise by Welch's method, another way than the energy of one
transform; and analog low shelves evaluated by scipy.signal.freqs.
"""
import numpy as np
import scipy
from scipy import integrate, signal

from tables import table

HEAD = (f"# edition: SciPy {scipy.__version__}, NumPy {np.__version__}\n"
        "# typed: written by scipy/noise_bands.py\n"
        "# confirmed: an independent general-purpose library\n")

RATE = 8000
random = np.random.default_rng(7)
samples = np.round(signal.sosfilt(signal.butter(1, 300, "low", fs=RATE, output="sos"),
                                  0.3 * random.standard_normal(8192)), 5)
f, density = signal.welch(samples, RATE, "boxcar", nperseg=8192, detrend="constant")
with table("scipy-noise-bands.csv") as out:
    out.write("# title: Third-octave levels of low-passed noise at a rate of 8000 Hz, dB over a full-scale sine\n"
              "# kind: computed\n# source: SciPy, scipy.signal.welch, density interpolated within the band edges of IEC 61260-1\n")
    out.write(HEAD + "frequency_hz,level_db,samples\n")
    text = " ".join(f"{x:g}" for x in samples)
    for k in range(-16, 4, 3):
        middle = 1000 * 10 ** (k / 10)
        edges = middle * 10 ** -0.05, middle * 10 ** 0.05
        fine = np.linspace(*edges, 200001)
        power = integrate.trapezoid(density[np.rint(fine / (f[1] - f[0])).astype(int)], fine)
        out.write(f"{middle:.6f},{10 * np.log10(2 * power):.6f},{text}\n")
        text = "-"

with table("scipy-low-shelves.csv") as out:
    out.write("# title: Low shelves of the second order, Q 0.7071, in dB at a ratio of frequencies\n"
              "# kind: computed\n# source: SciPy, scipy.signal.freqs of the analog low shelf of the Audio EQ Cookbook\n")
    out.write(HEAD + "gain_db,ratio,level_db\n")
    for gain in (-12, -6, 3, 9, 18):
        a, q = 10 ** (gain / 40), np.sqrt(0.5)
        _, h = signal.freqs([a, a * np.sqrt(a) / q, a * a], [a, np.sqrt(a) / q, 1],
                            [0.2, 0.5, 0.8, 1, 1.5, 4])
        for ratio, value in zip((0.2, 0.5, 0.8, 1, 1.5, 4), h):
            out.write(f"{gain},{ratio},{20 * np.log10(abs(value)):.8f}\n")
