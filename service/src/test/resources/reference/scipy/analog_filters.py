"""Writes scipy-analog-filters.csv: analog filters with a corner of 1 rad/s by their zeros and poles."""
import cmath
import math

import numpy
import scipy
from scipy import signal

from tables import printer

emit = printer("scipy-analog-filters.csv")
NORMS = {"magnitude": "mag", "phase": "phase", "delay": "delay"}
FAMILIES = (
    [("butterworth", n, "-") for n in (1, 2, 3, 4, 5, 8)]
    + [("linkwitz_riley", n, "-") for n in (2, 4, 8)]
    + [("bessel", n, m) for m in NORMS for n in range(1, 9)]
)


def design(family, order, norm, side):
    if family == "bessel":
        return signal.bessel(order, 1, side, analog=True, norm=NORMS[norm], output="zpk")
    times = 2 if family == "linkwitz_riley" else 1
    z, p, k = signal.butter(order // times, 1, side, analog=True, output="zpk")
    return numpy.tile(z, times), numpy.tile(p, times), k**times


emit("# title: Magnitude, phase and group delay of analog filters with a corner of 1 rad/s")
emit("# kind: computed\n# source: SciPy, scipy.signal.butter and scipy.signal.bessel with analog=True and output='zpk';"
     " Linkwitz-Riley as two Butterworth filters of half the order in a row")
emit(f"# edition: SciPy {scipy.__version__}; bessel norm is mag, phase or delay (SciPy's names; here"
     " magnitude, phase, delay)")
emit("# typed: written by scipy/analog_filters.py: magnitude and angle of"
     " k*prod(jw - z)/prod(jw - p), group delay as the sum of Re(1/(jw - p)) over the poles, since"
     " zeros of these filters lie at 0 and only turn the phase by a constant; phase within -180 to 180")
emit("# confirmed: an independent general-purpose library; its Bessel poles come from published"
     " starting values and its own root finder")
emit("family,order,normalisation,side,w_rad_per_s,magnitude_db,phase_deg,group_delay_s")
for side in ("low", "high"):
    for family, order, norm in FAMILIES:
        z, p, k = design(family, order, norm, side)
        for w in (0.5, 1.0, 2.0):
            h = k * numpy.prod(1j * w - z) / numpy.prod(1j * w - p)
            delay = numpy.sum((1 / (1j * w - p)).real)
            emit(f"{family},{order},{norm},{side},{w},{20 * math.log10(abs(h)):.6f},"
                 f"{math.degrees(cmath.phase(h)):.6f},{delay:.8f}")
