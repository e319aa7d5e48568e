"""The hidden sheet Split: answers taken apart into findings, cautions, and pieces whose names stand elsewhere too."""
from entries import COMPARISON, DELAYS, RAIL, SOUND
from formulas import FINDING, LINE, after, between
from layout import CAUTIONS, CHANNELS, COMPARED, FINDINGS, FIRST


def fill_split(book):
    sheet = book.split
    sheet.put(1, 1, "Split", "title")
    sheet.put(2, 1, "The answers taken apart. Nothing to enter here.", "plain")
    book.cautions = '""'
    for row in range(FIRST, book.ready_row + 1):
        sheet.put(row, 1, f"={book.calls.ref(row, 1)}", "machine")
        sheet.put(row, 2, f"={book.calls.ref(row, 2)}", "machine")
        findings(book, row)
        book.cautions = cautions(book, row, book.cautions)
    for i in range(CHANNELS):
        pieces(book, i)


def findings(book, row):
    answer = book.calls.ref(row, 6)
    for n in range(1, FINDINGS + 1):
        level, text = between(answer, FINDING, '"', n), between(answer, '"text":"', '","', n)
        book.split.put(row, 2 + n, f'=IF({level}="","",{level}&": "&SUBSTITUTE({text},"\\""",""""))', "machine")


def cautions(book, row, before):
    """Adds those of an answer that were not there before; gives the cell that holds all so far."""
    sheet, first = book.split, 2 + FINDINGS + 1
    found = sheet.put(row, first, "=" + between(book.calls.ref(row, 6), '"safety":["', '"]'), "machine")
    for n in range(1, CAUTIONS + 1):
        length = 2000 if n < CAUTIONS else 32000  # the last place takes all that is left
        line = sheet.put(row, first + n, f'=TRIM(MID(SUBSTITUTE({found},""",""",REPT(" ",2000)),{(n - 1) * 2000 + 1},{length}))', "machine")
        before = sheet.put(row, first + CAUTIONS + n,
                           f'={before}&IF(OR({line}="",LEN(SUBSTITUTE({before},{line},""))<LEN({before})),"","• "&{line}&{LINE})', "machine")
    return before


def pieces(book, i):
    """What follows a name may not be cut at the first brace: a person may have typed one."""
    contract, compared = book.contract, book.answer(i, COMPARISON)
    piece(book, book.call_row(i, RAIL), 1, between(book.answer(i, RAIL), '"result":{', "["))
    limits = f'"{contract.key(SOUND, "limits")}":{{'
    piece(book, book.call_row(i, SOUND), 1, between(book.answer(i, SOUND), limits, "}") + '&","')
    for n, (path, name) in enumerate(COMPARED.items(), 1):
        start = f'"{contract.key(COMPARISON, path)}":{{'
        found = after(compared, start + named(contract, COMPARISON, f"{path}.{name}")) if name else between(compared, start, "}") + '&","'
        piece(book, book.call_row(i, COMPARISON), n, found)
    index, start = book.of(i, "index"), "{" + named(contract, DELAYS, "channels.name")
    piece(book, book.delays_row, 1 + i, f'IF({index}="","",{after(book.all_delays, start, f"({index}+1)")})')


def named(contract, calculation, path):
    return f'"{contract.key(calculation, path)}":"'


def piece(book, row, n, formula):
    book.split.put(row, book.part_column(n), "=" + formula, "machine")
