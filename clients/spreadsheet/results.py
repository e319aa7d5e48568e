"""The sheet Results: the figures of each channel, its verdict, and what must be read."""
from entries import DELAYS, RAIL
from formulas import number, q, word, worst
from layout import CHANNELS, FIRST, RESULTS
from told import list_told, show_cautions, with_channel

STYLES = {"verdict": "verdict", "name": "name"}


def fill_results(book):
    sheet, contract = book.results, book.contract
    sheet.put(1, 1, book.say("Results"), "title")
    sheet.put(2, 1, "=" + book.tell("{vehicle}, at the seat {seat}", vehicle=book.cell["vehicle"], seat=book.cell["seat"]), "plain")
    for column, (key, label, calculation, part, form, width) in enumerate(RESULTS, 1):
        sheet.widths.append(width)
        sheet.put(FIRST - 2, column, book.say(label), "heading")
        sheet.put(FIRST - 1, column, book.units.of(key), "field",
                  help=contract.result(calculation, f"{part}.{key}".strip(".")).get("description", "") if calculation and book.words.of_contract else "")
        for i in range(CHANNELS):
            sheet.put(FIRST + i, column, "=" + book.units.shown(key, shown(book, i, key, calculation, part, form)),
                      STYLES.get(key, "output_number" if form else "output_word"), form)
            sheet.heights[FIRST + i] = 0.95
    last, end = FIRST + CHANNELS, len(RESULTS)
    book.verdict = summary(book, last, end)
    show_cautions(book, sheet, last + 4, 1, last + 5, end)
    sheet.heights[last + 5] = 3.4
    book.cautions_shown = sheet.ref(last + 5, 1)
    list_told(book, sheet, last + 7, end, book.say("Faults, stops and warnings"),
              [with_channel(book.wrong_vehicle, q(book.say("vehicle")))] + told(book, "to_solve", 7) + told(book, "warnings", 8))


def told(book, key, column):
    """Of each channel, of the delays of all and of their masses."""
    channels = [with_channel(book.of(i, key), book.of(i, "name")) for i in range(CHANNELS)]
    return channels + [with_channel(book.calls.ref(row, column), q(book.say(name))) for row, name in ((book.delays_row, "delays"), (book.masses_row, "vehicle"))]


def summary(book, row, end):
    """Below the channels: what holds for all."""
    sheet = book.results
    lines = [(row + n, label, f"={book.shown(book.calls.ref(call, 3))}", f"={notes_of(book, [call])}")
             for n, (label, call) in enumerate((("Delays of all", book.delays_row), ("Masses of all", book.masses_row)))]
    system = row + len(lines)
    areas = book.lookup.area(FIRST, book.lookup_column["verdict"], FIRST + CHANNELS + 1, book.lookup_column["verdict"])
    for n, call in enumerate((book.delays_row, book.masses_row)):
        book.lookup.put(FIRST + CHANNELS + n, book.lookup_column["verdict"], f"={book.calls.ref(call, 3)}", "machine")
    verdicts = f'=IF({book.wrong_vehicle}<>"","fault",{worst(areas)})'
    verdicts = book.shown(verdicts.removeprefix("="))
    lines.append((system, "The whole system", f"={verdicts}", f"=SUM({sheet.area(FIRST, end, system - 1, end)})"))
    for r, label, verdict, notes in lines:
        for column in range(1, end):
            sheet.put(r, column, None, "total")
        sheet.put(r, 1, book.say(label), "total")
        sheet.put(r, 2, verdict, "verdict")
        sheet.put(r, end, notes, "total_number", "0")
    return sheet.ref(system, 2)


def shown(book, i, key, calculation, part, form):
    if key in VALUES:
        return VALUES[key](book, i)
    def read(answer, key):
        return number(answer, key) if form else book.shown(word(answer, key))

    if calculation == DELAYS:
        return read(book.part(book.delays_row, 1 + i), key)
    if part or (calculation, key) == (RAIL, "headroom_db"):
        return read(book.part(book.call_row(i, calculation), 1), key)
    found = read(book.answer(i, calculation), book.contract.searchable(calculation, key))
    if key == "load_with_cable_ohm":
        # Without a cable there is the load alone.
        return f'IF(ISNUMBER({found}),{found},{book.figure(i, "load_ohm")})'
    return found


def verdict(book, i):
    return book.shown(book.of(i, "verdict"))


def notes(book, i):
    name = book.of(i, "name")
    return f'IF({name}="","",{notes_of(book, book.call_rows(i))})'


def notes_of(book, rows):
    return "+".join(f'SUMPRODUCT(--(LEFT({book.findings(row)},6)="note: "))' for row in rows)


VALUES = {"name": lambda book, i: book.of(i, "name"), "verdict": verdict, "notes": notes,
          "programme_power_w": lambda book, i: book.of(i, "programme_power_w")}
