"""What feeds the amplifiers of a plan, for the tables of whole vehicles."""
import numpy as np
from scipy import optimize

from vehicle_circuit import cable_ohm

FEED_C = 50


def feed(plan, a):
    amp = plan["amplifiers"][a]
    line = amp["feed"]
    cable = line["cable"]
    sigma = cable.get("conductivity", 0.629 if cable["material"] == "copper_clad_aluminium" else 1)
    ways = 2 if line["return_path"] == "cable" else 1
    ohm = cable_ohm(ways * cable["one_way_m"], cable["area_mm2"], cable.get("conductor_temperature_c", FEED_C), sigma)
    return ohm + line.get("contacts_ohm", 0) + line.get("body_ohm", 0)


def sources(plan):
    """Of each situation: held voltage, current up to which it is held, open voltage and resistance behind."""
    s = plan["supply"]
    if "battery_v" in s:
        return {"cruising": (s["battery_v"], np.inf, 0, 0)}
    alt, bat, con = s["alternator"], s["battery"], s["consumers"]
    ri = bat.get("internal_ohm", 0.01)
    out = {}
    for name, amps in (("cruising", alt["cruise_a"]), ("idling", alt["idle_a"])):
        left = amps - con["running_a"]
        out[name] = (alt["voltage_v"], left, bat["resting_v"] + ri * left, ri)
    out["engine_off"] = (None, 0, bat["resting_v"] - ri * con["engine_off_a"], ri)
    return out


def meet(source, loads):
    """Highest voltage at the battery with which all loads (watts, at_v or None, loop ohm) get what they draw."""
    held, left, open_v, ri = source

    def currents(u):
        out = []
        for watts, at, loop in loads:
            if at:
                out.append(u / (loop + at * at / watts))
            else:
                room = u * u - 4 * loop * watts
                out.append(2 * watts / (u + np.sqrt(room)) if room >= 0 else np.nan)
        return np.array(out)

    def result(u):
        i = currents(u)
        return u, i, u - i * np.array([x[2] for x in loads])

    if held and np.nansum(currents(held)) <= left and not np.isnan(currents(held)).any():
        return result(held)
    gap = lambda u: open_v - ri * currents(u).sum() - u
    top = min(held, open_v) if held else open_v
    grid = np.linspace(top, 0.5, 20001)
    for hi, lo in zip(grid, grid[1:]):
        g = gap(lo)
        if np.isnan(g):
            return None
        if g >= 0:
            return result(optimize.brentq(gap, lo, hi, xtol=1e-13) if gap(hi) < 0 else hi)
    return None
