"""Writes ../scipy-wav-samples.csv: WAV files as SciPy writes them, in hexadecimal, and their samples.

Run with Python 3, NumPy and SciPy: python3 wav_files.py
"""

import io

import numpy as np
import scipy
from scipy.io import wavfile

from tables import table

VALUES = np.array([[0.0, 0.5], [-0.25, 0.125], [0.75, -1.0], [0.001, -0.001]])


def cases():
    yield "int16", 44100, (VALUES * 32767).astype(np.int16)
    yield "int32", 96000, (VALUES * 2147483647).astype(np.int32)
    yield "float32", 192000, VALUES.astype(np.float32)


def scaled(data):
    return data / -float(np.iinfo(data.dtype).min) if data.dtype.kind == "i" else data


with table("scipy-wav-samples.csv") as out:
    out.write(
        "# title: Small WAV files of two channels and the samples in them\n"
        "# kind: computed\n# source: SciPy, scipy.io.wavfile.write, integers scaled by the size of their least value\n"
        f"# edition: SciPy {scipy.__version__}\n"
        "# typed: written by scipy/wav_files.py\n"
        "# confirmed: an independent general-purpose library\n"
        "format,rate_hz,frame,channel,value,file_hex\n"
    )
    for name, rate, data in cases():
        file = io.BytesIO()
        wavfile.write(file, rate, data)
        for frame in range(len(data)):
            for channel in range(2):
                value = scaled(data)[frame, channel]
                out.write(f"{name},{rate},{frame},{channel},{value:.9g},{file.getvalue().hex()}\n")
