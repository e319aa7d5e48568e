"""The questions about all channels at once. A field of all of them is one parameter, and names are sent short: else eight
channels with filters would not fit into an address."""
from entries import COMPARISON, DELAYS
from formulas import Query, q
from layout import AMPLIFIERS, CHANNELS, FIRST, ITEMS
from places import LABELS, column, of_vehicle, row_of

SEAT = "~S"


def short(i):
    """The name under which a channel is sent."""
    return f"~{i + 1}"


def short_of_addition(n):
    return "~" + "ABCDEFGHIJKLMNOPQR"[n]  # S is the seat


def every(query, name, cells, included, given=None):
    """A field of those entries that are included; it is left out where its cell is empty, or another one that it belongs to."""
    return query.listed(name, [f'IF({there},IF({of}="","",{query.encoded(name, cell)})&",","")'
                               for cell, there, of in zip(cells, included, given or cells)])


def every_short(query, name, texts, included):
    return query.listed(name, [f'IF({there},{text}&",","")' for text, there in zip(texts, included)])


def delays(book):
    query = Query(book, DELAYS).short("seats.0.name", SEAT, book.cell["seat"])
    for axis in ("x_m", "y_m", "z_m"):
        query.value("seats.0.position." + axis, book.cell["seat_" + axis])
    for name in ("rate_hz", "maximum_delay_ms"):
        query.value("processor." + name, book.cell[name])
    query.value("temperature_c", book.cell["temperature_c"])
    named = [f'{book.of(i, "index")}<>""' for i in range(CHANNELS)]

    def entered(key):
        return [book.of_channel(i, key) for i in range(CHANNELS)]

    every_short(query, "channels.*.name", [q(short(i)) for i in range(CHANNELS)], named)
    for name, key in [("position.x_m", "x_m"), ("position.y_m", "y_m"), ("position.z_m", "z_m"), ("full_range", "full_range")]:
        every(query, "channels.*." + name, entered(key), named)
        query.columns[name] = at(book, key)
    for way in ("high_pass", "low_pass"):
        corners = entered(way + "_hz")
        for name, key in (("kind", "filter_kind"), ("order", "filter_order")):
            every(query, f"channels.*.{way}.{name}", [book.cell[key]] * CHANNELS, named, corners)
            query.columns[f"{way}.{name}"] = of_vehicle(book, key)
        every(query, f"channels.*.{way}.frequency_hz", corners, named)
        query.columns[way + ".frequency_hz"] = at(book, way + "_hz")
    crossing = [f'{book.of(i, "crossover_index")}<>""' for i in range(CHANNELS)]
    every_short(query, "crossovers.*.lower", [f'"~"&{book.of(i, "lower")}' for i in range(CHANNELS)], crossing)
    every_short(query, "crossovers.*.upper", [q(short(i)) for i in range(CHANNELS)], crossing)
    every(query, "crossovers.*.frequency_hz", entered("high_pass_hz"), crossing)
    query.columns |= {"lower": at(book, "lower"), "upper": at(book, "name"), "frequency_hz": at(book, "high_pass_hz")}
    query.rows = {"channels": rows(book, "index"), "crossovers": rows(book, "crossover_index")}
    query.names |= {short(i): book.of_channel(i, "name") for i in range(CHANNELS)}
    return query, f'COUNTA({book.channel_area("name")})>0'


def at(book, key):
    return column(book, book.channel_column[key], LABELS[key])


def rows(book, index):
    return [(book.of(i, index), row_of(book, book.channels, FIRST + i)) for i in range(CHANNELS)]


def masses(book):
    """What all parts together weigh, and which of them must be bolted down."""
    query = Query(book, COMPARISON)
    known = [f'{book.of(i, "mass_index")}<>""' for i in range(CHANNELS)]
    every_short(query, "positions.*.name", [q(short(i)) for i in range(CHANNELS)], known)
    for key in ("zone", "band", "at"):
        every(query, "positions.*." + key, [book.of_channel(i, key) for i in range(CHANNELS)], known)
    every(query, "positions.*.driver_count", [book.of(i, "count") for i in range(CHANNELS)], known)
    for side, name in (("factory", "factory"), ("new", "replacement")):
        for key in ("rated_ohm", "mass_g"):
            every(query, f"positions.*.{name}.{key}", [book.of(i, f"{side}.{key}") for i in range(CHANNELS)], known)
    added = range(AMPLIFIERS + ITEMS)
    lines = [FIRST + CHANNELS + n for n in added]
    shown = [f'{book.totals.ref(row, 1)}<>""' for row in lines]
    every_short(query, "additions.*.name", [q(short_of_addition(n)) for n in added], shown)
    every(query, "additions.*.mass_g", [book.totals.ref(row, 6) for row in lines], shown)
    query.rows = {"additions": [(f'(SUMPRODUCT(--({book.totals.area(lines[0], 1, row, 1)}<>""))-1)', row_of(book, book.totals, row)) for row in lines]}
    query.columns = {"mass_g": column(book, 6, "Mass change")}
    query.names = {short(i): book.of_channel(i, "name") for i in range(CHANNELS)}
    query.names |= {short_of_addition(n): what(book, row) for n, row in enumerate(lines)}
    return query, f'COUNTA({book.channel_area("name")})>0'


def what(book, row):
    """What a line of the sheet Totals is for, with its quantity."""
    quantity, name = book.totals.ref(row, 3), book.totals.ref(row, 2)
    return f'IF({quantity}=1,"",{quantity}&" × ")&{name}'
