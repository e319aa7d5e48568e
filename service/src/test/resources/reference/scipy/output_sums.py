"""Writes scipy-output-sums.csv: python3 output_sums.py

Three outputs as digital filters of SciPy with gains, delays and polarities, added as complex
numbers; one of them with an all-pass of the first order.
"""
import numpy as np
import scipy
from scipy import signal

from tables import table

RATE = 48000


def response(f, low, high, gain, delay, polarity, all_pass):
    z = np.exp(2j * np.pi * f / RATE)
    h = polarity * 10 ** (gain / 20) * np.exp(-2j * np.pi * f * delay / 1000) * np.ones_like(z)
    for kind, hz in (("low", low), ("high", high)):
        if hz:
            sos = signal.butter(2, hz, kind, fs=RATE, output="sos")
            h = h * signal.sosfreqz(np.vstack([sos, sos]), f, fs=RATE)[1]
    if all_pass:
        b, a = signal.bilinear([-1 / (2 * RATE * np.tan(np.pi * all_pass / RATE)), 1],
                               [1 / (2 * RATE * np.tan(np.pi * all_pass / RATE)), 1], RATE)
        h = h * signal.freqz(b, a, f, fs=RATE)[1]
    return h


f = np.array([80.0, 200, 400, 900, 1500, 2500, 4000, 8000])
with table("scipy-output-sums.csv") as out:
    out.write("# title: Level of the sum of three outputs: Linkwitz-Riley low-pass, band-pass and high-pass of the fourth order at 300 and 3000 Hz\n"
              "# kind: computed\n# source: SciPy, scipy.signal.butter twice, sosfreqz, bilinear for the all-pass; complex sum\n"
              f"# edition: SciPy {scipy.__version__}, NumPy {np.__version__}\n"
              "# typed: written by scipy/output_sums.py\n"
              "# confirmed: an independent general-purpose library\n")
    out.write("mid_polarity,high_delay_ms,mid_gain_db,mid_all_pass_hz,frequency_hz,level_db,in_phase_level_db\n")
    for polarity, delay, gain, turn in [(1, 0, 0, 0), (-1, 0, 0, 0), (1, 0.13, -2, 0), (1, 0, 0, 700),
                                        (-1, 0.4, 3, 1500)]:
        parts = [response(f, 300, 0, 0, 0, 1, 0), response(f, 3000, 300, gain, 0, polarity, turn),
                 response(f, 0, 3000, 0, delay, 1, 0)]
        for i, x in enumerate(f):
            out.write(f"{polarity},{delay},{gain},{turn},{x:g},"
                      f"{20 * np.log10(abs(sum(p[i] for p in parts))):.7f},"
                      f"{20 * np.log10(sum(abs(p[i]) for p in parts)):.7f}\n")
