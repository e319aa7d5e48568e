"""Writes scipy-vehicle-curves.csv: two vehicles at single frequencies, with a full-scale sine and the settings of the sheet.

The vehicles are those of whole_vehicles.py, worked out from the definitions alone; here their circuits are solved at the very
frequencies asked for.
"""
import json

import numpy as np
import scipy
from scipy import signal

from tables import printer
from vehicle_circuit import EARS, INCOHERENT, MIDS, analog, db
from whole_vehicles import DEMO, PLANS, STATED_AREAS, Vehicle

PLACES = MIDS[[2, 5, 8, 11, 17, 23, 27]]


def parts(ch, seat, cabin, f):
    """Pressure of each driver at a seat for 1 V of source, filters included."""
    coils = ch.circuit.solve(f)[0]
    ways = ch.ways(seat, cabin, np.array([f]))
    h = ch.filter(np.array([f]))[0]
    return [sum(v for c, (v, _, _) in coils.items() if c.split(".")[0] == d) / ch.all[d].n * ways[d][0] * h for d in ch.drivers]


def settled(ch, f):
    """Source with its delay and polarity."""
    return ch.source * np.exp(-2j * np.pi * f * ch.set_delay / 1000) * ch.c.get("polarity", 1)


def alone(part, placed, f):
    """Level of a part in a place at 1 m for 2.83 V on the load its sensitivity is stated for, dB SPL."""
    d, n = part["driver"], part.get("coil_count", 1)
    stated = d["sensitivity"]
    level = stated["level_db_spl"]
    if stated["basis"] == "one_watt":
        level += 10 * np.log10(2.83 ** 2 / part.get("sensitivity_ohm", d["rated_ohm"] / n))
    if "qes" not in d:
        lowest = d.get("lower_limit_hz", d.get("fs_hz"))
        return level + db(abs(analog({"kind": "butterworth", "order": 2, "frequency_hz": lowest}, "highpass", np.array([f]))[0]))
    box = placed.get("enclosure", {}).get("closed")
    alpha = d["vas_l"] / (box["volume_l"] * box.get("fill_factor", 1)) if box else 0.0
    q = d["qms"] * d["qes"] / (d["qms"] + d["qes"])
    ws = 2 * np.pi * d["fs_hz"]
    return level + db(abs(signal.freqs([1, 0, 0], [1, ws / q, ws * ws * (1 + alpha)], worN=[2 * np.pi * f])[1][0]))


def replacement_rows(plan, f, row):
    """Both drivers of each place a factory part leaves."""
    for placed in plan["drivers"]:
        if "replaces" in placed:
            for when, parts, key in (("before", "factory_parts", "replaces"), ("after", "new_parts", "part")):
                part = next(p for p in plan[parts] if p["id"] == placed[key])
                row(placed["id"], f, f"{when}_db_spl", alone(part, placed, f))


def rows(name, plan, emit):
    v = Vehicle(plan)
    row = lambda place, f, quantity, value: emit(f"{name},{place},{f:.8g},{quantity},{value + 0:.8g}")
    seat = v.seats[v.main]
    for f in PLACES:
        replacement_rows(plan, f, row)
        together, apart = 0, 0.0
        for ch in v.channels:
            coils, u, i = ch.circuit.solve(f)
            h = abs(ch.filter(np.array([f]))[0])
            row(ch.id, f, "impedance_ohm", abs(u / i + ch.circuit.cable))
            here = parts(ch, seat, v.cabin, f)
            square = abs(sum(here)) ** 2 if f < INCOHERENT else sum(abs(p) ** 2 for p in here)
            row(ch.id, f, "level_db_spl", db(np.sqrt(square) * ch.source / EARS))
            together += sum(here) * settled(ch, f)
            apart += sum(abs(p) ** 2 for p in here) * ch.source ** 2
            most = ch.clip / h
            for d in ch.drivers:
                mine = [(x, j, e) for c, (x, j, e) in coils.items() if c.split(".")[0] == d]
                driver = ch.all[d]
                mm = driver.millimetres(f, mine[0][2], sum(x for x, _, _ in mine) / driver.n) * h
                row(d, f, "displacement_mm", mm * ch.source)
                held = sum(abs(x) ** 2 for x, _, _ in mine) / driver.d["rated_ohm"] * h ** 2
                most = min(most, driver.d["xmax_mm"] / mm, np.sqrt(driver.d["continuous_power_w"] / held))
            row(ch.id, f, "headroom_db", db(most / ch.source))
        row(f"@{seat['name']}", f, "level_db_spl", db(np.sqrt(abs(together) ** 2 if f < INCOHERENT else apart) / EARS))


def main():
    emit = printer("scipy-vehicle-curves.csv")
    emit("# title: Two vehicles at single frequencies with a full-scale sine")
    emit("# kind: computed\n# source: SciPy and NumPy: node equations of each channel at these frequencies, filters of scipy.signal")
    emit(f"# edition: SciPy {scipy.__version__}; written by scipy/vehicle_curves.py beside this table")
    emit("# typed: not typed; plans of docs/examples/camper-van.json with feed cables of 16 and 25 mm², and of plans/passive-two-way.json")
    emit("# confirmed: written from the definitions alone; it shares no code with the service")
    emit("vehicle,place,frequency_hz,quantity,value")
    demo = json.loads(DEMO.read_text(encoding="utf-8"))
    for amp in demo["amplifiers"]:
        amp["feed"]["cable"]["area_mm2"] = STATED_AREAS[amp["id"]]
    rows("camper-van", demo, emit)
    rows("passive-two-way", json.loads((PLANS / "passive-two-way.json").read_text(encoding="utf-8")), emit)


if __name__ == "__main__":
    main()
