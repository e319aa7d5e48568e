"""The sheet Comparison: factory part, new part and change of each channel."""
from entries import COMPARISON
from formulas import number, q, word
from layout import CHANNELS, COMPARED_FIGURES, FIRST
from told import list_told, with_channel

FIRST_FIGURE = 5


def fill_comparison(book):
    sheet = book.comparison
    sheet.put(1, 1, book.say("Before and after"), "title")
    sheet.put(2, 1, book.say("Levels are of one driver at 1 m, other figures of all drivers of the channel."), "plain")
    headings = [("Channel", 3.6), ("Verdict", 2.1), ("", 1.7), ("Part", 4.4)] + [(label, 3.2 if "octaves" in change or "price" in side + field else 2.5) for label, side, field, _, change in COMPARED_FIGURES]
    for column, (label, width) in enumerate(headings, 1):
        sheet.widths.append(width)
        sheet.put(FIRST - 2, column, book.say(label), "heading")
        sheet.put(FIRST - 1, column, "", "field")
    for column, (_, side, change, *_) in enumerate(COMPARED_FIGURES, FIRST_FIGURE):
        sheet.put(FIRST - 1, column, unit_of(book, side), "field", help=explained(book, side, change))
    for i in range(CHANNELS):
        compare(book, FIRST + 3 * i, i)
    texts = [f'IF({book.of(i, "wrong_parts")}<>"",{book.of(i, "wrong_parts")},{book.calls.ref(book.call_row(i, COMPARISON), 9)})'
             for i in range(CHANNELS)]
    list_told(book, sheet, FIRST + 3 * CHANNELS + 1, len(headings), book.say("What to know"),
              [with_channel(text, book.of(i, "name")) for i, text in enumerate(texts)]
              + [with_channel(book.calls.ref(book.masses_row, 9), q(book.say("vehicle")))])


def compare(book, top, i):
    sheet, row, name = book.comparison, book.call_row(i, COMPARISON), book.of(i, "name")
    verdict = f'IF({book.of(i, "wrong_parts")}<>"","fault",{book.calls.ref(row, 3)})'
    sheet.merge(top, 1, top + 2, 1, f"={name}", "name")
    sheet.merge(top, 2, top + 2, 2, f'={book.shown(verdict)}', "verdict")
    for n, label in enumerate(("factory", "new", "change")):
        style = "total" if label == "change" else "output"
        sheet.put(top + n, 3, f'=IF({name}="","",{q(book.say(label))})', style)
        sheet.put(top + n, 4, f'=IF({name}="","",{book.of_channel(i, label)}&"")' if n < 2 else None, style)
        for column, (_, side, change, form, change_form) in enumerate(COMPARED_FIGURES, FIRST_FIGURE):
            field, shown = (change, change_form) if n == 2 else (side, form)
            part = book.part(row, 2 + n)
            read = book.units.shown(field, number(part, field)) if shown else book.shown(word(part, field))
            sheet.put(top + n, column, "=" + read if field else None, style + ("_number" if shown else "_word"), book.units.form(field, shown).format(octaves=book.say("octaves")))
        sheet.heights[top + n] = 0.6


def unit_of(book, side):
    return "kg" if side == "mass_g" else book.unit(side)


def explained(book, side, change):
    """The contract explains its fields in English alone."""
    contract = book.contract
    if not book.words.of_contract:
        return ""
    texts = [contract.result(COMPARISON, f"positions.before.{side}").get("description", "")] if side else []
    if change:
        texts.append("Change: " + contract.result(COMPARISON, f"positions.change.{change}").get("description", ""))
    return ". ".join(text for text in texts if text)
