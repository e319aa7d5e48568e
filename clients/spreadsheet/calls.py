"""The sheet Calls: every question as an address, its answer, and what it says in lines of "level: text"."""
from entries import DELAYS
from formulas import FINDING, LINE, between, q
from layout import CALCULATIONS, CHANNELS, FINDINGS, FIRST, LONGEST_URL
from questions import QUESTIONS, delays

HEADINGS = ["Channel", "Calculation", "Verdict", "Characters", "Address", "Answer", "Faults and stops", "Warnings", "Faults and all findings"]


def fill_calls(book):
    sheet, address = book.calls, book.cell["address"]
    sheet.put(1, 1, "Calls", "title")
    sheet.put(2, 1, "Every question to the service and its answer. Nothing to enter here.", "plain")
    sheet.put(3, 1, "Service", "label")
    base = sheet.put(3, 2, f'=IF(RIGHT({address},1)="/",LEFT({address},LEN({address})-1),{address})', "output")
    for column, label in enumerate(HEADINGS, 1):
        sheet.put(FIRST - 2, column, label, "heading")
        sheet.put(FIRST - 1, column, "", "field")
    for i in range(CHANNELS):
        for calculation in CALCULATIONS:
            call(book, book.call_row(i, calculation), f'={book.of(i, "name")}', calculation, QUESTIONS[calculation](book, i, base))
    call(book, book.delays_row, "delays", DELAYS, delays(book, base))
    call(book, book.ready_row, "service", "ready", f'{base}&"{book.contract.path("/health/ready")}"')


def call(book, row, channel, calculation, address):
    sheet = book.calls
    sheet.heights[row] = 1.5  # for four findings
    sheet.put(row, 1, channel, "machine")
    sheet.put(row, 2, calculation, "machine")
    url, answer, verdict = (sheet.ref(row, column) for column in (5, 6, 3))
    judged = between(answer, '],"verdict":"', '"')
    sheet.put(row, 3, f'=IF({answer}="","",IF(LEFT({answer},1)="{{",{judged},"fault"))', "verdict")
    sheet.put(row, 4, f'=IF({url}="","",LEN({url}))', "machine")
    sheet.put(row, 5, "=" + address, "machine")
    long = f'"The question has "&LEN({url})&" characters, a cell sends at most {LONGEST_URL}. Shorter names, fewer filters or an empty processor help."'
    none = q("No answer. Is the service running at ") + f'&{book.cell["address"]}&' + q(", and is this file allowed to update its links?")
    sheet.put(row, 6, f'=IF({url}="","",IF(LEN({url})>{LONGEST_URL},{long},IFERROR(WEBSERVICE({url}),{none})))', "machine")
    slots = [book.finding(row, n) for n in range(1, FINDINGS + 1)]
    stops, warnings = ("&".join(f'IF(LEFT({slot},{len(level)})="{level}",{slot}&{LINE},"")' for slot in slots) for level in ("stop", "warning"))
    fault = f'IF({verdict}="fault","fault: "&SUBSTITUTE(LEFT({answer},300),{LINE}," ")&{LINE},"")'
    more = f'(LEN({answer})-LEN(SUBSTITUTE({answer},{q(FINDING)},"")))/{len(FINDING)}-{FINDINGS}'
    rest = f'IF({more}>0,"note: and "&{more}&" more findings in the answer"&{LINE},"")'
    sheet.put(row, 7, f"={fault}&{stops}", "machine")
    sheet.put(row, 8, f"={warnings}", "machine")
    sheet.put(row, 9, f"={fault}&" + "&".join(f'{slot}&IF({slot}="","",{LINE})' for slot in slots) + "&" + rest, "machine")
