"""The hidden sheet Lines: what stands on the quote, each part once, without the rows that nothing is entered in."""
from formulas import q
from layout import AMPLIFIERS, CHANNELS, DRIVERS, FIRST, ITEMS

COLUMNS = ["place", "what", "quantity", "each", "amount"]
COUNT = DRIVERS + AMPLIFIERS + ITEMS + 5  # and below them an empty line, fitting, net, tax and total


def fill_lines(book):
    parts = [driver(book, n) for n in range(DRIVERS)] + [other(book, FIRST + CHANNELS + n) for n in range(AMPLIFIERS + ITEMS)]
    for n, (shown, *values) in enumerate(parts + sums(book)):
        row = 1 + n
        before = f"COUNT({area(book, 'place').partition(':')[0]}:{book.lines.ref(row - 1, 1).partition('!')[2]})" if n else "0"
        book.lines.put(row, 1, f'=IF({shown},{before}+1,"")', "machine")
        for column, value in enumerate(values, 2):
            book.lines.put(row, column, f"={value}", "machine")


def driver(book, n):
    """A new driver, counted over all channels; what stays in the vehicle and costs nothing is not sold."""
    name, price = (book.parts.ref(FIRST + n, book.driver_column[key]) for key in ("name", "price"))
    counts = book.lookup.area(FIRST, book.lookup_column["count"], FIRST + CHANNELS - 1, book.lookup_column["count"])
    number = f'SUMPRODUCT(({book.channel_area("new")}={name})*((({book.channel_area("factory")}<>{name})+(N({price})<>0))>0)*({book.channel_area("name")}<>""),{counts})'
    quantity = book.lines.ref(1 + n, 3)
    first = f'IFERROR(MATCH({name},{book.names["drivers"]},0),0)={n + 1}'  # a second one of this name is never looked up
    return (f'AND({name}<>"",N({quantity})>0,{first})', name, number, f'IF({price}="","",{price})',
            f'IF(ISNUMBER({price}),ROUND({quantity}*{price},{book.decimals}),"")')


def other(book, row):
    kind, what, quantity, each, amount = (book.totals.ref(row, column) for column in (1, 2, 3, 5, 7))
    return f'{kind}<>""', *(f'IF({cell}="","",{cell})' for cell in (what, quantity, each, amount))


def sums(book):
    hours, rate, before, tax, total = book.summed
    totals = book.totals
    shown, nothing = f'COUNTA({book.channel_area("name")})>0', '""'
    lines = [(q(" "), nothing, nothing, nothing), (q(book.say("Fitting, hours")), totals.ref(hours, 3), totals.ref(rate, 3), totals.ref(rate, 7))]
    for label, row in ((q(book.say("Sum without tax")), before), (book.tell("Tax, {percent} %", percent=totals.ref(tax, 3)), tax), (q(book.say("To pay")), total)):
        lines.append((label, nothing, nothing, f'IF(ISNUMBER({totals.ref(row, 7)}),{totals.ref(row, 7)},{q(book.say("incomplete"))})'))
    return [(shown, *line) for line in lines]


def sold(book):
    """What all parts on the quote cost, each rounded once, as the service's own quote has it."""
    place, amount = (book.lines.area(1, 1 + COLUMNS.index(key), COUNT - 5, 1 + COLUMNS.index(key)) for key in ("place", "amount"))
    return f'SUMIF({place},">0",{amount})'


def area(book, key):
    column = 1 + COLUMNS.index(key)
    return book.lines.area(1, column, COUNT, column)


def found(book, n, key):
    return f"INDEX({area(book, key)},MATCH({n + 1},{area(book, 'place')},0))"


def number_of(book, n, key):
    return f'IFERROR({found(book, n, key)},"")'


def text_of(book, n, key):
    return f'IFERROR({found(book, n, key)}&"","")'
