"""Where a person entered what a question sends: a fault of the service names the row and the column instead of the field."""
import re

from openpyxl.utils import get_column_letter

from entries import AMPLIFIER, CHANNEL, DRIVER, VEHICLE
from formulas import LINE, q
from layout import FIRST, RESULTS, WISHED, WISHED_LEVEL

LABELS = {key: label for key, label, *_ in CHANNEL}
OF_PARTS = {"new": DRIVER, "factory": DRIVER, "amplifier": AMPLIFIER}
# What is worked out from entries or answers, by the cell a person finds it at.
WORKED_OUT = {"distance_m": ("channels", "x_m"), "count": ("channels", "count"), "lower": ("channels", "lower"),
              "programme_power_w": ("results", "programme_power_w"), "clean_power_for_each": ("results", "clean_power_w"),
              "continuous_power_of_all": ("new", "continuous_power_w")}


def column(book, number, label):
    return book.say("column {letter} ({label})").format(letter=get_column_letter(number), label=book.say(label))


def row_of(book, sheet, row):
    return book.say("{sheet}, row {row}").format(sheet=sheet.name, row=row)


def of_channel(book, i, key):
    """The place of a cell of the sheet Channels, as plain text."""
    return f'{row_of(book, book.channels, FIRST + i)}, {column(book, book.channel_column[key], LABELS[key])}'


def of_vehicle(book, key):
    label = next(label for name, label, *_ in (entry for entry in VEHICLE if len(entry) > 1) if name == key)
    return f"{row_of(book, book.vehicle, book.cell[key].rpartition('$')[2])}, {column(book, 3, label)}"


def of_part(book, i, side, key):
    """The place of a figure of a channel's part, as a formula: its row follows what is chosen."""
    columns = OF_PARTS[side]
    number = next(n for n, (name, *_) in enumerate(columns, 1) if name == key)
    above = (book.first_amplifier if side == "amplifier" else FIRST) - 1
    row = f'({above}+N({book.of(i, side + ".row")}))'
    return book.tell("{sheet}, row {row}", sheet=q(book.parts.name), row=row) + "&" + q(f", {column(book, number, columns[number - 1][1])}")


def place(book, cell):
    """The place of what stands in a cell, as a formula."""
    name, letter, row = re.fullmatch(r"(\w+)!\$([A-Z]+)\$(\d+)", cell).groups()
    if name == book.vehicle.name:
        return q(of_vehicle(book, next(key for key, ref in book.cell.items() if ref == cell)))
    i = int(row) - FIRST
    if name == book.lookup.name:
        key = next(key for key, number in book.lookup_column.items() if get_column_letter(number) == letter)
        side, key = WORKED_OUT.get(key) or key.split(".")
        if side in OF_PARTS:
            return of_part(book, i, side, key)
        cell = book.figure(i, key) if side == "results" else book.of_channel(i, key)
        return place(book, cell)
    sheet = next(sheet for sheet in book.sheets if sheet.name == name)
    columns = {book.channels.name: [(label, key) for key, label, *_ in CHANNEL], book.results.name: [(label, key) for key, label, *_ in RESULTS],
               book.levels.name: [("", "")] * (WISHED - 1) + [(WISHED_LEVEL, "")], book.totals.name: [("", "")] * 5 + [("Mass change", "")]}[name]
    number = next(n for n in range(1, len(columns) + 1) if get_column_letter(n) == letter)
    return q(f"{row_of(book, sheet, row)}, {column(book, number, columns[number - 1][0])}")


def located(book, answer, query):
    """The faults of an answer, each in a line of its own and with the place of the entry instead of the field's name."""
    faults = book.words.faults  # how they name a field, and what is put otherwise before and behind the search for it
    text = substituted(f'" "&{answer}', faults["before"])
    for name, cell in with_groups(query.entered).items():
        # A name of one word stands in sentences as well.
        for before, behind in faults["field" if re.search(r"[._]", name) else "word"]:
            text = f'SUBSTITUTE({text},{q(before + name + behind)},{q(before.removesuffix("the "))}&{place(book, cell)}&{q(behind)})'
    for group, rows in query.rows.items():
        for index, where in rows:
            text = f'SUBSTITUTE({text}," {group}."&{index}&".",{q(f" {where}, ")})'
    for name, where in query.columns.items():
        for _, behind in faults["field"]:
            text = f'SUBSTITUTE({text},{q(f", {name}{behind}")},{q(f", {where}{behind}")})'
    for sheet in (book.vehicle, book.channels, book.parts, book.results, book.levels, book.totals):
        start = row_of(book, sheet, "")
        text = f'SUBSTITUTE({text},{q(f". {start}")},"."&{LINE}&{q(f"fault: {start}")})'
    return f'MID({substituted(text, faults["behind"])},2,2000)'


def substituted(text, pairs):
    for said, meant in pairs:
        text = f"SUBSTITUTE({text},{q(said)},{q(meant)})"
    return text


def with_groups(entered):
    """A group that lacks as a whole is found at its first field."""
    found = dict(entered)
    for name, cell in entered.items():
        while "." in name:
            name = name.rpartition(".")[0]
            if not name.rpartition(".")[2].isdigit():
                found.setdefault(name, cell)
    return found
