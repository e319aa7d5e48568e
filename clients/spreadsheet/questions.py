"""The questions about one channel, and when they are put."""
from entries import COMPARISON, DRIVER, RAIL, SIDE, SOUND, WIRING
from formulas import Query
from lists import short

LEAST_W, MOST_W = 0.0001, 20000  # between these a power is looked for


def named(book, i):
    return f'{book.of_channel(i, "name")}<>"",{book.of(i, "wrong_parts")}=""'


def filled(*cells):
    return ",".join(f'{cell}<>""' for cell in cells)


def wiring(book, i):
    query = Query(book, WIRING).value("network", book.of_channel(i, "network"))
    for name in ("minimum_ohm", "minimum_bridged_ohm", "output_ohm"):
        query.value("amplifier." + name, book.of(i, "amplifier." + name))
    query.value("bridged", book.of_channel(i, "bridged"))
    query.value("cable.one_way_m", book.of_channel(i, "cable_m")).value("cable.area_mm2", book.of_channel(i, "cable_mm2"))
    return query, f"AND({named(book, i)})"


def rail(book, i):
    query = Query(book, RAIL)
    query.value("load_ohm", book.figure(i, "load_with_cable_ohm"))
    for key, name in [("supply_v", "ratings.supply_v"), ("basis", "ratings.basis"), ("load_0_ohm", "ratings.points.0.load_ohm"),
                      ("power_0_w", "ratings.points.0.power_w"), ("load_1_ohm", "ratings.points.1.load_ohm"),
                      ("power_1_w", "ratings.points.1.power_w"), ("minimum_ohm", "minimum_ohm"),
                      ("minimum_bridged_ohm", "minimum_bridged_ohm"), ("regulated", "supply_regulated"), ("rated_bridged", "ratings.bridged")]:
        query.value("amplifier." + name, book.of(i, "amplifier." + key))
    query.value("bridged", book.of_channel(i, "bridged")).value("supply_v", book.cell["supply_v"])
    power = book.of(i, "continuous_power_of_all")
    query.group(f'{power}<>""', lambda driver: driver
                .value("driver.continuous_power_w", power).value("driver.rated_ohm", book.figure(i, "load_ohm")))
    return query, f'AND({named(book, i)},{filled(book.figure(i, "load_ohm"))})'


def sound(book, i):
    power = book.of(i, "programme_power_w")
    return played(Query(book, SOUND), book, i).value("power_w", power), f'AND({named(book, i)},{filled(power, book.of(i, "distance_m"))})'


def power_for(book, i, level):
    """With how much power the channel is as loud as wished."""
    query = played(Query(book, SOUND, "solve"), book, i).question(
        input="power_w", from_=str(LEAST_W), to=str(MOST_W), output="level_db_spl", target=level)
    return query, f'AND({named(book, i)},{filled(level, book.of(i, "distance_m"))})'


def played(query, book, i):
    """What the level of a channel depends on beside its power."""
    new, count, distance = (lambda key: book.of(i, "new." + key)), book.of(i, "count"), book.of(i, "distance_m")
    several, lowest = f"AND(ISNUMBER({count}),{count}>1)", book.of_channel(i, "lowest_hz")
    return (query
            .value("driver.sensitivity.level_db_spl", new("level_db_spl")).value("driver.sensitivity.basis", new("basis"))
            .value("driver.rated_ohm", new("rated_ohm"))
            .value("distance_m", distance).value("driver_count", count)
            .choice("drive", "shared", several).choice("addition", "coherent", several)
            .value("cabin.length_m", book.cell["cabin_length_m"]).value("crest_factor_db", book.cell["crest_factor_db"])
            .value("driver.continuous_power_w", new("continuous_power_w"))
            .group(f'AND({filled(new("sd_cm2"), new("xmax_mm"), lowest)})', lambda cone: cone
                   .value("driver.sd_cm2", new("sd_cm2")).value("driver.xmax_mm", new("xmax_mm")).value("displacement_hz", lowest)))


def compared(book, i):
    query, at, factory = Query(book, COMPARISON), "positions.0.", filled(book.of_channel(i, "factory"))
    query.short(at + "name", short(i), book.of_channel(i, "name"))
    for key, name in [("zone", "zone"), ("band", "band"), ("at", "at"), ("lowest_hz", "displacement_hz")]:
        query.value(at + name, book.of_channel(i, key))
    query.value(at + "driver_count", book.of(i, "count"))

    def side(of, name, part):
        for key, _, _, field, *_ in DRIVER[1:]:
            of.value(f"{at}{name}.{field.removeprefix(SIDE)}", book.of(i, f"{part}.{key}"))
        return of
    query.group(factory, lambda before: side(before, "factory", "factory"))
    side(query, "replacement", "new")
    query.group(f'AND({factory},{filled(book.cell["factory_power_w"])})', lambda before: before
                .value(at + "amplifier_before.power_w", book.cell["factory_power_w"])
                .value(at + "amplifier_before.load_ohm", book.cell["factory_load_ohm"]))
    clean = book.of(i, "clean_power_for_each")
    query.group(filled(clean), lambda after: after
                .value(at + "amplifier_after.power_w", clean).value(at + "amplifier_after.load_ohm", book.of(i, "new.rated_ohm")))
    for heavy in ("heavy_g", "heavy_doors_g"):
        query.fixed(heavy, 100000)  # what is heavy is asked of the whole vehicle
    query.value("currency", book.cell["currency"]).value("temperature_c", book.cell["temperature_c"])
    return query, f"AND({named(book, i)})"


QUESTIONS = {WIRING: wiring, RAIL: rail, SOUND: sound, COMPARISON: compared}  # about each channel

