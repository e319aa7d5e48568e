#!/usr/bin/env python3
"""Adds three sources with filters, delays and distances as complex pressures, by scipy.

Writes seat-sums.csv.
The case is that of SeatSums in the tests: no limits, a cabin of 3 m with 0.5 m critical distance.
"""
import numpy as np
import scipy
from scipy import signal

from tables import printer

emit = printer("seat-sums.csv")

C = 343.2  # m/s at 20 C
FREQUENCIES = [1000 * 10 ** (n / 10) for n in range(-17, 12)]


def butter(order, corner, kind):
    return signal.butter(order, 2 * np.pi * corner, kind, analog=True)


def response(parts, f):
    h = 1
    for b, a in parts:
        h *= signal.freqs(b, a, worN=[2 * np.pi * f])[1][0]
    return h


def roll_off(fc, q):
    w = 2 * np.pi * fc
    return [1, 0, 0], [1, w / q, w * w]


# Linkwitz-Riley of order 4 is a Butterworth of order 2 twice.
SOURCES = [
    # level at 1 m with all of the amplifier, electrical parts, acoustic part, delay ms, polarity, trim
    (86 + 10 * np.log10(300), [butter(2, 80, "low")] * 2, roll_off(45, 0.8), 0.0, 1, -3.0),
    (89 + 10 * np.log10(75), [butter(2, 80, "high")] * 2 + [butter(3, 2500, "low")],
     roll_off(60, 0.7), 5.2, 1, 0.0),
    (92 - 10 * np.log10(2.83 ** 2 / 4) + 10 * np.log10(12 ** 2 / 4),
     [butter(3, 2500, "high")], None, 1.7, -1, -6.0),
]
DISTANCES = {"driver": [2.4, 1.1, 0.45], "passenger": [2.3, 1.5, 0.9]}


def cabin(f):
    return min(9.0, max(0.0, 40 * np.log10(C / 6 / f)))


emit("# title: Three sources with filters, roll-offs, delays, polarity and trims, added as complex"
     " pressures at two seats")
emit("# kind: computed\n# source: SciPy, the general-purpose scientific library: analog Butterworth prototypes and"
     " their frequency response (signal.butter, signal.freqs); numpy for the sums")
emit(f"# edition: SciPy {scipy.__version__}; written by scipy/seat_sums.py")
emit("# typed: not typed; four decimals")
emit("# confirmed: the case is written down twice, in the script and in the test")
emit("seat,frequency_hz,coherent_level_db_spl,incoherent_level_db_spl")
for seat, ways in DISTANCES.items():
    for f in FREQUENCIES:
        total, power = 0, 0
        for (level, parts, own, delay, polarity, trim), r in zip(SOURCES, ways):
            h = response(parts + ([own] if own else []), f) * polarity
            db = level + trim + cabin(f) - 20 * np.log10(min(r, 0.5))
            p = 10 ** (db / 20) * h * np.exp(-2j * np.pi * f * (delay / 1000 + r / C))
            total += p
            power += abs(p) ** 2
        emit(f"{seat},{f:.6f},{20 * np.log10(abs(total)):.4f},{10 * np.log10(power):.4f}")
