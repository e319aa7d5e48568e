"""Drivers and the circuit of one channel, for the tables of whole vehicles: node equations by frequency."""
import re

import numpy as np
from scipy import optimize, signal

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
