"""Writes ../scipy-band-levels.csv and ../scipy-pair-sums.csv.

Loudspeakers are digital filters of SciPy, given as second-order sections; the answers come from
scipy.signal.sosfreqz on a dense grid, not from impulse responses. Run with Python 3, NumPy, SciPy.
"""
import numpy as np
import scipy
from scipy import integrate, signal

from tables import table

RATE = 48000

SPEAKERS = {
    "full_range": signal.butter(2, [60, 18000], "band", fs=RATE, output="sos"),
    "door": signal.butter(4, [80, 2500], "band", fs=RATE, output="sos"),
    "tweeter": signal.cheby1(2, 2, 3000, "high", fs=RATE, output="sos"),
}


def header(title, source):
    return (
        f"# title: {title}\n# kind: computed\n# source: {source}\n"
        f"# edition: SciPy {scipy.__version__}, NumPy {np.__version__}\n"
        "# typed: written by scipy/measured_levels.py\n"
        "# confirmed: an independent general-purpose library\n"
    )


def text(sections):
    return " ".join(f"{value:.17g}" for value in np.asarray(sections).ravel())


def band_levels():
    for name, sections in SPEAKERS.items():
        for n in range(-10, 13, 2):
            middle = 1000 * 10 ** (n / 10)
            f = np.linspace(middle * 10**-0.05, middle * 10**0.05, 4001)
            _, h = signal.sosfreqz(sections, worN=f, fs=RATE)
            mean = integrate.trapezoid(np.abs(h) ** 2, f) / (f[-1] - f[0])
            yield name, text(sections), middle, 10 * np.log10(mean)


def linkwitz_riley(order, corner, kind):
    half = signal.butter(order // 2, corner, kind, fs=RATE, output="sos")
    return np.vstack([half, half])


def pair_sums():
    corner = 1500
    pairs = {
        f"linkwitz_riley_{order}": (
            linkwitz_riley(order, corner, "low"),
            linkwitz_riley(order, corner, "high"),
        )
        for order in (2, 4)
    }
    for order in (1, 3):
        pairs[f"butterworth_{order}"] = tuple(
            signal.butter(order, corner, kind, fs=RATE, output="sos") for kind in ("low", "high")
        )
    for name, (low, high) in pairs.items():
        _, a = signal.sosfreqz(low, worN=[corner], fs=RATE)
        _, b = signal.sosfreqz(high, worN=[corner], fs=RATE)
        for polarity in (1, -1):
            phase = np.degrees(np.angle(polarity * b[0] / a[0]))
            level = 20 * np.log10(max(abs(a[0] + polarity * b[0]), 1e-5))
            yield name, polarity, text(low), text(high), corner, phase, level


with table("scipy-band-levels.csv") as out:
    out.write(
        header(
            "Mean of |H|^2 over third octaves of loudspeakers made as digital filters, dB",
            "SciPy, scipy.signal.butter, cheby1 and sosfreqz, integrated by scipy.integrate.trapezoid",
        )
        + "speaker,sections,frequency_hz,level_db\n"
    )
    for name, sections, f, level in band_levels():
        out.write(f"{name},{sections},{f:.9g},{level:.6f}\n")

with table("scipy-pair-sums.csv") as out:
    out.write(
        header(
            "Crossover pairs as digital filters: phase of the high- less that of the low-pass at"
            " the corner, level of the sum there",
            "SciPy, scipy.signal.butter and sosfreqz",
        )
        + "pair,polarity,low_sections,high_sections,corner_hz,phase_deg,sum_db\n"
    )
    for name, polarity, low, high, corner, phase, level in pair_sums():
        out.write(f"{name},{polarity},{low},{high},{corner},{phase:.6f},{level:.6f}\n")
