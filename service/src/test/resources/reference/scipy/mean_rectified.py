"""Writes scipy-mean-rectified.csv: what both halves of a class AB stage carry together.

The mean is taken piece by piece, since a current without quiescent part has a corner at 0.
"""
import math

import scipy
from scipy.integrate import quad
from scipy.stats import halfnorm, norm

from tables import printer

emit = printer("scipy-mean-rectified.csv")
PIECES = [0, 0.1, 1, 4, 12]


def mean(rms, quiescent):
    if quiescent == 0:
        return halfnorm.mean(scale=rms)
    return sum(
        2 * quad(lambda x: math.sqrt((rms * x) ** 2 + 4 * quiescent**2) * norm.pdf(x), a, b)[0]
        for a, b in zip(PIECES, PIECES[1:])
    )


emit("# title: Mean of the square root of i^2 + 4 Iq^2 for Gaussian i: what both halves of a class AB"
     " stage carry together")
emit("# kind: computed\n# source: SciPy, scipy.integrate.quad over scipy.stats.norm.pdf; the rows without quiescent"
     " current scipy.stats.halfnorm.mean")
emit(f"# edition: SciPy {scipy.__version__}")
emit("# typed: written by scipy/mean_rectified.py")
emit("# confirmed: for Iq = 0 it is sqrt(2 / pi) = 0.797885 times the RMS value, the mean of the"
     " half-normal distribution")
emit("rms_a,quiescent_a,mean_a")
for rms, quiescent in [(1, 0), (2.5, 0), (1, 0.01), (1, 0.1), (3, 0.05), (0.2, 0.5), (5, 1)]:
    emit(f"{rms},{quiescent},{mean(rms, quiescent):.10g}")
