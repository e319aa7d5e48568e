"""Writes ../scipy-arrivals.csv: arrivals in responses made and delayed by SciPy.

Each row is a loudspeaker as a digital filter of SciPy, delayed by a fraction of a sample by a
windowed sinc; the answer is the delay. Run with Python 3, NumPy and SciPy.
"""
import numpy as np
import scipy
from scipy import signal

from tables import table

RATE = 48000
LENGTH = 2048
HALF = 64

SPEAKERS = {
    "full_range": signal.butter(2, [80, 18000], "band", fs=RATE, output="sos"),
    "tweeter": signal.butter(2, 3000, "high", fs=RATE, output="sos"),
    "mid": signal.butter(2, [250, 4000], "band", fs=RATE, output="sos"),
}


def delayed(samples):
    n = np.arange(LENGTH)
    kernel = np.sinc(n - samples) * np.where(
        np.abs(n - samples) < HALF, np.cos(np.pi * (n - samples) / 2 / HALF) ** 2, 0
    )
    return kernel


with table("scipy-arrivals.csv") as out:
    out.write(
        "# title: Arrival and polarity of loudspeakers made as digital filters and delayed by"
        " fractions of a sample\n"
        "# kind: computed\n# source: SciPy, scipy.signal.butter and sosfilt on a windowed sinc\n"
        f"# edition: SciPy {scipy.__version__}\n"
        "# typed: written by scipy/impulse_responses.py; the answer is put in, not"
        " measured\n"
        "# confirmed: an independent general-purpose library\n"
        "speaker,polarity,delay_samples,response\n"
    )
    for name, sections in SPEAKERS.items():
        for polarity, samples in ((1, 300.25), (-1, 300.5), (1, 411.9)):
            response = polarity * signal.sosfilt(sections, delayed(samples))
            part = " ".join(f"{value:.6g}" for value in response[200:712])
            out.write(f"{name},{polarity},{samples - 200},{part}\n")
