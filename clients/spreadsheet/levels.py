"""The sheet Levels: which gain gives the level that is wished for, channel by channel."""
from formulas import line, number, q
from layout import CHANNELS, FIRST, WISHED_LEVEL

# Heading, unit, number format, width.
COLUMNS = [("Channel", "", "", 3.6), ("Verdict", "", "", 2.1), (WISHED_LEVEL, "dB SPL", "0.0", 2.4), ("Level at full gain", "dB SPL", "0.0", 2.4),
           ("Power with music", "W", "0.00", 2.4), ("Gain, against the clean limit", "dB", "+0.0", 2.9),
           ("Full-scale sine at the terminals", "V", "0.00", 2.9), ("What to know", "", "", 14)]
BEYOND = "The amplifier does not give that cleanly. Wish for less, or choose a larger amplifier or a more sensitive driver."


def fill_levels(book):
    sheet = book.levels
    sheet.put(1, 1, book.say("Levels"), "title")
    sheet.put(2, 1, book.say("Enter a level for the main seat: the service looks for the power that reaches it. Turn the gain to the voltage, filters and trims flat."), "plain")
    for column, (heading, below, _, width) in enumerate(COLUMNS, 1):
        sheet.widths.append(width)
        sheet.put(FIRST - 2, column, book.say(heading), "heading")
        sheet.put(FIRST - 1, column, below, "field")
    for i in range(CHANNELS):
        solve(book, FIRST + i, i)


def solve(book, row, i):
    sheet, call, name = book.levels, book.level_row(i), book.of(i, "name")
    answer, stops, warnings = (book.calls.ref(call, column) for column in (6, 7, 8))
    # Findings have a value too: the one that is sought stands first in the result.
    power = number(answer, 'result":{"value')
    gain = f'IFERROR(10*LOG10({sheet.ref(row, 5)}/{book.of(i, "programme_power_w")}),"")'
    full = f'SQRT({book.figure(i, "clean_power_w")}*{book.figure(i, "load_with_cable_ohm")})'
    first = line(f"({stops}&{warnings})", 1)
    in_words = f'IFERROR(MID({first},FIND(":",{first})+2,2000),"")'  # the level stands in a column of its own
    beyond = f'N({sheet.ref(row, 6)})>0'
    for column, formula, style in [
            (1, name, "name"), (2, book.shown(f'IF({beyond},"stop",{book.calls.ref(call, 3)})'), "verdict"),
            (4, book.figure(i, "level_db_spl"), "output_number"), (5, power, "output_number"), (6, gain, "output_number"),
            (7, f'IFERROR({full}*10^({sheet.ref(row, 6)}/20),"")', "output_number"),
            (8, f'IF({beyond},{q(book.say(BEYOND))},{in_words})', "says")]:
        sheet.put(row, column, "=" + formula, style, COLUMNS[column - 1][2])
    wished = book.demo["levels"][i] if i < len(book.demo["levels"]) else None
    sheet.put(row, 3, wished, "input_number", COLUMNS[2][2], help=book.contract.help("{calculation}/solve", "target", book.words, book.units))
    sheet.heights[row] = 1.3
