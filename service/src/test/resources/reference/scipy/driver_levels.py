"""Writes driver-levels.csv: levels of invented drivers, not by the closed forms of the service.

The level of a displacement comes from the Rayleigh integral over the moving disc, taken numerically
far away on its axis and brought back to 1 m; frequencies are found by bracketing that integral;
levels of a power go by voltage.
"""

import math

import scipy
from scipy.integrate import quad
from scipy.optimize import brentq

from tables import printer

emit = printer("driver-levels.csv")

RHO = 1.2041
C = 343.2
P0 = 20e-6
FAR = 1000.0

HEADER = f"""\
# title: Levels and frequencies of invented drivers by power, voltage and displacement
# kind: computed
# source: Rayleigh integral of a rigid disc in a large baffle, numerically, on the axis at 1000 m and brought back to 1 m; electrical levels by voltage; air of 1.2041 kg/m³ and 343.2 m/s
# edition: SciPy {scipy.__version__} (scipy.integrate.quad, scipy.optimize.brentq)
# typed: written by scipy/driver_levels.py
# confirmed: an independent general-purpose library; the integral is in any acoustics text
"""

# rated ohm, stated level, basis, continuous W, cm², mm, Hz, clean V, reach level
DRIVERS = [
    (4, 91, "two_point_eight_three_volt", 25, 132, 2.0, 80, 8.9, 90),
    (4, 88, "one_watt", 80, 137, 5.0, 80, 17.3, 90),
    (2, 92, "two_point_eight_three_volt", 60, 210, 4.5, 60, 14.0, 95),
    (8, 94, "one_watt", 40, 350, 1.5, 60, 20.0, 90),
    (4, 86, "one_watt", 300, 490, 12.0, 40, 40.0, 100),
    (1, 90, "two_point_eight_three_volt", 500, 820, 18.0, 30, 25.0, 105),
    (6, 89.5, "two_point_eight_three_volt", 15, 52, 1.0, 150, 6.0, 85),
    (3, 93.2, "one_watt", 20, 12.5, 0.3, 1000, 7.5, 90),
    (4, 92, "one_watt", 10, 6.2, 0.2, 3000, 5.0, 90),
    (16, 101, "one_watt", 150, 855, 6.0, 45, 60.0, 110),
]


def level_of_travel(f, sd_cm2, x_mm):
    a = math.sqrt(sd_cm2 / 1e4 / math.pi)
    k = 2 * math.pi * f / C
    u = 2 * math.pi * f * x_mm / 1000

    def part(trig):
        # e^(-jk(R - FAR))/R: the phase of the distance itself does not count.
        def ring(r):
            distance = math.hypot(r, FAR)
            return trig(k * r * r / (distance + FAR)) / distance * r

        return quad(ring, 0, a, epsabs=0, epsrel=1e-12)[0]

    size = math.hypot(part(math.cos), part(math.sin))
    pressure = RHO * 2 * math.pi * f * u * size / math.sqrt(2) * FAR
    return 20 * math.log10(pressure / P0)


def frequency_of_travel(level, sd, x):
    return brentq(lambda f: level_of_travel(f, sd, x) - level, 0.1, 30000, xtol=1e-9)


emit(HEADER, end="")
emit(
    "rated_ohm,stated_db,basis,continuous_w,sd_cm2,xmax_mm,displacement_hz,clean_v,reach_db,"
    "one_watt_db,voltage_db,thermal_db,displacement_db,amplifier_db,largest_db,limited_by,"
    "below_hz,reach_hz"
)
for ohm, stated, basis, watt, sd, x, f, volt, reach in DRIVERS:
    watt_volt = math.sqrt(ohm)
    test_volt = watt_volt if basis == "one_watt" else 2.83

    def at_voltage(u):
        return stated + 20 * math.log10(u / test_volt)

    limits = {
        "thermal": at_voltage(math.sqrt(watt * ohm)),
        "displacement": level_of_travel(f, sd, x),
        "amplifier": at_voltage(volt),
    }
    least = min(limits, key=limits.get)
    below = frequency_of_travel(min(limits["thermal"], limits["amplifier"]), sd, x)
    figures = [
        at_voltage(watt_volt),
        at_voltage(2.83),
        *limits.values(),
        limits[least],
    ]
    emit(
        ",".join(
            [str(v) for v in (ohm, stated, basis, watt, sd, x, f, volt, reach)]
            + [f"{v:.6f}" for v in figures]
            + [least, f"{below:.6f}", f"{frequency_of_travel(reach, sd, x):.6f}"]
        )
    )
