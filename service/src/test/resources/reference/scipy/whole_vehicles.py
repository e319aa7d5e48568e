"""Writes scipy-whole-vehicles.csv: three vehicles from full scale to the ears, worked out a second time.

Written from the definitions alone. Circuits are solved as node equations with the back-EMF of a driver shared by its coils,
spectra and sums over 48 places in a third octave, the supply by scipy.optimize, delays by trying them all. Nothing
here comes from the service; it reads the same plans.
"""
import json
import pathlib
import re

import numpy as np
import scipy
from scipy import optimize, signal

from tables import printer

HERE = pathlib.Path(__file__).resolve()
PLANS = HERE.parents[2] / "plans"
DEMO = HERE.parents[6] / "docs" / "examples" / "camper-van.json"
C, RHO = 343.2, 1.2041
EARS = 2e-5
PLACES = 48
IEC = [-13.5, -10.2, -7.4, -5.2, -3.5, -2.3, -1.4, -0.9, -0.5, -0.2, -0.1, 0, 0, 0, 0, 0, 0,
       -0.1, -0.3, -0.6, -1.0, -1.6, -2.5, -3.7, -5.1, -7.0, -9.4, -11.9, -14.8, -18.2, -21.6]
MIDS = 1000 * 10 ** ((np.arange(31) - 17) / 10)
F = (MIDS[:, None] * 10 ** (((np.arange(PLACES) + 0.5) / PLACES - 0.5) / 10)[None, :]).ravel()
SHARE = np.repeat(10 ** (np.array(IEC) / 10), PLACES)
SHARE /= SHARE.sum()
INCOHERENT = 300
AREAS = [0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120, 150, 185, 240]
OHM_KM = [39.0, 26.0, 19.5, 13.3, 7.98, 4.95, 3.30, 1.91, 1.21, 0.780, 0.554, 0.386, 0.272, 0.206, 0.161, 0.129, 0.106, 0.0801]
FEED_C = 50
ONE_COIL = "sub_a.1 || sub_b.1"  # of the two dual-coil drivers behind the long cable
STATED_AREAS = {"main": 16, "bass": 25}  # of the demo, which leaves its feed cables to be found


def cable_ohm(metres, area, celsius, conductivity=1.0):
    r = np.exp(np.interp(np.log(area), np.log(AREAS), np.log(OHM_KM))) / conductivity
    return metres * r / 1000 * (1 + 0.00393 * (celsius - 20))


def db(x):
    return 20 * np.log10(x)


def analog(stated, side, f):
    """Response of a filter of the plan."""
    times = 2 if stated["kind"] == "linkwitz_riley" else 1
    assert stated["kind"] in ("linkwitz_riley", "butterworth")
    b, a = signal.butter(stated["order"] // times, 2 * np.pi * stated["frequency_hz"], side, analog=True)
    return signal.freqs(b, a, worN=2 * np.pi * f)[1] ** times


def peaking(q, f0, gain, f, rate=48000):
    """A digital peaking section by the bilinear transform of (s² + s·A/Q + 1)/(s² + s/(A·Q) + 1)."""
    a = 10 ** (gain / 40)
    w = np.tan(np.pi * f / rate) / np.tan(np.pi * f0 / rate)
    s = 1j * w
    return (s * s + s * a / q + 1) / (s * s + s / (a * q) + 1)


class Driver:
    """One placed driver."""

    def __init__(self, plan, placed):
        self.placed = placed
        part = next(p for p in plan["new_parts"] if p["id"] == placed["part"])
        d = part["driver"]
        self.d, self.n = d, part.get("coil_count", 1)
        words = " ".join(b["network"] for c in plan["channels"] for b in c.get("branches", [c]))
        self.driven = len(re.findall(rf"\b{placed['id']}\b", words))
        self.alpha = 0.0
        if "enclosure" in placed:
            box = placed["enclosure"]["closed"]
            self.alpha = d["vas_l"] / (box["volume_l"] * box.get("fill_factor", 1))
        load = part.get("sensitivity_ohm", d["rated_ohm"] / self.n)
        s = d["sensitivity"]
        watts = 1 if s["basis"] == "one_watt" else 2.83 ** 2 / load
        # The coils share that power alike, however they were joined for it.
        self.pa_per_v = EARS * 10 ** (s["level_db_spl"] / 20) / np.sqrt(watts * d["rated_ohm"] / self.n)

    def lowest(self):
        return self.d["fs_hz"] * np.sqrt(1 + self.alpha)

    def blocked(self, f):
        d = self.d
        n, at = d.get("le_exponent", 1), d.get("le_at_hz", 1000)
        x0 = 2 * np.pi * at * d["le_mh"] * 1e-3
        return d["re_ohm"] + x0 * (f / at) ** n * (1 / np.tan(n * np.pi / 2) + 1j)

    def motional(self, f):
        """Back-EMF of one coil over the mean current of all."""
        d, x = self.d, f / self.d["fs_hz"]
        return d["re_ohm"] * d["qms"] / d["qes"] / (1 + 1j * d["qms"] * (x - 1 / x) + d["qms"] * self.alpha / (1j * x))

    def high_pass(self, f):
        d, s = self.d, 1j * f / self.d["fs_hz"]
        qes = d["qes"] * self.n / self.driven  # a coil that is left open brakes nothing
        qts = d["qms"] * qes / (d["qms"] + qes)
        return s * s / (s * s + s / qts + 1 + self.alpha)

    def millimetres(self, f, emf, mean_v):
        """Peak for RMS phasors: of the circuit where vas is known, else of the sound it makes."""
        d, w = self.d, 2 * np.pi * f
        sd = d["sd_cm2"] * 1e-4
        if "vas_l" in d:
            ws = 2 * np.pi * d["fs_hz"]
            cms = d["vas_l"] * 1e-3 / (RHO * C * C * sd * sd)
            bl = np.sqrt(ws * (1 / (ws * ws * cms)) * d["re_ohm"] / (self.n * d["qes"]))
            return 1000 * np.sqrt(2) * abs(emf) / (bl * w)
        p = self.pa_per_v * abs(mean_v * self.high_pass(f))
        return 1000 * p * 2 * np.pi * np.sqrt(2) / (RHO * w * w * sd)


class Circuit:
    """Node equations of one channel for a source of 1 V behind its output impedance."""

    def __init__(self, plan, channel, drivers, output_ohm):
        self.output_ohm = output_ohm
        cable = channel.get("cable")
        self.cable = cable_ohm(2 * cable["one_way_m"], cable["area_mm2"], 20) if cable else 0.0
        self.branches = channel.get("branches") or [{"network": channel["network"]}]
        self.drivers = drivers

    def coils(self, network):
        tokens = re.findall(r"\|\||\+|\(|\)|[A-Za-z][\w.-]*", network)
        place = 0

        def atom():
            nonlocal place
            token = tokens[place]
            place += 1
            if token == "(":
                inner = series()
                place += 1
                return inner
            return token

        def parallel():
            nonlocal place
            parts = [atom()]
            while place < len(tokens) and tokens[place] == "||":
                place += 1
                parts.append(atom())
            return parts[0] if len(parts) == 1 else ("||", parts)

        def series():
            nonlocal place
            parts = [parallel()]
            while place < len(tokens) and tokens[place] == "+":
                place += 1
                parts.append(parallel())
            return parts[0] if len(parts) == 1 else ("+", parts)

        return series()

    def rated(self, tree):
        if isinstance(tree, str):
            return self.drivers[tree.split(".")[0]].d["rated_ohm"]
        parts = [self.rated(p) for p in tree[1]]
        return sum(parts) if tree[0] == "+" else 1 / sum(1 / p for p in parts)

    def rated_ohm(self):
        return min(self.rated(self.coils(b["network"])) for b in self.branches)

    def solve(self, f, with_source=True):
        """Coil voltages and currents, network voltage and current, terminal voltage, at one frequency."""
        w = 2j * np.pi * f
        edges = []  # (node a, node b, impedance, coil name or None)
        nodes = {"gnd": -1, "net": 0}
        couplings = []

        def node():
            nodes[len(nodes)] = len(nodes) - 1
            return len(nodes) - 2

        def lay(tree, a, b):
            if isinstance(tree, str):
                edges.append((a, b, None, tree))
            elif tree[0] == "||":
                for part in tree[1]:
                    lay(part, a, b)
            else:
                at = a
                for part in tree[1][:-1]:
                    nxt = node()
                    lay(part, at, nxt)
                    at = nxt
                lay(tree[1][-1], at, b)

        def impedance(e):
            parts = []
            if "capacitance_uf" in e:
                parts.append(1 / (w * e["capacitance_uf"] * 1e-6))
            if "inductance_mh" in e:
                parts.append(w * e["inductance_mh"] * 1e-3 + e.get("coil_ohm", 0))
            if "resistance_ohm" in e:
                parts.append(e["resistance_ohm"])
            return 1 / sum(1 / p for p in parts) if e.get("wiring") == "in_parallel" else sum(parts)

        for branch in self.branches:
            at = nodes["net"]
            if "high_pass" in branch or "low_pass" in branch:
                h = 1.0 + 0j
                for side, kind in (("high_pass", "high"), ("low_pass", "low")):
                    if side in branch:
                        h *= analog(branch[side], kind, np.array([f]))[0]
                inner = node()
                couplings.append((0, inner, h))
                at = inner
            for e in branch.get("elements", []):
                if e["place"] == "series":
                    nxt = node()
                    edges.append((at, nxt, impedance(e), None))
                    at = nxt
                else:
                    edges.append((at, -1, impedance(e), None))
            lay(self.coils(branch["network"]), at, -1)
        n, m, k = len(nodes) - 1, len(edges), len(couplings)
        # Unknown: node voltages, edge currents, currents of the stated filters, source current.
        size = n + m + k + 1
        a, rhs = np.zeros((size, size), complex), np.zeros(size, complex)
        by_driver = {}
        for i, (_, _, _, coil) in enumerate(edges):
            if coil:
                by_driver.setdefault(coil.split(".")[0], []).append(i)
        for i, (p, q, z, coil) in enumerate(edges):
            row = n + i
            for v, s in ((p, 1), (q, -1)):
                if v >= 0:
                    a[v, n + i] += s
                    a[row, v] += s
            if coil is None:
                a[row, n + i] -= z
            else:
                driver = self.drivers[coil.split(".")[0]]
                a[row, n + i] -= driver.blocked(f)
                for other in by_driver[coil.split(".")[0]]:
                    a[row, n + other] -= driver.motional(f) / driver.n
        for i, (p, q, h) in enumerate(couplings):
            row = n + m + i
            a[row, q] += 1
            a[row, p] -= h
            a[q, n + m + i] -= 1  # what the filter hands on
            a[p, n + m + i] += np.conj(h)  # free of loss: the same complex power is taken
        last = size - 1
        a[0, last] -= 1
        a[last, 0] += 1
        a[last, last] += (self.output_ohm + self.cable) if with_source else 0
        rhs[last] = 1
        x = np.linalg.solve(a, rhs)
        coils = {}
        for i, (p, q, _, coil) in enumerate(edges):
            if coil:
                volts = (x[p] if p >= 0 else 0) - (x[q] if q >= 0 else 0)
                driver = self.drivers[coil.split(".")[0]]
                emf = driver.motional(f) * sum(x[n + o] for o in by_driver[coil.split(".")[0]]) / driver.n
                coils[coil] = (volts, x[n + i], emf)
        return coils, x[0], x[last]

    def network_ohm(self, f):
        _, u, i = self.solve(f)
        return u / i

    def lowest(self, with_cable):
        extra = self.cable if with_cable else 0
        grid = np.geomspace(20, 20000, 1200)
        z = np.array([abs(self.network_ohm(f) + extra) for f in grid])
        k = int(z.argmin())
        lo, hi = np.log(grid[max(k - 1, 0)]), np.log(grid[min(k + 1, len(grid) - 1)])
        best = optimize.minimize_scalar(lambda x: abs(self.network_ohm(np.exp(x)) + extra), bounds=(lo, hi), method="bounded",
                                        options={"xatol": 1e-10})
        return min(best.fun, z[k])


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


def a_weight(f):
    r = lambda x: 12194 ** 2 * x ** 4 / ((x * x + 20.6 ** 2) * np.sqrt((x * x + 107.7 ** 2) * (x * x + 737.9 ** 2)) * (x * x + 12194 ** 2))
    return r(f) / r(1000.0)


class Vehicle:
    def __init__(self, plan):
        self.plan = plan
        self.cabin = plan["vehicle"]["cabin"]
        self.seats = plan["seats"]
        self.main = max(range(len(self.seats)), key=lambda s: (self.seats[s].get("weight", 1), -s))
        drivers = {p["id"]: Driver(plan, p) for p in plan["drivers"]}
        self.channels = [Channel(plan, c, drivers, plan["amplifiers"]) for c in plan["channels"]]
        for ch in self.channels:
            ch.regulated = plan["amplifiers"][ch.amp].get("supply_regulated", False)
            ch.at = [ch.sound(seat, self.cabin) for seat in self.seats]
        self.crest = plan.get("programme", {}).get("crest_factor_db", 12)
        self.mean_square = 10 ** (-(self.crest - 10 * np.log10(2)) / 10)
        self.settle()
        self.align()

    def weight(self, ch):
        return self.mean_square * SHARE * abs(ch.filters) ** 2

    def bears(self, ch):
        """Largest source voltage the drivers bear of the programme, behind filters, by heat and by movement."""
        w, heat, move = self.weight(ch), np.inf, np.inf
        for d in ch.drivers:
            data = ch.all[d].d
            heat = min(heat, np.sqrt(data["continuous_power_w"] / (w * ch.held[d]).sum()))
            move = min(move, data["xmax_mm"] / self.moved(ch, d))
        return heat, move

    def moved(self, ch, d):
        """Peak in mm for 1 V: RMS over the spectrum times the crest factor."""
        rms = np.sqrt((self.weight(ch) * ch.mm[d] ** 2 / 2).sum())
        return rms * 10 ** (self.crest / 20)

    def settle(self):
        amps = self.plan["amplifiers"]
        self.sources = sources(self.plan)
        volts = [self.supply_of(a) for a in range(len(amps))]
        for _ in range(200):
            before = list(volts)
            for ch in self.channels:
                ch.clip, ch.clean_w = ch.clip_v(volts[ch.amp])
                heat, move = self.bears(ch)
                limiter = ch.c.get("rms_limiter", False)
                ch.gain = min(ch.clip, move, np.inf if limiter else heat)
            self.trims()
            for ch in self.channels:
                ch.source = self.heard(ch, ch.clip)
                ch.mean_w = (self.weight(ch) * ch.terminal_w).sum() * ch.source ** 2
            met = self.meet_mean("cruising")
            volts = list(met[2])
            if max(abs(np.array(volts) - before)) < 1e-12:
                break

    def heard(self, ch, clip):
        """Source voltage the programme really gets: behind trim, clip point and limiter."""
        boost = max(1.0, abs(ch.filters).max())
        v = min(ch.gain * 10 ** (ch.trim / 20), clip / boost)
        heat, _ = self.bears(ch)
        return min(v, heat) if ch.c.get("rms_limiter", False) else v

    def supply_of(self, a):
        source = self.sources["cruising"]
        return source[0] or source[2]

    def draw(self, a, output_w, efficiency):
        d = self.plan["amplifiers"][a]["draw"]
        rated = self.rated_v(a)
        return d["idle_a"] * rated + output_w / d[efficiency]

    def rated_v(self, a):
        o = self.plan["amplifiers"][a]["outputs"][0]
        return (o.get("rails") or o.get("ratings"))["supply_v"]

    def meet_mean(self, situation):
        loads = []
        for a in range(len(self.plan["amplifiers"])):
            out = sum(ch.mean_w for ch in self.channels if ch.amp == a)
            loads.append((self.draw(a, out, "average_efficiency"), None, feed(self.plan, a)))
        return meet(self.sources[situation], loads)

    def meet_sine(self, situation):
        loads = []
        for a, amp in enumerate(self.plan["amplifiers"]):
            rated = self.rated_v(a)
            out = sum(ch.clip_v(rated)[1] for ch in self.channels if ch.amp == a)
            loads.append((self.draw(a, out, "full_efficiency"), None if amp.get("supply_regulated") else rated, feed(self.plan, a)))
        return meet(self.sources[situation], loads)

    def in_situation(self, situation):
        """Voltages with the sheet's settings, which clip where less voltage is left."""
        keep = [(ch.source, ch.mean_w) for ch in self.channels]
        volts = None
        for _ in range(300):
            met = self.meet_mean(situation)
            if met is None:
                break
            for ch in self.channels:
                clip, _ = ch.clip_v(met[2][ch.amp])
                ch.mean_w = (self.weight(ch) * ch.terminal_w).sum() * self.heard(ch, clip) ** 2
            if volts is not None and max(abs(met[2] - volts)) < 1e-12:
                break
            volts = met[2]
        clips = None if met is None else [ch.clip_v(met[2][ch.amp])[0] for ch in self.channels]
        for ch, (s, m) in zip(self.channels, keep):
            ch.source, ch.mean_w = s, m
        return met, clips

    def trims(self):
        means = []
        for ch in self.channels:
            sums, powers = ch.at[self.main]
            p = np.where(F < INCOHERENT, abs(sums) ** 2, powers) * abs(ch.filters) ** 2
            bands = p.reshape(31, PLACES).mean(axis=1)
            first, last = band_of(ch)
            means.append(np.mean(10 * np.log10(bands[first:last + 1])) + db(ch.gain))
        for ch, m in zip(self.channels, means):
            ch.trim = min(means) - m

    def align(self):
        seat = self.seats[self.main]
        for ch in self.channels:
            ch.delay = -ch.flight(seat)
            ch.flight_delay, ch.turn = ch.delay, 1
        crossings = {}
        for x in self.plan.get("crossovers", []):
            crossings.setdefault((x["lower"], x["frequency_hz"]), []).append(x["upper"])
        by_id = {ch.id: ch for ch in self.channels}
        self.loss = {}
        setting = lambda ch: ch.gain * 10 ** (ch.trim / 20)  # below the clip point, where nothing is limited
        for (lower, hz), uppers in crossings.items():
            low = by_id[lower]
            f = hz * 2.0 ** (np.arange(-96, 97) / 192)
            turn = lambda ch: np.exp(-2j * np.pi * f * ch.delay / 1000)
            up = sum(by_id[u].sound_at(seat, self.cabin, f) * setting(by_id[u]) * turn(by_id[u]) for u in uppers)
            down = low.sound_at(seat, self.cabin, f) * setting(low) * turn(low)
            moves = np.linspace(-500 / hz, 500 / hz, 48001)
            worst = np.zeros_like(moves)
            for fi, u, d in zip(f, up, down):
                worst = np.minimum(worst, db(np.maximum(abs(u + d * np.exp(-2j * np.pi * fi * moves / 1000)) / (abs(u) + abs(d)), 1e-6)))
            enough = np.flatnonzero(worst >= worst.max() - 0.05)
            best = min(enough, key=lambda i: abs(moves[i]))
            self.loss[lower] = (worst[best], worst[24000])
            low.delay += moves[best]
        least, least_flight = min(ch.delay for ch in self.channels), min(ch.flight_delay for ch in self.channels)
        for ch in self.channels:
            ch.delay -= least
            ch.flight_delay -= least_flight
            ch.set_delay = self.stepped(ch.delay)

    def stepped(self, ms):
        """On the steps of the processor; without one nothing can be delayed."""
        if "processor" not in self.plan:
            return 0
        step = 1000 * self.plan["processor"].get("step_samples", 1) / self.plan["processor"]["rate_hz"]
        return round(ms / step) * step

    def level(self, seat, only=None):
        """Mean square in each place of the spectrum."""
        sums, powers = np.zeros(len(F), complex), np.zeros(len(F))
        for ch in self.channels:
            if only is None or ch is only:
                s, p = ch.at[seat]
                drive = ch.source * np.sqrt(self.mean_square * SHARE)
                sums += s * ch.filters * drive * np.exp(-2j * np.pi * F * ch.set_delay / 1000) * ch.c.get("polarity", 1)
                powers += p * abs(ch.filters * drive) ** 2
        return np.where(F < INCOHERENT, abs(sums) ** 2, powers)


    def drive(self):
        """How far below full scale the first limit of a driver or amplifier lies, dB; 0 where none is met."""
        least = 0.0
        for ch in self.channels:
            most = min([ch.clip / max(1, abs(ch.filters).max()), *self.bears(ch)])
            least = min(least, db(most / (ch.gain * 10 ** (ch.trim / 20))))
        return least

    def limiter(self, ch):
        """RMS voltage at the loudspeaker with which the first driver gets its continuous power by rated impedances."""
        least = np.inf
        for branch in ch.circuit.branches:
            watts = {}

            def share(tree, volts):
                if isinstance(tree, str):
                    d = tree.split(".")[0]
                    watts[d] = watts.get(d, 0) + volts ** 2 / ch.circuit.rated(tree)
                    return
                for part in tree[1]:
                    share(part, volts * ch.circuit.rated(part) / ch.circuit.rated(tree) if tree[0] == "+" else volts)

            share(ch.circuit.coils(branch["network"]), 1.0)
            least = min([least] + [np.sqrt(ch.all[d].d["continuous_power_w"] / w) for d, w in watts.items()])
        return least

    def sine_mm(self, ch, d):
        """Largest peak with a full-scale sine from 20 Hz up."""
        f = np.geomspace(20, 20000, 1500)
        h = abs(ch.filter(f))
        driver, most = ch.all[d], 0.0
        for i, x in enumerate(f):
            mine = [v for c, v in ch.circuit.solve(x)[0].items() if c.split(".")[0] == d]
            mean_v = sum(v for v, _, _ in mine) / driver.n
            most = max(most, h[i] * driver.millimetres(x, mine[0][2], mean_v) * ch.source)
        return most


def spl(p2):
    return 10 * np.log10(p2.sum() / EARS ** 2)


def rows(name, plan, emit):
    v = Vehicle(plan)
    row = lambda place, quantity, value: emit(f"{name},{place},{quantity},{value + 0:.8g}")
    for ch in v.channels:
        row(ch.id, "lowest_network_ohm", ch.circuit.lowest(False))
        row(ch.id, "lowest_terminal_ohm", ch.circuit.lowest(True))
        row(ch.id, "clip_v", ch.clip)
        row(ch.id, "gain_v", ch.gain)
        row(ch.id, "mean_power_w", ch.mean_w)
        row(ch.id, "trim_db", ch.trim)
        row(ch.id, "limiter_rms_v", v.limiter(ch))
        row(ch.id, "flight_delay_ms", ch.flight_delay)
        row(ch.id, "delay_ms", ch.delay)
        for d in ch.drivers:
            w = v.weight(ch)
            row(d, "held_power_w", (w * ch.held[d]).sum() * ch.source ** 2)
            row(d, "coil_heat_w", (w * ch.heat[d]).sum() * ch.source ** 2)
            row(d, "programme_mm", v.moved(ch, d) * ch.source)
            row(d, "sine_displacement_mm", v.sine_mm(ch, d))
        for s, seat in enumerate(v.seats):
            row(f"{ch.id}@{seat['name']}", "level_db_spl", spl(v.level(s, ch)))
    row("", "largest_drive_db", v.drive())
    for s, seat in enumerate(v.seats):
        p = v.level(s)
        row(f"@{seat['name']}", "sum_db_spl", spl(p))
        row(f"@{seat['name']}", "sum_dba", spl(p.reshape(31, PLACES).sum(axis=1) * a_weight(MIDS) ** 2))
    for situation in v.sources:
        met, clips = v.in_situation(situation)
        for kind, m in (("mean", met), ("sine", v.meet_sine(situation))):
            if m is None:
                row(situation, f"{kind}_battery_v", np.nan)
                continue
            row(situation, f"{kind}_battery_v", m[0])
            for amp, i, u in zip(plan["amplifiers"], m[1], m[2]):
                row(f"{situation}/{amp['id']}", f"{kind}_a", i)
                row(f"{situation}/{amp['id']}", f"{kind}_v", u)
    for lower, (best, flight) in v.loss.items():
        row(lower, "crossover_loss_db", best)
        row(lower, "flight_loss_db", flight)


def main():
    emit = printer("scipy-whole-vehicles.csv")
    emit("# title: Three vehicles from full scale to the ears, worked out a second time")
    emit("# kind: computed\n# source: SciPy and NumPy: node equations of each channel at 1488 frequencies, filters of scipy.signal,"
         " the supply's meeting point by scipy.optimize.brentq, delays by trying 48001 of them")
    emit(f"# edition: SciPy {scipy.__version__}; written by scipy/whole_vehicles.py beside this table")
    emit("# typed: not typed; plans of docs/examples/camper-van.json with feed cables of 16 and 25 mm², and of plans/;"
         " one-coil-driven is long-supply-cable with one of the two coils of each driver left open")
    emit("# confirmed: written from the definitions alone; it shares no code with the service and solves circuits, sums and supply"
         " in other ways")
    emit("vehicle,place,quantity,value")
    demo = json.loads(DEMO.read_text(encoding="utf-8"))
    for amp in demo["amplifiers"]:
        amp["feed"]["cable"]["area_mm2"] = STATED_AREAS[amp["id"]]
    rows("camper-van", demo, emit)
    for name in ("passive-two-way", "long-supply-cable"):
        rows(name, json.loads((PLANS / f"{name}.json").read_text(encoding="utf-8")), emit)
    one_coil = json.loads((PLANS / "long-supply-cable.json").read_text(encoding="utf-8"))
    one_coil["channels"][2]["network"] = ONE_COIL
    rows("one-coil-driven", one_coil, emit)


if __name__ == "__main__":
    main()
