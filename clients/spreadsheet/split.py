"""The hidden sheet Split: answers taken apart into findings, cautions, and pieces whose names stand elsewhere too."""
from entries import COMPARISON, DELAYS, RAIL, SOUND
from formulas import FINDING, LINE, between, named, q
from lists import short
from layout import CAUTIONS, CHANNELS, COMPARED, FINDINGS, FIRST
from places import located

# Of one channel alone these are not true: they are told of the vehicle.
HEAVY, OF_ALL = "heavy-part", ["doors-heavier", "vehicle-heavier"]
# Trims by distance alone are not shown: plan-review has those of the whole plan.
PASSED_OVER = {COMPARISON: OF_ALL, DELAYS: ["trim-distance-law"]}
# In an answer what to do follows the sentence, and then the place.
ADVICE, SAID = '","advice":"', '","pointer":"'


def fill_split(book):
    sheet = book.split
    book.cautions = '""'
    for row in range(FIRST, book.ready_row + 1):
        sheet.put(row, 1, f"={book.calls.ref(row, 1)}", "machine")
        sheet.put(row, 2, f"={book.calls.ref(row, 2)}", "machine")
        findings(book, row)
        book.cautions = cautions(book, row, book.cautions)
    for i in range(CHANNELS):
        pieces(book, i)


def findings(book, row):
    answer, query = book.calls.ref(row, 6), book.queries.get(row)
    masses = row == book.masses_row
    for n in range(1, FINDINGS + 1):
        finding = of_masses(answer, n) if masses else of_others(answer, n, PASSED_OVER.get(query and query.calculation, []))
        level, text = finding
        book.split.put(row, 2 + n, f'=IF({level}="","",{level}&": "&{named(plain(text), query.names if query else {})})', "machine")
    if query:
        fault = f'IF({book.calls.ref(row, 3)}="fault","fault: "&{named(located(book, book.calls.ref(row, 6), query), query.names)}&{LINE},"")'
        book.split.put(row, book.part_column(CHANNELS + 2), "=" + fault, "machine")


def plain(text):
    """A sentence, and behind it what to do, which stands beside it in the answer."""
    return f'SUBSTITUTE(SUBSTITUTE({text},{q(ADVICE)}," "),"\\""","""")'


def of_others(answer, n, passed_over):
    """Level and text of the nth finding; no level where it is passed over."""
    level = between(answer, FINDING, '"', n)
    if passed_over:
        kind = between(answer, '"code":"', '"', n)
        level = f'IF(OR({",".join(f"{kind}={q(kind_)}" for kind_ in passed_over)}),"",{level})'
    return level, between(answer, '"text":"', SAID, n)


def of_masses(answer, n):
    """Level and text of the nth finding about masses: the heavy parts, then what all make together."""
    parts = FINDINGS - len(OF_ALL)
    piece, nth = (code(HEAVY), n) if n <= parts else (code(OF_ALL[n - parts - 1]), 1)
    at = f"FIND(CHAR(1),SUBSTITUTE({answer},{q(piece)},CHAR(1),{nth}))"
    # What stands right before the code is the level.
    return between(f"MID({answer},{at}-20,20)&CHAR(34)", FINDING, '"'), between(f"MID({answer},{at},4000)", '"text":"', SAID)


def code(name):
    return f'","code":"{name}"'


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
    contract, compared = book.contract, book.answer(i, COMPARISON)
    piece(book, book.call_row(i, RAIL), 1, between(book.answer(i, RAIL), '"result":{', "["))
    limits = f'"{contract.key(SOUND, "limits")}":{{'
    piece(book, book.call_row(i, SOUND), 1, between(book.answer(i, SOUND), limits, "}") + '&","')
    for n, path in enumerate(COMPARED, 1):
        piece(book, book.call_row(i, COMPARISON), n, between(compared, f'"{contract.key(COMPARISON, path)}":{{', "}") + '&","')
    start = f'{{"{contract.key(DELAYS, "channels.name")}":"{short(i)}",'
    piece(book, book.delays_row, 1 + i, between(book.all_delays, start, "}") + '&","')


def piece(book, row, n, formula):
    book.split.put(row, book.part_column(n), "=" + formula, "machine")
