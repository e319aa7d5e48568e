"""Writes scipy-whole-vehicles.csv: three vehicles from full scale to the ears, worked out a second time.

Written from the definitions alone. Circuits are solved as node equations with the back-EMF of a driver shared by its coils,
spectra and sums over 48 places in a third octave, the supply by scipy.optimize, delays by trying them all. Nothing
here comes from the service; it reads the same plans.
"""
import json
import pathlib

import numpy as np
import scipy

from tables import printer
from vehicle_channel import Channel, band_of
from vehicle_circuit import EARS, PLACES, MIDS, F, SHARE, INCOHERENT, db, Driver
from vehicle_supply import feed, sources, meet

HERE = pathlib.Path(__file__).resolve()
PLANS = HERE.parents[2] / "plans"
DEMO = HERE.parents[6] / "docs" / "examples" / "camper-van.json"
ONE_COIL = "sub_a.1 || sub_b.1"  # of the two dual-coil drivers behind the long cable
STATED_AREAS = {"main": 16, "bass": 25}  # of the demo, which leaves its feed cables to be found


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
