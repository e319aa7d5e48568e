"""The sheet Comparison: factory part, new part and change of each channel."""
from contract import unit
from entries import COMPARISON
from formulas import number, word
from layout import CHANNELS, COMPARED_FIGURES, FIRST
from told import list_told, with_channel

FIRST_FIGURE = 5


def fill_comparison(book):
    sheet = book.comparison
    sheet.put(1, 1, "Before and after", "title")
    sheet.put(2, 1, "Levels are of one driver at 1 m, other figures of all drivers of the channel.", "plain")
    headings = [("Channel", 3.6), ("Verdict", 2.1), ("", 1.7), ("Part", 4.4)] + [(label, 2.5) for label, *_ in COMPARED_FIGURES]
    for column, (label, width) in enumerate(headings, 1):
        sheet.widths.append(width)
        sheet.put(FIRST - 2, column, label, "heading")
        sheet.put(FIRST - 1, column, "", "field")
    for column, (_, side, change, *_) in enumerate(COMPARED_FIGURES, FIRST_FIGURE):
        sheet.put(FIRST - 1, column, unit(side), "field", help=explained(book.contract, side, change))
    for i in range(CHANNELS):
        compare(book, FIRST + 3 * i, i)
    texts = [f'IF({book.of(i, "wrong_parts")}<>"",{book.of(i, "wrong_parts")},{book.calls.ref(book.call_row(i, COMPARISON), 9)})'
             for i in range(CHANNELS)]
    list_told(book, sheet, FIRST + 3 * CHANNELS + 1, len(headings), "What to know",
              [with_channel(text, book.of(i, "name")) for i, text in enumerate(texts)]
              + [with_channel(book.calls.ref(book.masses_row, 9), '"vehicle"')])


def compare(book, top, i):
    sheet, row, name = book.comparison, book.call_row(i, COMPARISON), book.of(i, "name")
    sheet.merge(top, 1, top + 2, 1, f"={name}", "name")
    sheet.merge(top, 2, top + 2, 2, f'=IF({book.of(i, "wrong_parts")}<>"","fault",{book.calls.ref(row, 3)})', "verdict")
    for n, label in enumerate(("factory", "new", "change")):
        style = "total" if label == "change" else "output"
        sheet.put(top + n, 3, f'=IF({name}="","","{label}")', style)
        sheet.put(top + n, 4, f'=IF({name}="","",{book.of_channel(i, label)}&"")' if n < 2 else None, style)
        for column, (_, side, change, form, change_form) in enumerate(COMPARED_FIGURES, FIRST_FIGURE):
            field, shown = (change, change_form) if n == 2 else (side, form)
            read = number if shown else word
            sheet.put(top + n, column, "=" + read(book.part(row, 2 + n), field) if field else None,
                      style + ("_number" if shown else "_word"), shown)
        sheet.heights[top + n] = 0.6


def explained(contract, side, change):
    texts = [contract.result(COMPARISON, f"positions.before.{side}").get("description", "")] if side else []
    if change:
        texts.append("Change: " + contract.result(COMPARISON, f"positions.change.{change}").get("description", ""))
    return ". ".join(text for text in texts if text)
