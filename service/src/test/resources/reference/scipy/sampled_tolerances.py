"""Writes ../scipy-sobol-points.csv, ../scipy-distributions.csv and ../scipy-rank-correlations.csv.

Points of the Sobol' sequence as they come, not scrambled; quantiles of the distributions a true value
may have around a stated one, in parts of the stated +-, which for the normal one holds 95 of 100; and
Spearman's rank correlation of made-up series, some with ties. Run with Python 3, NumPy and SciPy.
"""
import numpy as np
import scipy
from scipy import stats
from scipy.stats import qmc

from tables import table

EDITION = f"# edition: SciPy {scipy.__version__}, NumPy {np.__version__}\n"
TYPED = "# typed: written by scipy/sampled_tolerances.py\n"
CONFIRMED = "# confirmed: an independent general-purpose library\n"

COORDINATES = 8
POINTS = 32

with table("scipy-sobol-points.csv") as out:
    out.write(
        "# title: First points of the Sobol' sequence in eight coordinates\n"
        "# kind: computed\n# source: SciPy, scipy.stats.qmc.Sobol, scramble=False\n"
        + EDITION + TYPED + CONFIRMED
        + "point,coordinate,value\n"
    )
    for n, point in enumerate(qmc.Sobol(COORDINATES, scramble=False).random(POINTS)):
        for i, value in enumerate(point):
            out.write(f"{n},{i},{value:.17g}\n")

LAWS = {
    "normal": stats.norm(scale=1 / stats.norm.ppf(0.975)),
    "uniform": stats.uniform(-1, 2),
    "triangular": stats.triang(0.5, -1, 2),
}

with table("scipy-distributions.csv") as out:
    out.write(
        "# title: Quantiles and standard deviations of distributions, in parts of the stated +-\n"
        "# kind: computed\n# source: SciPy, scipy.stats.norm, uniform and triang\n"
        + EDITION + TYPED + CONFIRMED
        + "distribution,share,quantile,deviation\n"
    )
    for name, law in LAWS.items():
        for share in (1e-6, 0.001, 0.025, 0.05, 0.2, 0.5, 0.75, 0.95, 0.975, 0.9999):
            quantile = law.ppf(share)
            out.write(f"{name},{share},{quantile:.10g},{law.std():.10g}\n")

random = np.random.default_rng(1)

with table("scipy-rank-correlations.csv") as out:
    out.write(
        "# title: Spearman's rank correlation of series, some with ties\n"
        "# kind: computed\n# source: SciPy, scipy.stats.spearmanr\n"
        + EDITION + TYPED + CONFIRMED
        + "first,second,correlation\n"
    )
    for slope, decimals in ((0, 3), (1, 3), (-3, 3), (1, 0), (5, 1), (0.3, 0)):
        first = np.round(random.normal(size=40), decimals)
        second = np.round(slope * first + random.normal(size=40), decimals)
        rho = stats.spearmanr(first, second)[0]
        rows = [" ".join(f"{v:g}" for v in row + 0.0) for row in (first, second)]
        out.write(f"{rows[0]},{rows[1]},{rho:.10g}\n")
