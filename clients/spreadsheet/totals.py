"""The sheet Totals: what the quote costs and weighs, and what it lacks."""
from entries import COMPARISON
from formulas import number, q
from layout import AMPLIFIERS, CHANNELS, FIRST, ITEMS
from told import show_cautions

GRAMS, MONEY, MORE_GRAMS = "#,##0", "#,##0.00", "+#,##0"


def fill_totals(book):
    sheet, row = book.totals, FIRST
    sheet.put(1, 1, "Totals", "title")
    sheet.put(2, 1, f'={book.cell["vehicle"]}', "plain")
    currency = f'=IF({book.cell["currency"]}="","",{book.cell["currency"]})'
    headings = [("For", ""), ("What", ""), ("Quantity", ""), ("Mass, each", "g"), ("Price, each", currency),
                ("Mass change", "g"), ("Price", currency), ("Lacking", "")]
    for column, (label, below) in enumerate(headings, 1):
        sheet.put(FIRST - 2, column, label, "heading")
        sheet.put(FIRST - 1, column, below, "field")
    for i in range(CHANNELS):
        part, name = book.part(book.call_row(i, COMPARISON), 1), book.of(i, "name")
        line(sheet, row, f'{name}<>""', name, book.of_channel(i, "new"), book.of(i, "count"),
             number(part, "mass_change_g"), number(part, "price"))
        row += 1
    for n in range(AMPLIFIERS):
        name, mass, price = (book.of_amplifier(n, key) for key in ("name", "mass_g", "price"))
        fitted = f'AND({name}<>"",SUMPRODUCT(--({book.channel_area("amplifier")}={name}))>0)'
        line(sheet, row, fitted, q("amplifier"), name, "1", *(f'IF(AND({fitted},ISNUMBER({cell})),{cell},"")' for cell in (mass, price)))
        row += 1
    for item in (book.demo["items"] + [{}] * ITEMS)[:ITEMS]:
        enter_item(book, row, item)
        row += 1
    sums(book, row)


def enter_item(book, row, item):
    sheet = book.totals
    named, quantity, mass, price = (sheet.ref(row, column) for column in (2, 3, 4, 5))
    counted = f"AND(ISNUMBER({quantity}),N({quantity})>=0)"
    line(sheet, row, f'COUNTA({sheet.area(row, 2, row, 5)})>0', q("item"), named, quantity,
         *(f'IF(AND({counted},ISNUMBER({each})),{quantity}*{each},"")' for each in (mass, price)),
         wrong=f'IF({counted},"",IF(ISNUMBER({quantity}),"; quantity less than 0",IF({quantity}="","; quantity","; quantity not a number")))')
    sheet.put(row, 2, item.get("name"), "input", help="Anything else that is fitted: cables, rings, boxes.")
    sheet.put(row, 3, item.get("quantity"), "input_number", help="How many.")
    for column, key, form in ((4, "mass_g", GRAMS), (5, "price", MONEY)):
        sheet.put(row, column, item.get(key), "input_number", form, help=book.contract.help(COMPARISON, "additions.0." + key))


def line(sheet, row, shown, kind, what, quantity, mass, price, wrong='""'):
    """One line of the quote, with what it lacks."""
    for column, value, style, form in [
            (1, f'=IF({shown},{kind},"")', "output", ""), (2, f'=IF({shown},{what}&"","")', "output", ""),
            (3, f'=IF({shown},{quantity},"")', "output_number", "0"), (4, None, "output", ""), (5, None, "output", ""),
            (6, "=" + mass, "output_number", MORE_GRAMS), (7, "=" + price, "output_number", MONEY)]:
        sheet.put(row, column, value, style, form)
    lacking = f'{wrong}&IF({sheet.ref(row, 6)}="","; mass","")&IF({sheet.ref(row, 7)}="","; price","")'
    sheet.put(row, 8, f'=IF({shown},MID({lacking},3,200),"")', "output")


def sums(book, end):
    """Below the lines: hours, tax and the sum. What is incomplete is a text and no number: nobody shall quote it."""
    sheet = book.totals
    parts, hours, rate, before, tax, total = range(end, end + 6)
    fitting, taxed = product(sheet.ref(hours, 3), sheet.ref(rate, 3)), product(sheet.ref(before, 7), sheet.ref(tax, 3))
    masses, prices = (missing(sheet, end, what, column) for what, column in (("mass", 6), ("price", 7)))
    currency = f'IF({book.cell["currency"]}="","currency, ","")'
    add(sheet, parts, "Parts", complete(masses, f"SUM({sheet.area(FIRST, 6, end - 1, 6)})"),
        complete(prices, f"SUM({sheet.area(FIRST, 7, end - 1, 7)})"))
    enter(book, hours, "Fitting, hours", "hours", None)
    enter(book, rate, "Fitting, price of an hour", "rate", f"={fitting}")
    labour = entered(sheet, {"hours": hours, "price of an hour": rate})
    sheet.put(parts, 8, f"={told(f'{masses}&{prices}')}", "total")
    both = f"SUM({sheet.ref(parts, 7)},{sheet.ref(rate, 7)})"
    add(sheet, before, "Before tax", None, complete(f"{prices}&{labour}", both))
    enter(book, tax, "Tax, per cent", "tax_percent", f'=IFERROR({taxed}/100,"")', lowest=1, help="20 for 20 per cent; 0 for none.")
    add(sheet, total, "Total", None, complete(f'{prices}&{labour}&{entered(sheet, {"tax": tax})}&{currency}',
                                              f"SUM({sheet.ref(before, 7)},{sheet.ref(tax, 7)})", told))
    book.total = sheet.ref(total, 7)
    sheet.put(end + 7, 1, "Verdict of the whole system", "label")
    sheet.put(end + 7, 2, f"={book.verdict}", "verdict")
    show_cautions(book, sheet, end + 9, 1, end + 10, 8)
    sheet.heights[end + 10] = 4.5


def missing(sheet, end, what, column):
    """How many lines of the quote lack a mass or a price, in words that end with a comma; nothing where none does."""
    lines, figures = sheet.area(FIRST, 1, end - 1, 1), sheet.area(FIRST, column, end - 1, column)
    count = f'SUMPRODUCT(({lines}<>"")*({figures}=""))'
    several = {"mass": "masses", "price": "prices"}[what]
    return f'IF({count}=0,"",{count}&IF({count}=1," {what}, "," {several}, "))'


def entered(sheet, rows):
    """Which of these entries cannot be taken as they are, in the same way."""
    return "&".join(f'IF({sheet.ref(row, 8)}="","","{label}, ")' for label, row in rows.items())


def told(lacking):
    return f'IF({lacking}="","",LEFT({lacking},LEN({lacking})-2))'


def complete(lacking, number, more=None):
    """The number, or that it is incomplete, with what it lacks where there is room for it."""
    return f'=IF({lacking}="",{number},"incomplete"' + (f'&": "&{more(lacking)}&" missing"' if more else "") + ")"


def product(one, other):
    return f'IF(AND(ISNUMBER({one}),ISNUMBER({other})),{one}*{other},"")'


def add(sheet, row, label, grams, money):
    put_row(sheet, row, label, grams, money, "total")


def enter(book, row, label, key, money, lowest=0, help="A number; 0 for none."):
    """A row with a number to enter: 0 for none, or at least the lowest."""
    sheet = book.totals
    put_row(sheet, row, label, None, money, "output")
    number = sheet.put(row, 3, book.demo["labour"][key], "input_number", help=help)
    low = "less than 0" if lowest == 0 else "20 % is entered as 20"
    sheet.put(row, 8, f'=IF(NOT(ISNUMBER({number})),"not a number",IF(OR({number}=0,{number}>={lowest}),"",{q(low)}))', "output")


def put_row(sheet, row, label, grams, money, style):
    for column in range(1, 9):
        sheet.put(row, column, None, style)
    sheet.put(row, 1, label, style)
    sheet.put(row, 6, grams, style + "_number", MORE_GRAMS)
    sheet.put(row, 7, money, style + "_number", MONEY)
