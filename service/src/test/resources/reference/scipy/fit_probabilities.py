"""How likely sums of squares of normal errors are to be exceeded: writes fit-probabilities.csv with SciPy."""
import scipy
from scipy import stats

from tables import printer

emit = printer("fit-probabilities.csv")
emit("# title: Probability that a sum of squares of normal errors is exceeded")
emit("# kind: computed\n# source: SciPy: scipy.stats.chi2.sf")
emit(f"# edition: SciPy {scipy.__version__}; written by scipy/fit_probabilities.py beside this table")
emit("# typed: not typed")
emit("# confirmed: by the table of the chi-square distribution in handbooks: 3.841 for one degree of freedom and 18.307 for ten are"
     " exceeded by 5 % (from memory)")
emit("degrees,sum,probability")
for degrees in (1, 2, 5, 10, 30):
    for part in (0.1, 0.5, 1, 2, 4):
        emit(f"{degrees},{part * degrees:.6g},{stats.chi2.sf(part * degrees, degrees):.10g}")
emit(f"1,3.841,{stats.chi2.sf(3.841, 1):.10g}")
emit(f"10,18.307,{stats.chi2.sf(18.307, 10):.10g}")
