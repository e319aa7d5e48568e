"""The sheet Calls: every question as an address, its answer, and what it says in lines of "level: text"."""
from entries import COMPARISON, DELAYS, SOUND
from formulas import FINDING, LINE, between, q, worst
from layout import CALCULATIONS, CHANNELS, FINDINGS, FIRST, LONGEST_URL
from lists import delays, masses
from questions import QUESTIONS, power_for
from split import HEAVY, OF_ALL, PASSED_OVER, code

HEADINGS = ["Channel", "Calculation", "Verdict", "Characters", "Address", "Answer", "Faults and stops", "Warnings", "Faults and all findings"]


def fill_calls(book):
    sheet, address = book.calls, book.cell["address"]
    sheet.put(1, 1, book.say("Calls"), "title")
    sheet.put(2, 1, book.say("Every question to the service and its answer; ~1 stands for the first channel's name and so on. Nothing to enter here."), "plain")
    sheet.put(3, 1, book.say("Service"), "label")
    base = sheet.put(3, 2, f'=IF(RIGHT({address},1)="/",LEFT({address},LEN({address})-1),{address})', "output")
    for column, label in enumerate(HEADINGS, 1):
        sheet.put(FIRST - 2, column, book.say(label), "heading")
        sheet.put(FIRST - 1, column, "", "field")
    for i in range(CHANNELS):
        for calculation in CALCULATIONS:
            ask(book, base, book.call_row(i, calculation), f'={book.of(i, "name")}', calculation, *QUESTIONS[calculation](book, i))
    ask(book, base, book.delays_row, book.say("delays"), DELAYS, *delays(book))
    ask(book, base, book.masses_row, book.say("vehicle"), COMPARISON, *masses(book))
    for i in range(CHANNELS):
        ask(book, base, book.level_row(i), f'={book.of(i, "name")}', f"{SOUND}/solve", *power_for(book, i, book.wished_level(i)))
    call(book, book.ready_row, book.say("service"), "ready", f'{base}&"{book.contract.path("/health/ready")}"')


def ask(book, base, row, channel, calculation, query, condition):
    book.queries[row] = query
    call(book, row, channel, calculation, query.formula(base, condition))


def call(book, row, channel, calculation, address):
    sheet = book.calls
    sheet.heights[row] = 1.5  # for four findings
    sheet.put(row, 1, channel, "machine")
    sheet.put(row, 2, calculation, "machine")
    url, answer, verdict = (sheet.ref(row, column) for column in (5, 6, 3))
    slots = [book.finding(row, n) for n in range(1, FINDINGS + 1)]
    # Where findings are passed over, the verdict is that of the others.
    judged = worst(book.findings(row), "*", "ok") if calculation in PASSED_OVER else between(answer, '],"verdict":"', '"')
    sheet.put(row, 3, f'=IF({answer}="","",IF(LEFT({answer},1)="{{",{judged},"fault"))', "verdict")
    sheet.put(row, 4, f'=IF({url}="","",LEN({url}))', "machine")
    sheet.put(row, 5, "=" + address, "machine")
    long = book.tell("The question has {count} characters, a cell sends at most {most}. A shorter network or service address helps.",
                     count=f"LEN({url})", most=str(LONGEST_URL))
    none = book.tell("No answer. Is the service running at {address}, and is this file allowed to update its links?", address=book.cell["address"])
    sheet.put(row, 6, f'=IF({url}="","",IF(LEN({url})>{LONGEST_URL},{long},IFERROR(WEBSERVICE({url}),{none})))', "machine")
    stops, warnings = ("&".join(f'IF(LEFT({slot},{len(level)})="{level}",{slot}&{LINE},"")' for slot in slots) for level in ("stop", "warning"))
    fault = book.fault(row)
    sheet.put(row, 7, f"={fault}&{stops}", "machine")
    sheet.put(row, 8, f"={warnings}&{heavier(book, row, answer)}", "machine")
    sheet.put(row, 9, f"={fault}&" + "&".join(f'{slot}&IF({slot}="","",{LINE})' for slot in slots) + f"&{heavier(book, row, answer)}&{rest(book, row, answer)}", "machine")


def heavier(book, row, answer):
    """How many parts must be bolted down beyond those taken from the answer."""
    if row != book.masses_row:
        return '""'
    more = f"{count(answer, code(HEAVY))}-{FINDINGS - len(OF_ALL)}"
    return f'IF({more}>0,"warning: "&{book.tell("and {count} more parts that are heavy", count=more)}&{LINE},"")'


def count(text, piece):
    return f'(LEN({text})-LEN(SUBSTITUTE({text},{q(piece)},"")))/{len(piece)}'


def rest(book, row, answer):
    """How many findings there are beyond those taken from the answer."""
    if row == book.masses_row:
        return '""'
    more = f"{count(answer, FINDING)}-{FINDINGS}"
    return f'IF({more}>0,"note: "&{book.tell("and {count} more findings in the answer", count=more)}&{LINE},"")'
