"""The sheet Quote: one page for the customer, who reads what leaves, what comes, what changes and what it costs."""
from formulas import q
from layout import CHANNELS, QUOTED
from lines import number_of, text_of
from sheets import MONEY

WIDE = 7  # columns
SHOP, SHORT, CHANGES = 2, 7, 11  # first rows of the parts of the page
COSTS = CHANGES + 3 + CHANNELS
GOOD = COSTS + 3 + QUOTED
LONGEST = 34  # characters of a name that fit into two lines
GOOD_TO_KNOW = [
    "10 dB more sounds about twice as loud. One octave lower is half the frequency.",
    "Levels are calculated, not measured: seats, trim and windows change them by some dB, up or down.",
    "How loud and how low is compared part by part, each as loud as it plays cleanly with its amplifier.",
    "Every amount is rounded to the smallest unit of the currency, a half away from zero; the tax is worked out once, from the sum.",
]


def fill_quote(book):
    sheet = book.quote
    sheet.merge(1, 1, 1, WIDE, book.say("Your new sound system"), "title")
    sheet.heights[1] = 1.1
    head(book)
    in_short(book)
    changes(book)
    costs(book)
    across(book, GOOD, book.say("Good to know"), "group", 0.7)
    for n, text in enumerate(GOOD_TO_KNOW, 1):
        across(book, GOOD + n, book.say(text), "small", 0.55)


def across(book, row, value, style, height):
    book.quote.merge(row, 1, row, WIDE, value, style)
    book.quote.heights[row] = height


def head(book):
    sheet, day = book.quote, book.say("YYYY-MM-DD")
    left = [f'={given(book, "shop")}', f'={given(book, "shop_address")}', f'={labelled(book, "For {customer}", "customer")}', f'={given(book, "vehicle")}']
    right = [("Quote", "number", ""), ("Date", "date", day), ("Valid until", "valid_until", day)]
    for n, value in enumerate(left):
        sheet.merge(SHOP + n, 1, SHOP + n, 4, value, "strong" if n == 0 else "line")
        sheet.heights[SHOP + n] = 0.6
    for n, (label, key, form) in enumerate(right):
        sheet.put(SHOP + n, 5, f'=IF({book.cell[key]}="","",{q(book.say(label))})', "line")
        sheet.merge(SHOP + n, 6, SHOP + n, WIDE, f"={given(book, key)}", "line", form)


def given(book, key):
    return f'IF({book.cell[key]}="","",{book.cell[key]})'


def labelled(book, text, key):
    return f'IF({book.cell[key]}="","",{book.tell(text, **{key: book.cell[key]})})'


def in_short(book):
    across(book, SHORT, book.say("In short"), "group", 0.7)
    mass, total = book.total_mass, book.total
    across(book, SHORT + 1, "=" + book.tell("Price with tax: {price} {currency}", price=f'IF(ISNUMBER({total}),FIXED({total},{book.decimals}),{q(book.say("not complete yet"))})',
                                            currency=f'IF(ISNUMBER({total}),{book.cell["currency"]},"")'), "strong", 0.6)
    becomes = (f'IF({mass}>0,{book.tell("The vehicle becomes {mass} heavier.", mass=weight(mass))},'
               f'IF({mass}<0,{book.tell("The vehicle becomes {mass} lighter.", mass=weight(mass))},{q(book.say("The vehicle weighs as much as before."))}))')
    across(book, SHORT + 2, f'=IF(ISNUMBER({mass}),{becomes},"")', "line", 0.6)


def weight(grams):
    """Kilograms from 1,000 g on, in the reader's decimal sign."""
    return f'IF(ROUND(ABS({grams}),0)>=1000,FIXED(ABS({grams})/1000,1)&" kg",FIXED(ABS({grams}),0)&" g")'


def changes(book):
    sheet = book.quote
    across(book, CHANGES, book.say("What changes in the vehicle"), "group", 0.9)
    headings(book, CHANGES + 1, ["Where", "Leaves", "Comes", "What changes"], ((1, 1), (2, 2), (3, 3), (4, WIDE)))
    for i in range(CHANNELS):
        row, name = CHANGES + 2 + i, book.of(i, "name")
        nothing = f'IF({book.of_channel(i, "factory")}="",{q(book.say("nothing"))},{book.of_channel(i, "factory")})'
        for column, value in enumerate((shortened(name), f'IF({name}="","",{shortened(nothing)})', f'IF({name}="","",{comes(book, i)})'), 1):
            sheet.put(row, column, f"={value}", "small")
        sheet.merge(row, 4, row, WIDE, f'=IF({name}="","",{change(book, i)})', "small")
        sheet.heights[row] = 1.02


def shortened(name):
    return f'IF(LEN({name})>{LONGEST},LEFT({name},{LONGEST - 1})&"…",{name})'


def comes(book, i):
    count = book.of(i, "count")
    return f'IF(N({count})>1,{count}&" × ","")&{shortened(book.of_channel(i, "new"))}'


def change(book, i):
    """In plain words; what is not known is left out."""
    louder, lower, heavier, lowest = (book.of(i, key) for key in ("louder_db", "octaves_lower", "heavier_g", "lowest_after_hz"))
    told = [(louder, either(louder, 0.05, book.tell("up to {n} dB louder", n=fixed(louder, 1)), book.tell("{n} dB less loud", n=fixed(louder, 1)),
                            q(book.say("as loud as before")))),
            (lower, either(lower, 0.05, book.tell("plays {n} octaves lower", n=fixed(lower, 1)), book.tell("plays {n} octaves less low", n=fixed(lower, 1)),
                           q(book.say("plays as low as before")))),
            (lowest, f'IF(ISNUMBER({lower}),"",{book.tell("plays down to {n} Hz", n=fixed(lowest, 0))})'),
            (heavier, either(heavier, 0.5, book.tell("{mass} heavier", mass=weight(heavier)), book.tell("{mass} lighter", mass=weight(heavier)), q(book.say("as heavy as before"))))]
    pieces = "&".join(f'IF(ISNUMBER({number}),"; "&{text},"")' for number, text in told)
    return f'MID(SUBSTITUTE({pieces},"; ; ","; "),3,400)'


def either(number, least, more, less, same):
    return f"IF({number}>={least},{more},IF({number}<=-{least},{less},{same}))"


def fixed(number, decimals):
    return f"FIXED(ABS({number}),{decimals})"


def headings(book, row, labels, spans, right=()):
    for label, (first, last) in zip(labels, spans):
        book.quote.merge(row, first, row, last, book.say(label), "column_right" if label in right else "column")
    book.quote.heights[row] = 0.65


def costs(book):
    across(book, COSTS, book.say("What it costs"), "group", 0.9)
    headings(book, COSTS + 1, ["Item", "Quantity", "Price, each", "Amount", ""], ((1, 3), (4, 4), (5, 5), (6, 6), (7, 7)),
             right=("Quantity", "Price, each", "Amount"))
    for n in range(QUOTED):
        row = COSTS + 2 + n
        priced(book, row, "=" + text_of(book, n, "what"), *("=" + number_of(book, n, key) for key in ("quantity", "each", "amount")))


def priced(book, row, what, quantity, each, amount):
    sheet = book.quote
    sheet.merge(row, 1, row, 3, what, "line")
    for column, value, form in ((4, quantity, ""), (5, each, MONEY), (6, amount, MONEY)):
        sheet.put(row, column, value, "line_number", form)
    sheet.put(row, 7, f'=IF({sheet.ref(row, 6)}="","",IF(ISNUMBER({sheet.ref(row, 6)}),{given(book, "currency")},""))', "line")
    sheet.heights[row] = 0.52
