"""What the service at FOOTWELL_URL answers to the same questions over HTTP, put as JSON."""
import json
import os
import urllib.error
import urllib.request
from pathlib import Path

SERVICE = os.environ["FOOTWELL_URL"]
DEMO = json.loads((Path(__file__).resolve().parents[1] / "demo.json").read_text(encoding="utf-8"))


def post(calculation, question):
    """The whole answer, or the problem."""
    request = urllib.request.Request(f"{SERVICE}/v1/{calculation}", json.dumps(question).encode(), {"Content-Type": "application/json"})
    try:
        with urllib.request.urlopen(request, timeout=30) as answer:
            return json.load(answer)
    except urllib.error.HTTPError as refusal:
        raise AssertionError(f"{calculation}: {refusal.read().decode()}") from refusal


def filled(**fields):
    return {name: value for name, value in fields.items() if value not in (None, {}, [])}


def by_name(rows):
    return {row["name"]: row for row in rows}


class Expected:
    """The demonstration asked directly."""

    def __init__(self, demo=DEMO):
        vehicle = demo["vehicle"]
        drivers, amplifiers = by_name(demo["drivers"]), by_name(demo["amplifiers"])
        self.questions = []  # of each channel, those that others ask about
        self.channels = [self.channel(vehicle, channel, drivers, amplifiers) for channel in demo["channels"]]
        self.masses = post("driver-comparison", self.masses_question(demo, drivers, amplifiers))
        self.delays = post("seat-delays", self.delays_question(vehicle, demo["channels"]))

    def channel(self, vehicle, channel, drivers, amplifiers):
        amplifier, new, count = amplifiers[channel["amplifier"]], drivers[channel["new"]], channel["count"]
        answers = {"wiring-load": post("wiring-load", {
            "network": channel["network"],
            "amplifier": {"minimum_ohm": amplifier["minimum_ohm"], "minimum_bridged_ohm": amplifier["minimum_bridged_ohm"],
                          "output_ohm": amplifier["output_ohm"]},
            "bridged": channel["bridged"] == "yes",
            "cable": {"one_way_m": channel["cable_m"], "area_mm2": channel["cable_mm2"]}})}
        load = answers["wiring-load"]["result"]
        answers["rail-match"] = post("rail-match", {
            "load_ohm": load["load_with_cable_ohm"], "bridged": channel["bridged"] == "yes", "supply_v": vehicle["supply_v"],
            "amplifier": {
                "minimum_ohm": amplifier["minimum_ohm"], "minimum_bridged_ohm": amplifier["minimum_bridged_ohm"],
                "ratings": {"supply_v": amplifier["supply_v"], "basis": amplifier["basis"], "points": [
                    {"load_ohm": amplifier[f"load_{n}_ohm"], "power_w": amplifier[f"power_{n}_w"]} for n in (0, 1)]}},
            "driver": {"continuous_power_w": count * new["continuous_power_w"], "rated_ohm": load["load_ohm"]}})
        power = answers["rail-match"]["result"]["clean_power_w"] * load["load_ohm"] / load["load_with_cable_ohm"]
        position, seat = ([of[start + axis] for axis in ("x_m", "y_m", "z_m")] for of, start in ((channel, ""), (vehicle, "seat_")))
        distance = sum((here - there) ** 2 for here, there in zip(position, seat)) ** 0.5
        answers["programme power"] = 2 * power / 10 ** (vehicle["crest_factor_db"] / 10)
        sound = filled(
            driver={"sensitivity": {"level_db_spl": new["level_db_spl"], "basis": new["basis"]}, "rated_ohm": new["rated_ohm"],
                    "continuous_power_w": new["continuous_power_w"], "sd_cm2": new["sd_cm2"], "xmax_mm": new["xmax_mm"]},
            power_w=answers["programme power"], distance_m=distance, driver_count=count,
            drive="shared" if count > 1 else None, addition="coherent" if count > 1 else None,
            cabin={"length_m": vehicle["cabin_length_m"]}, crest_factor_db=vehicle["crest_factor_db"],
            displacement_hz=channel["lowest_hz"])
        self.questions.append({"sound-level": sound})
        answers["sound-level"] = post("sound-level", sound)
        factory = drivers.get(channel.get("factory"))
        answers["driver-comparison"] = post("driver-comparison", {
            "currency": vehicle["currency"], "heavy_g": 100000, "heavy_doors_g": 100000, "temperature_c": vehicle["temperature_c"], "positions": [filled(
                name=channel["name"], zone=channel["zone"], band=channel["band"], at=channel["at"], driver_count=count,
                displacement_hz=channel["lowest_hz"], factory=self.side(factory), replacement=self.side(new),
                amplifier_before=factory and {"power_w": vehicle["factory_power_w"], "load_ohm": vehicle["factory_load_ohm"]},
                amplifier_after={"power_w": power / count, "load_ohm": new["rated_ohm"]})]})
        return answers

    @staticmethod
    def masses_question(demo, drivers, amplifiers):
        def massive(part):
            return part and {"rated_ohm": part["rated_ohm"], "mass_g": part["mass_g"]}

        fitted = [amplifier for name, amplifier in amplifiers.items() if name in {channel["amplifier"] for channel in demo["channels"]}]
        items = [{"name": f"{item['quantity']} × {item['name']}".removeprefix("1 × "), "mass_g": item["quantity"] * item["mass_g"]}
                 for item in demo["items"]]
        return {"positions": [filled(name=channel["name"], zone=channel["zone"], band=channel["band"], at=channel["at"],
                                     driver_count=channel["count"], factory=massive(drivers.get(channel.get("factory"))),
                                     replacement=massive(drivers[channel["new"]])) for channel in demo["channels"]],
                "additions": [{"name": part["name"], "mass_g": part["mass_g"]} for part in fitted] + items}

    @staticmethod
    def side(part):
        return part and {**{key: value for key, value in part.items() if key not in ("level_db_spl", "basis")},
                         "sensitivity": {"level_db_spl": part["level_db_spl"], "basis": part["basis"]}}

    @staticmethod
    def delays_question(vehicle, channels):
        def filter_at(corner):
            return corner and {"kind": vehicle["filter_kind"], "order": vehicle["filter_order"], "frequency_hz": corner}

        return {"channels": [filled(name=c["name"], position={axis: c[axis] for axis in ("x_m", "y_m", "z_m")},
                                    high_pass=filter_at(c.get("high_pass_hz")), low_pass=filter_at(c.get("low_pass_hz"))) for c in channels],
                "crossovers": [{"lower": c["lower"], "upper": c["name"], "frequency_hz": c["high_pass_hz"]} for c in channels if "lower" in c],
                "seats": [{"name": vehicle["seat"], "position": {axis: vehicle["seat_" + axis] for axis in ("x_m", "y_m", "z_m")}}],
                "processor": {"rate_hz": vehicle["rate_hz"], "maximum_delay_ms": vehicle["maximum_delay_ms"]},
                "temperature_c": vehicle["temperature_c"]}
