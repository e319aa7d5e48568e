"""The demonstration as a plan for plan-review."""


def known(**fields):
    return {name: value for name, value in fields.items() if value is not None}


def identifier(name):
    return name.replace(",", "").replace(" ", "_")


def position(of, start=""):
    return {axis: of[start + axis] for axis in ("x_m", "y_m", "z_m")}


def plan(demo):
    vehicle, channels = demo["vehicle"], demo["channels"]
    outputs = {identifier(amplifier["name"]): [] for amplifier in demo["amplifiers"]}
    return {
        "vehicle": {"name": vehicle["vehicle"], "cabin": {"length_m": vehicle["cabin_length_m"]}, "temperature_c": vehicle["temperature_c"]},
        "supply": {"battery_v": vehicle["supply_v"]},
        "seats": [{"name": vehicle["seat"], "position": position(vehicle, "seat_")}],
        "new_parts": [part(driver) for driver in demo["drivers"] if "price" in driver],
        "drivers": [{"id": driver, "part": identifier(channel["new"]), "position": position(channel)}
                    for channel in channels for driver in drivers_of(channel)],
        "channels": [channel_of(channel, outputs[identifier(channel["amplifier"])], vehicle) for channel in channels],
        "amplifiers": [amplifier_of(amplifier, outputs[identifier(amplifier["name"])]) for amplifier in demo["amplifiers"]],
        "crossovers": [{"lower": identifier(channel["lower"]), "upper": identifier(channel["name"]), "frequency_hz": channel["high_pass_hz"]}
                       for channel in channels if "lower" in channel],
        "processor": {"rate_hz": vehicle["rate_hz"], "maximum_delay_ms": vehicle["maximum_delay_ms"]},
        "programme": {"crest_factor_db": vehicle["crest_factor_db"]}}


def quoted(plan, demo):
    """The plan with what else is fitted and with fitting and tax."""
    labour = demo["labour"]
    return {**plan, "extras": [{"name": item["name"], "extra_count": item["quantity"], "mass_g": item["mass_g"], "price": item["price"]} for item in demo["items"]],
            "quote": {"currency": demo["vehicle"]["currency"], "labour": [{"name": "fitting", "work_h": labour["hours"], "hour_price": labour["rate"]}],
                      "tax_percent": labour["tax_percent"]}}


def coils_of(driver):
    """The subwoofer has two; its impedance as wired is that of both in series."""
    return 2 if "two coils" in driver["name"] else 1


def part(driver):
    coils = coils_of(driver)
    data = known(name=driver["name"], rated_ohm=driver["rated_ohm"] / coils,
                 sensitivity={"level_db_spl": driver["level_db_spl"], "basis": driver["basis"]},
                 continuous_power_w=driver["continuous_power_w"], mass_g=driver["mass_g"], price=driver["price"])
    return known(id=identifier(driver["name"]), coil_count=coils, sensitivity_ohm=driver["rated_ohm"] if coils > 1 else None, driver=data)


def drivers_of(channel):
    return [f"{identifier(channel['name'])}_{n}" for n in range(channel["count"])]


def channel_of(channel, outputs, vehicle):
    """Takes the next outputs of its amplifier: two when bridged."""
    taken = [f"out_{len(outputs) + n + 1}" for n in range(2 if channel["bridged"] == "yes" else 1)]
    outputs += taken
    drivers = drivers_of(channel)
    network = drivers[0] if len(drivers) == 1 else "||".join(f"({driver}.1+{driver}.2)" for driver in drivers)

    def filter_at(corner):
        return corner and {"kind": vehicle["filter_kind"], "order": vehicle["filter_order"], "frequency_hz": corner}

    return known(id=identifier(channel["name"]), role="subwoofer" if channel["band"] == "subwoofer" else channel["zone"],
                 amplifier=identifier(channel["amplifier"]), outputs=taken, network=network,
                 cable={"one_way_m": channel["cable_m"], "area_mm2": channel["cable_mm2"]},
                 high_pass=filter_at(channel.get("high_pass_hz")), low_pass=filter_at(channel.get("low_pass_hz")))


def amplifier_of(amplifier, outputs):
    return {"id": identifier(amplifier["name"]), "name": amplifier["name"], "mass_g": amplifier["mass_g"], "price": amplifier["price"],
            "outputs": [{"id": "out", "output_count": len(outputs), "minimum_ohm": amplifier["minimum_ohm"], "minimum_bridged_ohm": amplifier["minimum_bridged_ohm"],
                         "output_ohm": amplifier["output_ohm"], "ratings": {
                             "supply_v": amplifier["supply_v"], "basis": amplifier["basis"], "points": [
                                 {"load_ohm": amplifier[f"load_{n}_ohm"], "power_w": amplifier[f"power_{n}_w"]} for n in (0, 1)]}}]}
