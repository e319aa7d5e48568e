"""The sheet Results: the figures of each channel, its verdict, and what must be read."""
from contract import unit
from entries import DELAYS, RAIL
from formulas import number, word, worst
from layout import CHANNELS, FINDINGS, FIRST, RESULTS
from told import list_told, show_cautions, with_channel

STYLES = {"verdict": "verdict", "name": "name"}


def fill_results(book):
    sheet, contract = book.results, book.contract
    sheet.put(1, 1, "Results", "title")
    sheet.put(2, 1, f'={book.cell["vehicle"]}&", at the seat "&{book.cell["seat"]}', "plain")
    for column, (key, label, calculation, part, form, width) in enumerate(RESULTS, 1):
        sheet.widths.append(width)
        sheet.put(FIRST - 2, column, label, "heading")
        sheet.put(FIRST - 1, column, unit(key), "field",
                  help=contract.result(calculation, f"{part}.{key}".strip(".")).get("description", "") if calculation else "")
        for i in range(CHANNELS):
            sheet.put(FIRST + i, column, "=" + shown(book, i, key, calculation, part, form),
                      STYLES.get(key, "output_number" if form else "output_word"), form)
            sheet.heights[FIRST + i] = 0.95
    last, end = FIRST + CHANNELS, len(RESULTS)
    book.verdict = summary(book, last, end)
    show_cautions(book, sheet, last + 3, 1, last + 4, end)
    sheet.heights[last + 4] = 3.4
    list_told(book, sheet, last + 6, end, "Faults, stops and warnings",
              told(book, "to_solve", 7) + told(book, "warnings", 8))


def told(book, key, column):
    """Of each channel, and of the delays of all."""
    channels = [with_channel(book.of(i, key), book.of(i, "name")) for i in range(CHANNELS)]
    return channels + [with_channel(book.calls.ref(book.delays_row, column), '"delays"')]


def summary(book, row, end):
    """Below the channels: what holds for all."""
    sheet = book.results
    verdicts = sheet.area(FIRST, 2, row, 2)
    for r, label, verdict, notes in [(row, "Delays of all", f"={book.calls.ref(book.delays_row, 3)}", f"={notes_of(book, [book.delays_row])}"),
                                     (row + 1, "The whole system", f"={worst(verdicts)}", f"=SUM({sheet.area(FIRST, end, row, end)})")]:
        for column in range(1, end):
            sheet.put(r, column, None, "total")
        sheet.put(r, 1, label, "total")
        sheet.put(r, 2, verdict, "verdict")
        sheet.put(r, end, notes, "total_number", "0")
    return sheet.ref(row + 1, 2)


def shown(book, i, key, calculation, part, form):
    if key in VALUES:
        return VALUES[key](book, i)
    read = number if form else word
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
    wrong = "&".join(book.of(i, key) for key in ("wrong_parts", "wrong_numbers", "unread"))
    return f'IF({wrong}<>"","fault",{book.of(i, "worst_answer")})'


def notes(book, i):
    name = book.of(i, "name")
    return f'IF({name}="","",{notes_of(book, book.call_rows(i))})'


def notes_of(book, rows):
    return "+".join(f'SUMPRODUCT(--(LEFT({book.split.area(row, 3, row, 2 + FINDINGS)},6)="note: "))' for row in rows)


VALUES = {"name": lambda book, i: book.of(i, "name"), "verdict": verdict, "notes": notes,
          "programme_power_w": lambda book, i: book.of(i, "programme_power_w")}
