"""The yellow sheets: Vehicle, Channels and Parts."""
from datetime import date

from entries import AMPLIFIER, CHANNEL, DRIVER, VEHICLE
from formulas import not_a_number, q
from sheets import GENERAL
from layout import AMPLIFIERS, CHANNELS, DRIVERS, FIRST, HEADING, HOW_TO
from units import GAUGE

NOT_A_NUMBER = "not a number"
DAY_ZERO = date(1899, 12, 30)  # the day that spreadsheets number 0
REMARKS = 4  # width of the column with them in cm


def fill_vehicle(book):
    sheet, row = book.vehicle, 3
    values = {**book.demo["vehicle"], "address": book.address}
    values |= {key: date.fromisoformat(values[key]) for key in ("date", "valid_until")}
    sheet.put(1, 2, book.say("Quote for a sound system"), "title")
    for key, *entered in VEHICLE:
        if not entered:
            row += row > 3
            sheet.put(row, 2, book.say(key), "group")
        else:
            label, calculation, name = entered
            sheet.put(row, 2, book.say(label), "label")
            if key == "status":
                answers = q(book.say("The service answers."))
                ready = book.calls.ref(book.ready_row, 6)
                sheet.merge(row, 3, row + 2, 4, f'=IF(LEFT({ready},1)="{{",{answers},{ready})', "says")
                book.status = sheet.ref(row, 3)
                row += 2
            else:
                book.cell[key] = entry(book, sheet, row, 3, values.get(key), calculation, name)
                sheet.put(row, 4, beside(book, key, calculation, name), "hint")
        row += 1
    for i, text in enumerate(HOW_TO):
        sheet.put(3 + i, 6, book.say(text), "hint" if i else "group")
    colours = 4 + len(HOW_TO)
    sheet.put(colours, 6, book.say("Colours"), "group")
    sheet.put(colours + 1, 6, book.say("You enter. Select such a cell to read what belongs there."), "input")
    sheet.put(colours + 2, 6, book.say("The service answers."), "output")
    book.vehicle_cautions = colours + 4


def beside(book, key, calculation, name):
    """The unit, or what is wrong with the entry."""
    cell, shown = book.cell[key], book.units.of(name) if calculation else ""
    if key == "currency":
        return f'=IF({cell}="",{q(book.say("missing"))},"")'
    if calculation and book.contract.numeric(calculation, name):
        book.numbers.add(key)
        return f'=IF({not_a_number(cell)},{q(book.say(NOT_A_NUMBER))},{q(shown)})'
    return shown


def fill_parts(book):
    sheet = book.parts
    sheet.put(1, 1, book.say("Parts"), "title")
    sheet.put(2, 1, book.say("Drivers, of the factory and new. The impedance is that of one driver as wired, all its voice coils together."), "plain")
    table(book, sheet, FIRST - 2, DRIVER, book.demo["drivers"], DRIVERS)
    top = book.first_amplifier - 2
    sheet.put(top - 1, 1, book.say("Amplifiers: the ratings of one channel, or of two bridged where it says so. A factory radio that stays is one too."), "plain")
    table(book, sheet, top, AMPLIFIER, book.demo["amplifiers"], AMPLIFIERS)
    sheet.widths.append(REMARKS)
    remarks(book, sheet, FIRST - 2, DRIVER, DRIVERS)
    remarks(book, sheet, top, AMPLIFIER, AMPLIFIERS)


def fill_channels(book):
    sheet = book.channels
    sheet.put(1, 1, book.say("Channels"), "title")
    sheet.put(2, 2, book.say("One row for each amplifier channel. Positions from the same origin as the seat: forward, to the left and up are positive."), "plain")
    table(book, sheet, FIRST - 2, CHANNEL, book.demo["channels"], CHANNELS)
    sheet.widths.append(REMARKS)
    remarks(book, sheet, FIRST - 2, CHANNEL, CHANNELS)
    sheet.breaks = [book.channel_column["cable_m"]]


def table(book, sheet, top, columns, values, count):
    """Headings, units, and rows to fill in."""
    sheet.heights[top] = HEADING
    for column, (key, label, calculation, name, width, choices) in enumerate(columns, 1):
        if len(sheet.widths) < column:
            sheet.widths.append(width)
        sheet.put(top, column, book.say(label), "heading")
        sheet.put(top + 1, column, book.unit(name) if calculation else "", "field")
        for i in range(count):
            value = values[i].get(key) if i < len(values) else None
            entry(book, sheet, top + 2 + i, column, value, calculation, name, book.names.get(choices))


def remarks(book, sheet, top, columns, count):
    """Beside each row, the columns where something else than a number stands."""
    first, last = len(columns) + 1, len(sheet.widths)
    sheet.merge(top, first, top, last, book.say("Not a number"), "heading")
    sheet.merge(top + 1, first, top + 1, last, "", "field")
    numbers = [(n, label, unread(book, name)) for n, (_, label, calculation, name, *_) in enumerate(columns, 1)
               if calculation and book.contract.numeric(calculation, name)]
    for row in range(top + 2, top + 2 + count):
        told = "&".join(f'IF({wrong(sheet.ref(row, n))},{q(f"; {book.say(label)}")},"")' for n, label, wrong in numbers)
        sheet.merge(row, first, row, last, f"=MID({told},3,300)", "output")


def unread(book, name):
    """Whether a cell of this field holds neither a number nor a gauge, where it may be one."""
    return (lambda cell: f'AND({not_a_number(cell)},RIGHT(UPPER({cell}),{len(GAUGE)})<>{q(GAUGE)})') if book.units.has_gauge(name) else not_a_number


def entry(book, sheet, row, column, value, calculation, name, choices=None):
    """A cell to fill in, explained and limited by the contract."""
    if calculation is None:
        day = isinstance(value, date)
        return sheet.put(row, column, (value - DAY_ZERO).days if day else value, "input", book.say("YYYY-MM-DD") if day else "",
                         help=book.say(name or ""), choices=choices)
    schema = book.contract.parameter(calculation, name)["schema"]
    numeric = book.contract.numeric(calculation, name)
    codes = ["true", "false"] if schema.get("type") == "boolean" else schema.get("enum")
    listed = [book.words.code(code) for code in codes] if codes else None
    offered = book.words_of(codes) if codes and any("," in word for word in listed) else listed  # a list in a cell is cut at commas
    value = book.words.code({"yes": "true", "no": "false"}.get(value, value)) if value and codes else value
    value = book.units.example(name, value)
    return sheet.put(row, column, value, "input_number" if numeric else "input", GENERAL if numeric else "",
                     help=book.contract.help(calculation, name, book.words, book.units), choices=choices or offered,
                     refusal=book.say("Please enter one of: {choices}.").format(choices=", ".join(listed)) if listed else "")
