"""What the service says, each finding in a row of its own: a row keeps its height when answers change, so no text
may grow in it."""
from formulas import LINE, TAB, line, q
from layout import LONGEST_TOLD, TOLD


def with_channel(text, channel):
    """Its lines, each with the channel behind it."""
    return f"SUBSTITUTE({text},{LINE},{TAB}&{channel}&{LINE})"


def list_told(book, sheet, top, end, heading, texts):
    """The lines of texts in rows: channel, level, text. Of more than there are rows, the last says how many."""
    store = book.ready_row + 2 + book.sheets.index(sheet)
    lines = book.split.put(store, 1, "=" + "&".join(texts), "machine")
    count = f'(LEN({lines})-LEN(SUBSTITUTE({lines},{LINE},"")))'
    nothing = q(book.say("Nothing."))
    more = book.tell("and {count} more, to be read on the sheet Calls", count=f"({count}-{TOLD - 1})")
    sheet.put(top, 1, heading, "group")
    sheet.row_breaks = [top]
    for n in range(1, TOLD + 1):
        row, told = top + n, line(lines, n)
        if n == 1:
            told = f'IF(AND({lines}="",COUNTA({book.channel_area("name")})>0),"ok: "&{nothing}&{TAB},{told})'
        if n == TOLD:
            told = f'IF({count}>{TOLD},"warning: "&{more}&{TAB},{told})'
        told = book.split.put(store, 1 + n, f"={told}", "machine")
        ends, colon = f"FIND({TAB},{told})", f'FIND(":",{told})'
        sheet.heights[row] = 0.9
        channel = sheet.put(row, 1, f'=IFERROR(MID({told},{ends}+1,200),"")', "told")
        level = sheet.put(row, 2, "=" + book.shown(f"LEFT({told},{colon}-1)"), "told_level")
        text = sheet.merge(row, 3, row, end, f'=IFERROR(MID({told},{colon}+2,MIN({LONGEST_TOLD},{ends}-{colon}-2)),"")', "told")
        book.told.setdefault(sheet.name, []).append((channel, level, text))


def show_cautions(book, sheet, row, column, last_row, last_column):
    sheet.put(row, column, book.say("Cautions"), "group")
    sheet.merge(row + 1, column, last_row, last_column, f"={book.cautions}", "caution")
