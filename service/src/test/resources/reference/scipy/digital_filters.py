#!/usr/bin/env python3
"""Writes the tables of digital filters with SciPy (Debian: python3-scipy).

Responses are worked out with Python's decimal arithmetic of 50 digits, so that the figures are
those of the filter and not of the way they are computed.
"""
import cmath
import math
from decimal import Decimal, getcontext

import numpy
import scipy
from scipy import signal

from tables import table

getcontext().prec = 50
VERSION = f"SciPy {scipy.__version__}, NumPy {numpy.__version__}"
PI = Decimal("3.14159265358979323846264338327950288419716939937510")


def write(name, title, source, typed, confirmed, header, rows):
    with table(name) as out:
        out.write(f"# title: {title}\n# kind: computed\n# source: {source}\n# edition: {VERSION}\n")
        out.write(f"# typed: {typed}\n# confirmed: {confirmed}\n{header}\n")
        for row in rows:
            out.write(",".join(str(cell) for cell in row) + "\n")


class Complex:
    """A complex number of 50 digits."""

    def __init__(self, re, im=0):
        self.re, self.im = Decimal(re), Decimal(im)

    def __add__(self, o):
        return Complex(self.re + o.re, self.im + o.im)

    def __sub__(self, o):
        return Complex(self.re - o.re, self.im - o.im)

    def __mul__(self, o):
        return Complex(self.re * o.re - self.im * o.im, self.re * o.im + self.im * o.re)

    def __truediv__(self, o):
        n = o.re * o.re + o.im * o.im
        return Complex((self.re * o.re + self.im * o.im) / n, (self.im * o.re - self.re * o.im) / n)


def sincos(x):
    """Sine and cosine by their series; x below 2 pi."""
    sine, cosine, term, k = Decimal(0), Decimal(0), Decimal(1), 0
    while abs(term) > Decimal(10) ** -48 or k < 4:
        if k % 2 == 0:
            cosine += term if k % 4 == 0 else -term
        else:
            sine += term if k % 4 == 1 else -term
        k += 1
        term = term * x / k
    return sine, cosine


def on_circle(f, rate):
    s, c = sincos(2 * PI * Decimal(f) / Decimal(rate))
    return Complex(c, s)


def level(h):
    power = h.re * h.re + h.im * h.im
    return float(10 * power.log10())


def phase(h):
    return math.degrees(math.atan2(float(h.im), float(h.re)))


def exact(z, p, k, f, rate):
    """Response of zeros, poles and gain, and the group delay in samples."""
    at = on_circle(f, rate)
    h, delay = Complex(float(k)), Decimal(0)
    for zero in z:
        d = at - Complex(float(zero.real), float(zero.imag))
        h, delay = h * d, delay - (at / d).re
    for pole in p:
        d = at - Complex(float(pole.real), float(pole.imag))
        h, delay = h / d, delay + (at / d).re
    return h, float(delay)


def design(family, order, norm, side, f, rate):
    btype = {"low": "lowpass", "high": "highpass"}[side]
    if family == "butterworth":
        return signal.butter(order, f, btype, fs=rate, output="zpk")
    if family == "bessel":
        scipy_norm = {"magnitude": "mag", "phase": "phase", "delay": "delay"}[norm]
        return signal.bessel(order, f, btype, fs=rate, norm=scipy_norm, output="zpk")
    z, p, k = signal.butter(order // 2, f, btype, fs=rate, output="zpk")
    return numpy.concatenate([z, z]), numpy.concatenate([p, p]), k * k


FAMILIES = (
    [("butterworth", n, "-") for n in range(1, 9)]
    + [("linkwitz_riley", n, "-") for n in (2, 4, 6, 8)]
    + [("bessel", n, m) for n in range(1, 9) for m in ("magnitude", "phase", "delay")]
)


def responses():
    for family, order, norm in FAMILIES:
        for side in ("low", "high"):
            for corner, rate in ((20, 192000), (2500, 48000)):
                z, p, k = design(family, order, norm, side, corner, rate)
                for ratio in ("0.5", "1", "2"):
                    f = Decimal(corner) * Decimal(ratio)
                    h, delay = exact(z, p, k, f, rate)
                    yield (family, order, norm, side, corner, rate, f,
                           f"{level(h):.6f}", f"{phase(h):.6f}", f"{1000 * delay / rate:.8f}")


def prototype(kind, q, gain):
    """Analog prototypes of the Audio EQ Cookbook, highest power of s first."""
    a = 10 ** (gain / 40)
    r = math.sqrt(a) / q
    return {
        "peak": ([1, a / q, 1], [1, 1 / (a * q), 1]),
        "low_shelf": ([a, a * r, a * a], [a, r, 1]),
        "high_shelf": ([a * a, a * r, a], [1, r, a]),
        "all_pass_2": ([1, -1 / q, 1], [1, 1 / q, 1]),
        "notch": ([1, 0, 1], [1, 1 / q, 1]),
    }[kind]


SECTIONS = [
    ("peak", 100, 0.7071, 6, 44100), ("peak", 1000, 2, -9, 48000), ("peak", 12000, 5, 12, 48000),
    ("peak", 20, 10, -20, 192000), ("low_shelf", 80, 0.7071, 6, 48000),
    ("low_shelf", 300, 1.2, -12, 96000), ("high_shelf", 8000, 0.7071, -4, 44100),
    ("high_shelf", 2000, 0.5, 10, 48000), ("all_pass_2", 150, 0.6, 0, 48000),
    ("all_pass_2", 20, 4, 0, 192000), ("notch", 50, 8, 0, 48000), ("notch", 7000, 0.9, 0, 44100),
]


def sections():
    for kind, f, q, gain, rate in SECTIONS:
        n, d = prototype(kind, q, gain)
        w = 2 * rate * math.tan(math.pi * f / rate)
        scaled = [[c / w ** (2 - i) for i, c in enumerate(poly)] for poly in (n, d)]
        b, a = signal.bilinear(scaled[0], scaled[1], rate)
        yield (kind, f, q, gain, rate, *(f"{c:.12f}" for c in (*b, *a[1:])))


def rounded(value, fraction):
    if fraction == "-":
        return float(numpy.float32(value))
    return round(value * 2 ** int(fraction)) / 2 ** int(fraction)


def errors():
    for side in ("low", "high"):
        for corner, rate in ((20, 192000), (80, 48000), (1000, 48000)):
            b, a = signal.butter(2, corner, {"low": "lowpass", "high": "highpass"}[side], fs=rate)
            for fraction in ("-", "22", "30"):
                # A low-pass whose coefficients vanish in the word has no level.
                if fraction == "22" and corner == 20:
                    continue
                for ratio in ("0.5", "1", "2"):
                    f = Decimal(corner) * Decimal(ratio)
                    at = Complex(1) / on_circle(f, rate)
                    levels = []
                    for form in (lambda c: c, lambda c: rounded(c, fraction)):
                        n, d = ([Complex(form(float(c))) for c in poly] for poly in (b, a))
                        levels.append(level((n[0] + at * (n[1] + at * n[2]))
                                            / (d[0] + at * (d[1] + at * d[2]))))
                    yield (side, corner, rate, fraction, f, f"{levels[1] - levels[0]:.4f}")


def sums():
    """Two ways of one kind at 2 kHz and 48 kHz, the upper with polarity, delay in ms and gain."""
    kinds = [("butterworth", 1), ("butterworth", 2), ("butterworth", 3), ("butterworth", 4),
             ("linkwitz_riley", 2), ("linkwitz_riley", 4), ("linkwitz_riley", 6),
             ("linkwitz_riley", 8), ("bessel", 4)]
    for family, order in kinds:
        for polarity, delay, gain in ((1, 0, 0), (-1, 0, 0), (1, 0.1, -2)):
            ways = [design(family, order, "magnitude", side, 2000, 48000) for side in ("low", "high")]
            for f in ("1300", "2100", "3000"):
                h = [exact(*way, f, 48000)[0] for way in ways]
                late = cmath.exp(-2j * math.pi * float(f) * delay / 1000)
                factor = polarity * 10 ** (gain / 20) * late
                total = h[0] + h[1] * Complex(factor.real, factor.imag)
                yield (family, order, polarity, delay, gain, f,
                       f"{level(total):.6f}", f"{phase(total):.6f}")


write("scipy-digital-filters.csv",
      "Level, phase and group delay of digital filters",
      "SciPy, scipy.signal.butter and scipy.signal.bessel with fs and output='zpk'; Linkwitz-Riley"
      " as two Butterworth filters of half the order in a row",
      "written by scipy/digital_filters.py: products over zeros and poles in arithmetic of 50"
      " digits; bessel norm is mag, phase or delay (here magnitude, phase, delay)",
      "an independent general-purpose library",
      "family,order,normalisation,side,corner_hz,rate_hz,frequency_hz,level_db,phase_deg,"
      "group_delay_ms", responses())
write("scipy-equaliser-sections.csv",
      "Coefficients of equaliser sections",
      "SciPy, scipy.signal.bilinear of the analog prototypes in R. Bristow-Johnson, Audio EQ"
      " Cookbook, W3C Working Group Note, 8 June 2021",
      "written by scipy/digital_filters.py: prototypes typed from the note, scaled to the"
      " prewarped frequency",
      "an independent general-purpose library does the transform; the prototypes are as published",
      "kind,frequency_hz,q,gain_db,rate_hz,b0,b1,b2,a1,a2", sections())
write("scipy-rounded-sections.csv",
      "What rounding of its coefficients does to the level of a Butterworth filter of order 2",
      "SciPy, scipy.signal.butter; rounded by numpy.float32 (no fraction bits given) or to multiples"
      " of 2 to the minus fraction bits",
      "written by scipy/digital_filters.py: both levels from the coefficients in arithmetic of"
      " 50 digits",
      "an independent general-purpose library; two designs that differ in the last bit of a double"
      " seldom round differently",
      "side,corner_hz,rate_hz,fraction_bits,frequency_hz,error_db", errors())
write("scipy-crossover-sums.csv",
      "Level and phase of the sum of a low-pass and a high-pass at 2000 Hz and a rate of 48000 Hz",
      "SciPy, scipy.signal.butter and scipy.signal.bessel (norm mag), with polarity, delay and gain"
      " of the high-pass applied as complex factors",
      "written by scipy/digital_filters.py",
      "an independent general-purpose library",
      "family,order,upper_polarity,upper_delay_ms,upper_gain_db,frequency_hz,level_db,phase_deg",
      sums())
