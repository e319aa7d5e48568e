"""Writes scipy-phase-matches.csv: delays with which a lower channel adds to upper ones, by trying them all.

Nothing is solved: every delay of a fine grid is tried at every frequency of a fine grid, with responses from
the transfer functions of scipy.signal. Cases are typed again in the table, as the test reads them.
"""
import numpy as np
import scipy
from scipy import signal

from tables import printer

emit = printer("scipy-phase-matches.csv")

IN_OCTAVE = 192  # frequencies
IN_PERIOD = 24001  # delays
HARDLY_MORE_DB = 0.05
LR4, B4, B3, B2 = "linkwitz_riley 4", "butterworth 4", "butterworth 3", "butterworth 2"

# lower high-pass, lower low-pass, upper high-pass, upper channels, crossover, lower comes later by ms
CASES = [
    ("-", f"{LR4} 80", f"{LR4} 80", 1, 80, 0),
    ("-", f"{LR4} 80", f"{LR4} 80", 1, 80, 1.3),
    ("-", f"{LR4} 80", f"{LR4} 80", 2, 80, -4.4),
    (f"{B4} 35", f"{LR4} 80", f"{LR4} 80", 1, 80, 0),
    # Set early by the group delay of its subsonic filter at 80 Hz.
    (f"{B4} 35", f"{LR4} 80", f"{LR4} 80", 1, 80, -2.5018368640129456),
    (f"{B4} 35", f"{LR4} 80", f"{LR4} 80", 2, 80, 0),
    (f"{B2} 25", f"{LR4} 80", f"{LR4} 80", 2, 80, 0),
    ("-", "linkwitz_riley 2 80", "linkwitz_riley 2 80", 1, 80, 0),
    ("-", f"{B3} 100", f"{B3} 100", 1, 100, 0.4),
    ("-", f"{B4} 60", f"{LR4} 90", 2, 75, 0),
    ("-", "linkwitz_riley 8 120", f"{B2} 110", 2, 120, 0),
    (f"{B4} 35", f"{LR4} 80", "-", 2, 80, 0),
    ("-", f"{LR4} 250", f"{B2} 220", 1, 250, 0),
    (f"{B4} 70", f"{LR4} 300", f"{LR4} 300", 1, 300, 0),
]


def filtered(text, side, f):
    """Response of a filter given as kind, order and corner in Hz."""
    if text == "-":
        return np.ones_like(f, dtype=complex)
    kind, order, corner = text.split()
    times = 2 if kind == "linkwitz_riley" else 1
    b, a = signal.butter(int(order) // times, 2 * np.pi * float(corner), side, analog=True)
    return signal.freqs(b, a, worN=2 * np.pi * f)[1] ** times


def rows(case):
    lower_high, lower_low, upper_high, uppers, crossover, late = case
    octaves = np.arange(-2 * IN_OCTAVE if upper_high == "-" else -IN_OCTAVE // 2, IN_OCTAVE // 2 + 1) / IN_OCTAVE
    f = crossover * 2.0**octaves
    lower = filtered(lower_high, "high", f) * filtered(lower_low, "low", f) * np.exp(-2j * np.pi * f * late / 1000)
    upper = uppers * filtered(upper_high, "high", f)
    moduli = abs(lower) + abs(upper)
    delays = np.linspace(-500 / crossover, 500 / crossover, IN_PERIOD)
    for polarity in (1, -1):
        largest = np.zeros(IN_PERIOD)
        for w, low, up, modulus in zip(2 * np.pi * f, lower, upper, moduli):
            ratio = abs(up + polarity * low * np.exp(-1j * w * delays / 1000)) / modulus
            largest = np.minimum(largest, 20 * np.log10(np.maximum(ratio, 1e-5)))
        enough = np.flatnonzero(largest >= largest.max() - HARDLY_MORE_DB)
        # Of two alike the later one.
        nearest = max(enough, key=lambda i: (round(-abs(delays[i]), 6), delays[i]))
        yield polarity, delays[nearest], largest[nearest], largest[IN_PERIOD // 2]


emit("# title: Delay of a lower channel against flight time with the least largest loss around a crossover")
emit("# kind: computed\n# source: SciPy, the general-purpose scientific library: analog Butterworth prototypes and their"
     " frequency response (signal.butter, signal.freqs); Linkwitz-Riley as one of half the order squared; numpy for sums")
emit(f"# edition: SciPy {scipy.__version__}; written by scipy/phase_matches.py")
emit("# typed: not typed; every one of 24001 delays tried at 192 frequencies an octave. The rule (half an octave,"
     " half a period, 0.05 dB) is that of the method page")
emit("# confirmed: an independent general-purpose library and another way of searching")
emit("lower_high_pass,lower_low_pass,upper_high_pass,uppers,crossover_hz,late_ms,polarity,delay_ms,largest_loss_db,"
     "flight_loss_db")
for case in CASES:
    for polarity, *figures in rows(case):
        emit(",".join(str(cell) for cell in case) + f",{polarity}," + ",".join(f"{round(x, 4) + 0:.4f}" for x in figures))
