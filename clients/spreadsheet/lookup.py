"""What is worked out for each channel: parts looked up, distances, powers, and what is wrong. A column is a function
of the workbook and the channel's number; the service does all else."""
from entries import AMPLIFIER, DRIVER
from formulas import LINE, alone, q, worst
from layout import CHANNELS, FIRST, NEEDED
from questions import delays_of


def name(book, i):
    return f'IF({book.of_channel(i, "name")}="","",{book.of_channel(i, "name")})'


def counted(key):
    """The number of the channel among those that fill this column, from 0."""
    def formula(book, i):
        first, here = book.of_channel(0, key), book.of_channel(i, key)
        return f'IF(OR({book.of_channel(i, "name")}="",{here}=""),"",COUNTA({first}:{here.partition("!")[2]})-1)'
    return formula


def row_of(side):
    def formula(book, i):
        wanted, names = book.of_channel(i, side), book.names["amplifiers" if side == "amplifier" else "drivers"]
        return f'IF({wanted}="","",IFERROR(MATCH({wanted},{names},0),"unknown"))'
    return formula


def of_part(side, key):
    def formula(book, i):
        area = book.amplifier_area(key) if side == "amplifier" else book.driver_area(key)
        found = f'INDEX({area},{book.of(i, side + ".row")})'
        return f'IFERROR(IF({found}="","",{found}),"")'
    return formula


def count(book, i):
    """One if nothing is said, as for the service; a number typed as text counts."""
    entered = book.of_channel(i, "count")
    return f'IF({entered}="",1,IF(ISNUMBER({entered}),{entered},IFERROR(NUMBERVALUE({entered},".",","),{entered})))'


def distance(book, i):
    axes = [(book.of_channel(i, axis), book.cell["seat_" + axis]) for axis in ("x_m", "y_m", "z_m")]
    known = ",".join(f"ISNUMBER({cell})" for pair in axes for cell in pair)
    return f'IF(AND({known}),SQRT({"+".join(f"({here}-{seat})^2" for here, seat in axes)}),"")'


def power_at_drivers(book, i):
    """What the amplifier gives, less the cable's part."""
    power, load, with_cable = (book.figure(i, key) for key in ("clean_power_w", "load_ohm", "load_with_cable_ohm"))
    return f'IFERROR({power}*{load}/{with_cable},"")'


def programme_power(book, i):
    """A sine at full power has a crest factor of 2 in power; the programme's is larger by its own."""
    crest = book.cell["crest_factor_db"]
    return f'IF(ISNUMBER({crest}),IFERROR(2*{book.of(i, "power_at_drivers")}/10^({crest}/10),""),"")'


def continuous_power_of_all(book, i):
    return f'IFERROR({book.of(i, "count")}*{book.of(i, "new.continuous_power_w")},"")'


def clean_power_for_each(book, i):
    return f'IFERROR({book.of(i, "power_at_drivers")}/{book.of(i, "count")},"")'


def faults(book, i, told):
    """A line for each condition that holds."""
    lines = "&".join(f'IF({condition},{text}&{LINE},"")' for condition, text in told)
    return f'IF({book.of_channel(i, "name")}="","",{lines})'


def wrong_parts(book, i):
    told = [(f'{book.of_channel(i, "new")}=""', q("fault: No new driver is chosen. What stays in the car is chosen again.")),
            (f'{book.of_channel(i, "amplifier")}=""', q("fault: No amplifier is chosen. A factory radio is entered on the sheet Parts as one."))]
    told += [(f'{book.of(i, side + ".row")}="unknown"', q(f"fault: {label} is not on the sheet Parts: ") + f'&{book.of_channel(i, side)}&"."')
             for side, label in [("factory", "The factory driver"), ("new", "The new driver"), ("amplifier", "The amplifier")]]
    return faults(book, i, told)


def wrong_numbers(book, i):
    return faults(book, i, [
        (f'{book.of(i, "distance_m")}=""', q("fault: No level: a position of the channel or of the seat is not a number.")),
        (f'NOT(ISNUMBER({book.cell["crest_factor_db"]}))', q("fault: No level: the programme's peak over RMS, on the sheet Vehicle, is not a number."))])


def unread(book, i):
    """What else is missing: all questions went well, and yet a figure is empty."""
    delays = f'AND({book.figure(i, "delay_ms")}="",LEFT({book.all_delays},1)="{{")'
    told = [(delays if key == "delay_ms" else f'{book.figure(i, key)}=""', q(f"fault: The answer has no {key}: see the sheet Calls.")) for key in NEEDED]
    fine = f'AND({book.of(i, "wrong_parts")}&{book.of(i, "wrong_numbers")}="",{book.of(i, "worst_answer")}<>"fault")'
    return f'IF({fine},{faults(book, i, told)},"")'


def worst_answer(book, i):
    called = book.called(i, 3)
    return worst(f"{called[0]}:{called[-1].partition('!')[2]}")


def to_solve(book, i):
    wrong = "&".join(book.of(i, key) for key in ("wrong_parts", "wrong_numbers", "unread"))
    return f"{wrong}&{alone(book.called(i, 7))}"


def warnings(book, i):
    return alone(book.called(i, 8))


LOOKUP = {
    "name": name, "index": counted("name"), "crossover_index": counted("lower"), "count": count, "distance_m": distance,
    "factory.row": row_of("factory"), "new.row": row_of("new"), "amplifier.row": row_of("amplifier"),
    "power_at_drivers": power_at_drivers, "programme_power_w": programme_power,
    "continuous_power_of_all": continuous_power_of_all, "clean_power_for_each": clean_power_for_each,
    **{f"{side}.{key}": of_part(side, key) for side, columns in (("factory", DRIVER), ("new", DRIVER), ("amplifier", AMPLIFIER))
       for key, *_ in columns},
    "delays_query": delays_of, "wrong_parts": wrong_parts, "wrong_numbers": wrong_numbers, "unread": unread,
    "worst_answer": worst_answer, "to_solve": to_solve, "warnings": warnings,
}


def fill_lookup(book):
    sheet = book.lookup
    sheet.put(1, 1, "Lookup", "title")
    sheet.put(2, 1, "What the parts of each channel say, and what is worked out from it. Nothing to enter here.", "plain")
    for key, formula in LOOKUP.items():
        sheet.put(FIRST - 2, book.lookup_column[key], key, "heading")
        for i in range(CHANNELS):
            sheet.put(FIRST + i, book.lookup_column[key], "=" + formula(book, i), "machine")
