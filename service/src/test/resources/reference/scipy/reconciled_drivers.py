#!/usr/bin/env python3
"""Writes scipy-reconciled-drivers.csv: least squares over six logarithms, by SciPy.

Independent of the service: the model is written in SI units from the definitions of the
quantities, and solved as a general nonlinear problem with a numerical Jacobian.
"""
import csv

import numpy as np
import scipy
from scipy.optimize import least_squares

from tables import printer

emit = printer("scipy-reconciled-drivers.csv")

RHO, C = 1.2041, 343.2
FIELDS = ["re_ohm", "fs_hz", "qms", "qes", "qts", "vas_l", "sd_cm2", "bl_tm", "mms_g",
          "cms_mm_per_n", "rms_kg_per_s", "level_db_spl"]
FIGURE_SIGMA = 0.02
LEVEL_SIGMA_DB = 1.0


def model(x, rated, basis):
    sd, cms, mms, bl, re, rms = np.exp(x)  # m², m/N, kg, T·m, ohm, kg/s
    ws = 1 / np.sqrt(mms * cms)
    qms, qes = ws * mms / rms, ws * mms * re / bl**2
    volts = 2.83 if basis == "two_point_eight_three_volt" else np.sqrt(rated)
    pressure = RHO * (bl * volts / re / mms) * sd / (2 * np.pi)
    return {
        "re_ohm": re, "fs_hz": ws / (2 * np.pi), "qms": qms, "qes": qes,
        "qts": 1 / (1 / qms + 1 / qes), "vas_l": RHO * C**2 * sd**2 * cms * 1000,
        "sd_cm2": sd * 1e4, "bl_tm": bl, "mms_g": mms * 1000, "cms_mm_per_n": cms * 1000,
        "rms_kg_per_s": rms, "level_db_spl": 20 * np.log10(pressure / 20e-6),
    }


def deviations(x, case):
    computed = model(x, case["rated_ohm"], case["basis"])
    return np.array([
        (case[f] - computed[f]) / LEVEL_SIGMA_DB if f == "level_db_spl"
        else np.log(case[f] / computed[f]) / FIGURE_SIGMA
        for f in FIELDS if case.get(f) is not None])


def solve(case, start):
    return least_squares(deviations, start, args=(case,), jac="3-point", method="trf",
                         x_scale=1.0, ftol=1e-15, xtol=1e-15, gtol=1e-15, max_nfev=2000)


def cases():
    random = np.random.default_rng(7)
    starts = {
        "woofer": [0.0330, 0.28e-3, 0.062, 9.5, 3.4, 2.1],
        "midwoofer": [0.0133, 0.62e-3, 0.0145, 5.8, 3.3, 0.9],
        "tweeter": [0.0007, 0.07e-3, 0.00035, 2.7, 3.1, 1.1],
    }
    left_out = [[], ["rms_kg_per_s"], ["mms_g", "rms_kg_per_s"], ["cms_mm_per_n", "mms_g"],
                ["qes", "rms_kg_per_s", "level_db_spl"], ["sd_cm2", "level_db_spl"],
                ["mms_g", "cms_mm_per_n", "rms_kg_per_s", "bl_tm", "sd_cm2", "level_db_spl"]]
    for name, start in starts.items():
        for number, left in enumerate(left_out):
            basis = ["one_watt", "two_point_eight_three_volt"][number % 2]
            x = np.log(start)
            exact = model(x, 4, basis)
            case = {"case": f"{name} {number + 1}", "rated_ohm": 4, "basis": basis}
            for f in FIELDS:
                if f not in left:
                    scatter = random.normal(0, 0.04)
                    value = exact[f] + 25 * scatter if f == "level_db_spl" else exact[f] * np.exp(scatter)
                    case[f] = float(f"{value:.5g}")
            if number == 1:
                case["vas_l"] = float(f"{case['vas_l'] * 1.4:.5g}")  # one figure far off
            yield case, x


def main():
    out = csv.writer(emit.keywords["file"], lineterminator="\n")
    emit("# title: Drivers with contradictory figures and the nearest figures that agree")
    emit("# kind: computed\n# source: SciPy, scipy.optimize.least_squares over the logarithms of sd, cms, mms, bl, re and rms, numerical Jacobian; model in SI from the definitions")
    emit(f"# edition: SciPy {scipy.__version__}; scipy/reconciled_drivers.py writes this table; 2 percent for each figure, 1 dB for the level, rho 1.2041, c 343.2")
    emit("# typed: pasted from its output; one row for each figure that others confirm; deviations is residual over its own standard deviation, from the pseudo-inverse of the Jacobian")
    emit("# confirmed: an independent general-purpose library; the drivers are invented")
    out.writerow(["case", "rated_ohm", "basis"] + FIELDS + ["field", "adjusted", "deviations"])
    for case, start in cases():
        fit = solve(case, start)
        given = [f for f in FIELDS if case.get(f) is not None]
        leverage = np.diag(fit.jac @ np.linalg.pinv(fit.jac.T @ fit.jac, rcond=1e-9) @ fit.jac.T)
        computed = model(fit.x, case["rated_ohm"], case["basis"])
        for f, h, r in zip(given, leverage, fit.fun):
            if 1 - h > 1e-4:
                out.writerow([case["case"], case["rated_ohm"], case["basis"]]
                             + [case.get(g, "") for g in FIELDS]
                             + [f, f"{computed[f]:.8g}", f"{abs(r) / np.sqrt(1 - h):.5f}"])


main()
