"""The sheet Totals: what the quote costs and weighs, and what it lacks."""
from functools import partial

from entries import COMPARISON
from formulas import number, q
from layout import AMPLIFIERS, CHANNELS, FIRST, ITEMS, KILOGRAMS
from lines import sold
from money import rounded
from sheets import MONEY
from told import show_cautions

GRAMS, HEAVIER = "#,##0", "+" + KILOGRAMS


def fill_totals(book):
    sheet, row = book.totals, FIRST
    sheet.put(1, 1, book.say("Totals"), "title")
    sheet.put(2, 1, f'={book.cell["vehicle"]}', "plain")
    currency = book.unit("price")
    headings = [("For", ""), ("What", ""), ("Quantity", ""), ("Mass, each", "g"), ("Price, each", currency),
                ("Mass change", "kg"), ("Price", currency), ("Lacking", "")]
    for column, (label, below) in enumerate(headings, 1):
        sheet.put(FIRST - 2, column, book.say(label), "heading")
        sheet.put(FIRST - 1, column, below, "field")
    for i in range(CHANNELS):
        part, name = book.part(book.call_row(i, COMPARISON), 1), book.of(i, "name")
        line(book, row, f'{name}<>""', name, book.of_channel(i, "new"), book.of(i, "count"), book.of(i, "new.price"),
             number(part, "mass_change_g"), rounded(book, number(part, "price")))
        row += 1
    for n in range(AMPLIFIERS):
        name, mass, price = (book.of_amplifier(n, key) for key in ("name", "mass_g", "price"))
        fitted = f'AND({name}<>"",SUMPRODUCT(--({book.channel_area("amplifier")}={name}))>0)'
        line(book, row, fitted, q(book.say("amplifier")), name, "1", price,
             *(f'IF(AND({fitted},ISNUMBER({cell})),{of(cell)},"")' for cell, of in ((mass, str), (price, partial(rounded, book)))))
        row += 1
    for item in (book.demo["items"] + [{}] * ITEMS)[:ITEMS]:
        enter_item(book, row, item)
        row += 1
    sums(book, row)


def enter_item(book, row, item):
    sheet = book.totals
    named, quantity, mass, price = (sheet.ref(row, column) for column in (2, 3, 4, 5))
    counted = f"AND(ISNUMBER({quantity}),N({quantity})>=0)"
    low, none, bad = (q("; " + book.say(text)) for text in ("quantity less than 0", "quantity", "quantity not a number"))
    line(book, row, f'COUNTA({sheet.area(row, 2, row, 5)})>0', q(book.say("item")), named, quantity, price,
         *(f'IF(AND({counted},ISNUMBER({each})),{of(f"{quantity}*{each}")},"")' for each, of in ((mass, str), (price, partial(rounded, book)))),
         wrong=f'IF({counted},"",IF(ISNUMBER({quantity}),{low},IF({quantity}="",{none},{bad})))')
    sheet.put(row, 2, item.get("name"), "input", help=book.say("Anything else that is fitted: cables, rings, boxes."))
    sheet.put(row, 3, item.get("quantity"), "input_number", help=book.say("How many."))
    for column, key, form in ((4, "mass_g", GRAMS), (5, "price", MONEY)):
        sheet.put(row, column, item.get(key), "input_number", form, help=book.contract.help(COMPARISON, "additions.0." + key, book.words, book.units))


def line(book, row, shown, kind, what, quantity, each, mass, price, wrong='""'):
    """One line of the quote, with what it lacks."""
    sheet = book.totals
    for column, value, style, form in [
            (1, f'=IF({shown},{kind},"")', "output", ""), (2, f'=IF({shown},{what}&"","")', "output", ""),
            (3, f'=IF({shown},{quantity},"")', "output_number", "0"), (4, None, "output", ""),
            (5, f'=IF({shown},IF({each}="","",{each}),"")', "output_number", MONEY),
            (6, "=" + mass, "output_number", HEAVIER), (7, "=" + price, "output_number", MONEY)]:
        sheet.put(row, column, value, style, form)
    lacking = "&".join([wrong, *(f'IF({sheet.ref(row, column)}="",{q("; " + book.say(label))},"")' for column, label in ((6, "mass"), (7, "price")))])
    sheet.put(row, 8, f'=IF({shown},MID({lacking},3,200),"")', "output")


def sums(book, end):
    """Below the lines: hours, tax and the sum. What is incomplete is a text and no number: nobody shall quote it."""
    sheet = book.totals
    parts, hours, rate, before, tax, total = range(end, end + 6)
    book.summed = hours, rate, before, tax, total
    fitting, taxed = product(sheet.ref(hours, 3), sheet.ref(rate, 3)), product(sheet.ref(before, 7), sheet.ref(tax, 3))
    masses = missing(book, end, 6, ("1 mass", "{count} masses"))
    prices = missing(book, end, 7, ("1 price", "{count} prices"))
    add(book, parts, "Parts", complete(book, masses, f"SUM({sheet.area(FIRST, 6, end - 1, 6)})"),
        complete(book, prices, sold(book)))
    enter(book, hours, "Fitting, hours", "hours", None)
    enter(book, rate, "Fitting, price of an hour", "rate", f"={rounded(book, fitting)}")
    labour = entered(book, {"hours": hours, "price of an hour": rate})
    sheet.put(parts, 8, f"={told(f'{masses}&{prices}')}", "total")
    both = f"SUM({sheet.ref(parts, 7)},{sheet.ref(rate, 7)})"
    add(book, before, "Before tax", None, complete(book, f"{prices}&{labour}", both))
    enter(book, tax, "Tax, per cent", "tax_percent", f"={rounded(book, taxed + '/100')}", lowest=1, help="20 for 20 per cent; 0 for none.")
    no_currency = f'IF({book.cell["currency"]}="",{q(book.say("currency") + ", ")},"")'
    add(book, total, "Total", None, complete(book, f'{prices}&{labour}&{entered(book, {"tax": tax})}&{no_currency}',
                                             f"SUM({sheet.ref(before, 7)},{sheet.ref(tax, 7)})", told))
    book.total, book.total_mass = sheet.ref(total, 7), sheet.ref(parts, 6)
    sheet.put(end + 7, 1, book.say("Verdict of the whole system"), "label")
    sheet.put(end + 7, 2, f"={book.verdict}", "verdict")
    show_cautions(book, sheet, end + 9, 1, end + 10, 8)
    sheet.heights[end + 10] = 4.5


def missing(book, end, column, words):
    """How many lines of the quote lack a mass or a price, in words that end with a comma; nothing where none does."""
    sheet = book.totals
    lines, figures = sheet.area(FIRST, 1, end - 1, 1), sheet.area(FIRST, column, end - 1, column)
    count = f'SUMPRODUCT(({lines}<>"")*({figures}=""))'
    one, several = (book.tell(text, count=count) for text in words)
    return f'IF({count}=0,"",IF({count}=1,{one},{several})&", ")'


def entered(book, rows):
    """Which of these entries cannot be taken as they are, in the same way."""
    return "&".join(f'IF({book.totals.ref(row, 8)}="","",{q(book.say(label) + ", ")})' for label, row in rows.items())


def told(lacking):
    return f'IF({lacking}="","",LEFT({lacking},LEN({lacking})-2))'


def complete(book, lacking, number, more=None):
    """The number, or that it is incomplete, with what it lacks where there is room for it."""
    lacks = book.tell("incomplete: {what} missing", what=more(lacking)) if more else q(book.say("incomplete"))
    return f'=IF({lacking}="",{number},{lacks})'


def product(one, other):
    return f'IF(AND(ISNUMBER({one}),ISNUMBER({other})),{one}*{other},"")'


def add(book, row, label, grams, money):
    put_row(book, row, label, grams, money, "total")


def enter(book, row, label, key, money, lowest=0, help="A number; 0 for none."):
    """A row with a number to enter: 0 for none, or at least the lowest."""
    sheet = book.totals
    put_row(book, row, label, None, money, "output")
    number = sheet.put(row, 3, book.demo["labour"][key], "input_number", help=book.say(help))
    low = book.say("less than 0" if lowest == 0 else "20 % is entered as 20")
    sheet.put(row, 8, f'=IF(NOT(ISNUMBER({number})),{q(book.say("not a number"))},IF(OR({number}=0,{number}>={lowest}),"",{q(low)}))', "output")


def put_row(book, row, label, grams, money, style):
    """The currency stands before every sum; it is a cell of its own, so that the sum stays a number."""
    sheet = book.totals
    for column in range(1, 9):
        sheet.put(row, column, None, style)
    sheet.put(row, 1, book.say(label), style)
    sheet.put(row, 6, grams, style + "_number", HEAVIER)
    sheet.put(row, 7, money, style + "_number", MONEY)
    if money and not grams:  # the currency before the sum, which stays a number
        sheet.put(row, 6, f'=IF(ISNUMBER({sheet.ref(row, 7)}),{book.cell["currency"]}&"","")', style + "_number")
