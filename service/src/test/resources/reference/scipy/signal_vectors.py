"""Writes ../scipy-signal-vectors.csv: values of SciPy and NumPy that the signal room is held against.

Run with Python 3, NumPy and SciPy: python3 signal_vectors.py
"""
import numpy as np
import scipy
from scipy import signal

from tables import table

SIZE = 64


def noise(size):
    """Integers from -1 to 1 by a linear congruential generator, so that Java makes the same."""
    values, state = [], 12345
    for _ in range(size):
        state = (1103515245 * state + 12345) % 2**31
        values.append(state / 2**30 - 1)
    return np.array(values)


def rows():
    x = noise(SIZE)
    spectrum = np.fft.rfft(x)
    for k in (0, 1, 5, 17, 31, 32):
        yield "rfft_re", k, spectrum[k].real
        yield "rfft_im", k, spectrum[k].imag
    envelope = np.abs(signal.hilbert(x))
    for n in (0, 1, 20, 63):
        yield "hilbert_envelope", n, envelope[n]
    for name in ("hann", "blackman", "blackmanharris"):
        window = signal.get_window(name, 16, fftbins=True)
        for n in (0, 1, 5, 8, 15):
            yield name, n, window[n]
    rate, seconds = 8000, 0.5
    t = np.arange(int(rate * seconds)) / rate
    # phi turns SciPy's cosine into a sine.
    sweep = signal.chirp(t, 50, seconds, 2000, method="logarithmic", phi=-90)
    for n in (0, 1, 100, 1999, 3999):
        yield "chirp", n, sweep[n]
    taps = np.zeros(SIZE)
    taps[:5] = [0.1, 0.4, 1.0, 0.4, 0.1]
    minimum = np.fft.ifft(np.exp(folded(np.log(np.abs(np.fft.fft(taps)))))).real
    for n in range(6):
        yield "minimum_phase", n, minimum[n]
    octave = np.sum(np.abs(spectrum[6:12]) ** 2) * 2 / SIZE
    yield "band_energy", 0, octave


def folded(log_magnitude):
    """Complex logarithm of the minimum-phase response, by SciPy's own Hilbert transform."""
    return log_magnitude - 1j * np.imag(signal.hilbert(log_magnitude))


with table("scipy-signal-vectors.csv") as out:
    out.write(
        "# title: Spectrum, envelope, windows, sweep and minimum phase of small made-up signals\n"
        "# kind: computed\n# source: SciPy and NumPy: numpy.fft.rfft, scipy.signal.hilbert, get_window, chirp; minimum"
        " phase as the Hilbert transform of the logarithm of the magnitude\n"
        f"# edition: SciPy {scipy.__version__}, NumPy {np.__version__}\n"
        "# typed: written by scipy/signal_vectors.py\n"
        "# confirmed: an independent general-purpose library\n"
        "quantity,index,value\n"
    )
    for quantity, index, value in rows():
        out.write(f"{quantity},{index},{value:.12g}\n")
