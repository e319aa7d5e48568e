"""One channel of a plan from its source to the seats, for the tables of whole vehicles."""
import re

import numpy as np

from vehicle_circuit import C, MIDS, F, analog, peaking, Circuit


def position(p):
    return np.array([p["x_m"], p["y_m"], p["z_m"]])


class Channel:
    def __init__(self, plan, channel, drivers, amplifiers):
        self.c, self.id = channel, channel["id"]
        self.amp = next(i for i, a in enumerate(plan["amplifiers"]) if a["id"] == channel["amplifier"])
        group = next(o for o in plan["amplifiers"][self.amp]["outputs"] if channel["outputs"][0].startswith(o["id"]))
        self.group, self.bridged = group, len(channel["outputs"]) == 2
        self.circuit = Circuit(plan, channel, drivers, group.get("output_ohm", 0) * (2 if self.bridged else 1))
        self.drivers = sorted({c.split(".")[0] for b in self.circuit.branches for c in re.findall(r"[A-Za-z][\w.-]*", b["network"])},
                              key=list(drivers).index)
        self.all = drivers
        self.filters = self.filter(F)
        solved = [self.circuit.solve(f) for f in F]
        self.terminal_w = np.array([(((u + i * self.circuit.cable) * np.conj(i)).real) for _, u, i in solved])
        self.held, self.heat, self.mm, self.driver_v = {}, {}, {}, {}
        for d in self.drivers:
            driver = drivers[d]
            mine = [[s[0][c] for c in s[0] if c.split(".")[0] == d] for s in solved]
            self.held[d] = np.array([sum(abs(v) ** 2 for v, _, _ in m) for m in mine]) / driver.d["rated_ohm"]
            self.heat[d] = np.array([sum(abs(i) ** 2 for _, i, _ in m) for m in mine]) * driver.d["re_ohm"]
            mean_v = np.array([sum(v for v, _, _ in m) / driver.n for m in mine])
            emf = np.array([m[0][2] for m in mine])
            self.mm[d] = driver.millimetres(F, emf, mean_v)
            self.driver_v[d] = mean_v

    def filter(self, f):
        h = np.ones_like(f, dtype=complex)
        for side, kind in (("high_pass", "high"), ("low_pass", "low")):
            if side in self.c:
                h = h * analog(self.c[side], kind, f)
        for e in self.c.get("equaliser", []):
            assert e["kind"] == "peak"
            h = h * peaking(e["q"], e["frequency_hz"], e["gain_db"], f)
        return h

    def clip_v(self, supply_v):
        """RMS voltage of the source for a clean sine into the rated load and the cable."""
        r = self.circuit.rated_ohm() + self.circuit.cable
        times = 2 if self.bridged else 1
        if "rails" in self.group:
            rails = self.group["rails"]
            rail = rails["rail_v"] * (1 if self.regulated else supply_v / rails["supply_v"])
            u = times * (rail - rails["drop_v"]) * r / (r + times * rails.get("sag_ohm", 0))
            u = min(u, rails.get("current_limit_a", np.inf) * r) / np.sqrt(2)
        else:
            assert not self.bridged
            (r1, p1), (r2, p2) = [(p["load_ohm"], p["power_w"]) for p in self.group["ratings"]["points"]]
            u1, u2 = np.sqrt(p1 * r1), np.sqrt(p2 * r2)
            sag = (u1 - u2) / (u2 / r2 - u1 / r1)
            u = (u1 + sag * u1 / r1) * r / (r + sag) * (1 if self.regulated else supply_v / self.group["ratings"]["supply_v"])
        return u * (r + self.circuit.output_ohm) / r, u * u / r

    def ways(self, seat, cabin, f):
        """Pressure per volt at a seat from each driver, filters left out."""
        out = {}
        for d in self.drivers:
            driver = self.all[d]
            r = np.linalg.norm(position(driver.placed["position"]) - position(seat["position"]))
            corner = C / (2 * cabin["length_m"])
            gain = np.clip(40 * np.log10(corner / f), 0, cabin.get("gain_cap_db", 12))
            law = 1 / min(r, cabin.get("critical_distance_m", 0.4))
            out[d] = (driver.pa_per_v * driver.high_pass(f) * law * 10 ** (gain / 20) * np.exp(-2j * np.pi * f * r / C))
        return out

    def flight(self, seat):
        return 1000 / C * np.mean([np.linalg.norm(position(self.all[d].placed["position"]) - position(seat["position"])) for d in self.drivers])

    def sound(self, seat, cabin):
        """Complex sum and sum of powers at a seat for 1 V, filters left out."""
        ways = self.ways(seat, cabin, F)
        parts = [self.driver_v[d] * ways[d] for d in self.drivers]
        return sum(parts), sum(abs(p) ** 2 for p in parts)

    def sound_at(self, seat, cabin, f):
        ways = self.ways(seat, cabin, f)
        total = np.zeros_like(f, dtype=complex)
        for i, x in enumerate(f):
            coils = self.circuit.solve(x)[0]
            for d in self.drivers:
                total[i] += sum(v for c, (v, _, _) in coils.items() if c.split(".")[0] == d) / self.all[d].n * ways[d][i]
        return total * self.filter(f)


def band_of(ch):
    """Third octaves the trim is found in: indexes of the first and the last."""
    low = ch.c["high_pass"]["frequency_hz"] if "high_pass" in ch.c else min(ch.all[d].lowest() for d in ch.drivers)
    high = ch.c["low_pass"]["frequency_hz"] if "low_pass" in ch.c else 16000
    inside = np.flatnonzero((MIDS >= low * (1 - 1e-9)) & (MIDS <= high * (1 + 1e-9)))
    return inside[0], inside[-1]
