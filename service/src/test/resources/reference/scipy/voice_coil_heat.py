#!/usr/bin/env python3
"""Voice coils that warm up, integrated by SciPy alone.

The heat of each body is counted in joules: what the source gives, what passes from coil to magnet
and what the magnet gives to the air. The resistance of the wire follows its temperature coefficient
at 0 degrees Celsius, 1/234.5 for copper and 1/225 for aluminium.
"""
import numpy as np
import scipy
from scipy import integrate

from tables import printer

emit = printer("scipy-voice-coil-heat.csv")
ALPHA_0 = {"copper": 1 / 234.5, "aluminium": 1 / 225}


def ohm(wire, re, re_c, celsius):
    return re / (1 + ALPHA_0[wire] * re_c) * (1 + ALPHA_0[wire] * celsius)


def warmed(wire, re, re_c, air, held, watts, rc, rm, coil_s, magnet_s, seconds, limit):
    capacity = np.array([coil_s / rc, magnet_s / rm])
    volts = np.sqrt(watts * re)

    def watts_in(coil_c):
        return watts if held == "power" else volts**2 / ohm(wire, re, re_c, coil_c)

    def slope(_, joule):
        coil_c, magnet_c = air + joule / capacity
        passed = (coil_c - magnet_c) / rc
        return [watts_in(coil_c) - passed, passed - (magnet_c - air) / rm]

    def at_limit(_, joule):
        return air + joule[0] / capacity[0] - limit

    done = integrate.solve_ivp(
        slope, (0, seconds), [0, 0], method="Radau", events=at_limit, rtol=1e-11, atol=1e-9)
    assert done.success
    coil_c, magnet_c = air + done.y[:, -1] / capacity
    reached = f"{done.t_events[0][0]:.6g}" if len(done.t_events[0]) else ""
    return [coil_c, magnet_c, ohm(wire, re, re_c, coil_c), watts_in(coil_c)], reached


emit(f"""# title: Voice coils and magnets under held power and held voltage
# kind: computed
# source: SciPy {scipy.__version__}, scipy.integrate.solve_ivp with the implicit Radau method
# edition: script scipy/voice_coil_heat.py: heat balance of two bodies in joules; 86400 s stands for the end
# typed: not typed
# confirmed: the end of held power by hand: 20 + 60*(1.6 + 1.1) = 182 degrees
conductor,re_ohm,re_temperature_c,temperature_c,held,mean_power_w,coil_magnet_k_per_w,magnet_air_k_per_w,coil_s,magnet_s,duration_s,largest_coil_c,coil_c,magnet_c,hot_ohm,power_w,limit_after_s""")
for case in [
    ("copper", 3.4, 20, 20, "power", 60, 1.6, 1.1, 12, 1500, 10, 110),
    ("copper", 3.4, 20, 20, "power", 60, 1.6, 1.1, 12, 1500, 600, 110),
    ("copper", 3.4, 20, 20, "power", 60, 1.6, 1.1, 12, 1500, 86400, 180),
    ("aluminium", 6.2, 25, 45, "power", 12, 8, 6, 1.5, 240, 120, 150),
    ("copper", 3.4, 20, 20, "voltage", 60, 1.6, 1.1, 12, 1500, 10, 110),
    ("copper", 3.4, 20, 20, "voltage", 60, 1.6, 1.1, 12, 1500, 600, 110),
    ("copper", 3.4, 20, 20, "voltage", 60, 1.6, 1.1, 12, 1500, 86400, 120),
    ("aluminium", 6.2, 25, 45, "voltage", 40, 8, 6, 1.5, 240, 120, 150),
    ("aluminium", 3.1, 22, -20, "voltage", 300, 1.2, 0.6, 30, 3600, 900, 200),
    ("copper", 1.8, 18, 35, "voltage", 25, 3, 9, 100, 100, 250, 90),
]:
    values, reached = warmed(*case)
    emit(",".join([*map(str, case), *(f"{v:.10g}" for v in values), reached]))
