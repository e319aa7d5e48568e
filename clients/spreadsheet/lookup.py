"""What is worked out for each channel: parts looked up, distances, powers, and what is wrong. A column is a function
of the workbook and the channel's number; the service does all else."""
from entries import AMPLIFIER, CHANNEL, COMPARISON, DRIVER
from formulas import LINE, alone, misread, number, q, worst
from layout import CHANNELS, FIRST, NEEDED, RESULTS
from places import of_channel, of_part as place_of_part, of_vehicle


TEXT = "{place}: {entered} is a text here, not a number. Write it with this spreadsheet's decimal sign."


def name(book, i):
    return f'IF({book.of_channel(i, "name")}="","",{book.of_channel(i, "name")})'


def index(book, i):
    """The number of the channel among those with a name, from 0."""
    first, here = book.of_channel(0, "name"), book.of_channel(i, "name")
    return f'IF({here}="","",COUNTA({first}:{here.partition("!")[2]})-1)'


def lower(book, i):
    """The number of the channel that plays below, from 1."""
    wanted = book.of_channel(i, "lower")
    return f'IF(OR({book.of_channel(i, "name")}="",{wanted}=""),"",IFERROR(MATCH({wanted},{book.channel_area("name")},0),"unknown"))'


def crossover_index(book, i):
    """The number of its crossover, from 0."""
    first, here = book.of(0, "lower"), book.of(i, "lower")
    return f'IF(ISNUMBER({here}),COUNT({first}:{here.partition("!")[2]})-1,"")'


def mass_index(book, i):
    """Its number among the channels whose masses can be sent, from 0: those that could be compared."""
    compared = book.calls.ref(book.call_row(i, COMPARISON), 3)
    before = f'COUNT({book.of(0, "mass_index")}:{book.of(i - 1, "mass_index").partition("!")[2]})' if i else "0"
    return f'IF(OR({compared}="",{compared}="fault"),"",{before})'


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
    lines = "&".join(f'IF({condition},"fault: "&{text}&{LINE},"")' for condition, text in told)
    return f'IF({book.of_channel(i, "name")}="","",{lines})'


def wrong_parts(book, i):
    def at(key, text, **parts):
        return book.tell(text, place=q(of_channel(book, i, key)), **parts)

    told = [(f'{book.of_channel(i, "new")}=""', at("new", "{place}: none is chosen. What stays in the car is chosen again.")),
            (f'{book.of_channel(i, "amplifier")}=""', at("amplifier", "{place}: none is chosen. A factory radio is entered on the sheet Parts as one."))]
    told += [(f'{book.of(i, key + ".row")}="unknown"', at(key, "{place}: {part} is not on the sheet Parts.", part=book.of_channel(i, key)))
             for key in ("factory", "new", "amplifier")]
    return faults(book, i, told)


def wrong_numbers(book, i):
    positions = [(book.of_channel(i, axis), of_channel(book, i, axis)) for axis in ("x_m", "y_m", "z_m")]
    positions += [(book.cell[key], of_vehicle(book, key)) for key in ("seat_x_m", "seat_y_m", "seat_z_m", "crest_factor_db")]
    return faults(book, i, [(f"NOT(ISNUMBER({cell}))", book.tell("No level: {place} is not a number.", place=q(place))) for cell, place in positions])


def wrong_names(book, i):
    name, lower = book.of_channel(i, "name"), book.of_channel(i, "lower")
    return faults(book, i, [
        (f'SUMPRODUCT(--({book.channel_area("name")}={name}))>1', book.tell("{place}: another channel is called so too.", place=q(of_channel(book, i, "name")))),
        (f'{book.of(i, "lower")}="unknown"', 
         book.tell("{place}: no channel is called {name}.", place=q(of_channel(book, i, "lower")), name=lower))])


def texts_of(side):
    """Numbers that stand as text: the service takes them, the sheets do not reckon with them."""
    def formula(book, i):
        if side == "channel":
            entered = [(book.of_channel(i, key), q(of_channel(book, i, key))) for key in numbers(book, CHANNEL)]
        else:
            entered = [(book.of(i, f"{side}.{key}"), place_of_part(book, i, side, key))
                       for key in numbers(book, AMPLIFIER if side == "amplifier" else DRIVER)]
        return faults(book, i, [(misread(cell), book.tell(TEXT, place=place, entered=cell)) for cell, place in entered])
    return formula


def numbers(book, columns):
    """Which of these columns hold numbers."""
    return [key for key, _, calculation, name, *_ in columns if calculation and book.contract.numeric(calculation, name)]


def unread(book, i):
    """What else is missing: all questions went well, and yet a figure is empty."""
    delays = f'AND({book.figure(i, "delay_ms")}="",LEFT({book.all_delays},1)="{{")'
    labels = {key: label for key, label, *_ in RESULTS}
    told = [(delays if key == "delay_ms" else f'{book.figure(i, key)}=""', book.tell("The answer has nothing for {figure}: see the sheet Calls.", figure=q(book.say(labels[key]))))
            for key in NEEDED]
    fine = f'AND({"&".join(book.of(i, key) for key in ("wrong_parts", "wrong_numbers"))}="",{book.of(i, "worst_answer")}<>"fault")'
    return f'IF({fine},{faults(book, i, told)},"")'


def wrong(book, i):
    """All that is wrong with the channel before or without an answer."""
    return "&".join(book.of(i, key) for key in WRONG)


def worst_answer(book, i):
    called = book.called(i, 3)
    return worst(f"{called[0]}:{called[-1].partition('!')[2]}")


def compared(n, key):
    """A figure of the comparison, for the customer's page."""
    return lambda book, i: number(book.part(book.call_row(i, COMPARISON), n), key)


def verdict(book, i):
    return f'IF({book.of(i, "wrong")}<>"","fault",{book.of(i, "worst_answer")})'


def to_solve(book, i):
    return f'{book.of(i, "wrong")}&{alone(book.called(i, 7))}'


def warnings(book, i):
    return alone(book.called(i, 8))


WRONG = ["wrong_parts", "wrong_numbers", "wrong_names", "texts.channel", "texts.new", "texts.factory", "texts.amplifier", "unread"]
def wrong_vehicle(book):
    """What is wrong with entries of the sheet Vehicle."""
    told = [(misread(cell), book.tell(TEXT, place=q(of_vehicle(book, key)), entered=cell)) for key, cell in book.cell.items() if key in book.numbers]
    return "&".join(f'IF({condition},"fault: "&{text}&{LINE},"")' for condition, text in told)


LOOKUP = {
    "name": name, "index": index, "lower": lower, "crossover_index": crossover_index, "mass_index": mass_index, "count": count, "distance_m": distance,
    "factory.row": row_of("factory"), "new.row": row_of("new"), "amplifier.row": row_of("amplifier"),
    "power_at_drivers": power_at_drivers, "programme_power_w": programme_power,
    "continuous_power_of_all": continuous_power_of_all, "clean_power_for_each": clean_power_for_each,
    **{f"{side}.{key}": of_part(side, key) for side, columns in (("factory", DRIVER), ("new", DRIVER), ("amplifier", AMPLIFIER))
       for key, *_ in columns},
    "wrong_parts": wrong_parts, "wrong_numbers": wrong_numbers, "wrong_names": wrong_names,
    **{f"texts.{side}": texts_of(side) for side in ("channel", "new", "factory", "amplifier")}, "unread": unread, "wrong": wrong,
    "worst_answer": worst_answer, "verdict": verdict,
    "louder_db": compared(4, "largest_level_db"), "octaves_lower": compared(4, "lower_reach_octaves"),
    "heavier_g": compared(1, "mass_change_g"), "lowest_after_hz": compared(3, "lowest_useful_hz"),
    "to_solve": to_solve, "warnings": warnings,
}


def fill_lookup(book):
    sheet = book.lookup
    for key, formula in LOOKUP.items():
        sheet.put(FIRST - 2, book.lookup_column[key], key, "heading")
        for i in range(CHANNELS):
            sheet.put(FIRST + i, book.lookup_column[key], "=" + formula(book, i), "machine")
    book.wrong_vehicle = sheet.put(FIRST + CHANNELS, 1, "=" + wrong_vehicle(book), "machine")
