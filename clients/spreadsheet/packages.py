"""The sheet Packages: what package-options found for a vehicle, held against what the customer wishes for. The service is
asked by its own call, for a plan does not fit into a cell; its table stands on the sheet Table: put in there when the
workbook is built, or pasted."""
from formulas import q
from layout import FIRST, KILOGRAMS, PACKAGES, SLOTS
from sheets import MONEY

# Name in the table, heading, number format, width; then a part and a box for each slot.
FIGURES = [("package", "Package", "0", 1.9), ("price", "Price", MONEY, 2.4), ("level_db_spl", "Level", "0.0", 2.2),
           ("lowest_hz", "Plays down to", "0.0", 2.2), ("mass_change_g", "Mass change", "+" + KILOGRAMS, 2.4),
           ("verdict", "Verdict", "", 2.1), ("amplifiers", "Amplifiers", "", 4.2)]
SLOT = [("part", "Part", 3.4), ("box", "Box", 3)]
# Column, whether the wish is the most or the least, what one of it is in the table, and what it is.
WISHES = {3: ("<=", 1, "The most it may cost."), 4: (">=", 1, "The least level at the main seat, dB SPL."),
          5: ("<=", 1, "The frequency down to which it must play, Hz."), 6: ("<=", 1000, "The most the vehicle may become heavier, kg.")}


def fill_packages(book):
    sheet, names = book.packages, [name for name, *_ in FIGURES]
    if book.offered[0][:len(names)] != names:
        raise ValueError(f"the table of packages must start with the columns {', '.join(names)}")
    if len(book.offered) > 1 + PACKAGES:
        raise ValueError(f"there is room for {PACKAGES} packages: ask for fewer with list_count")
    sheet.put(1, 1, book.say("Packages"), "title")
    sheet.merge(2, 3, 2, 1 + len(FIGURES), book.say("What the service found for a vehicle: none beats another in everything. Another table is pasted into the sheet Table."), "hint")
    sheet.heights[2] = 1
    sheet.put(3, 1, book.say("Wished"), "label")
    sheet.put(3, 2, None, "label")
    headings = [("Meets the wishes", "", 2.4)] + [(label, units(book, name), width) for name, label, _, width in FIGURES]
    headings = [(book.say(label), below, width) for label, below, width in headings]
    headings += [(f"{book.say(label)} {n}", "", width) for n in range(1, SLOTS + 1) for _, label, width in SLOT]
    for column, (label, below, width) in enumerate(headings, 1):
        sheet.widths.append(width)
        sheet.put(FIRST - 2, column, label, "heading")
        sheet.put(FIRST - 1, column, below, "field")
    for column, (*_, help_) in WISHES.items():
        form = FIGURES[column - 2][2].lstrip("+").rstrip(",")
        sheet.put(3, column, book.demo["wishes"].get(names[column - 2]), "input_number", form, help=book.say(help_))
    fill_table(book, len(headings) - 1)
    for n in range(PACKAGES):
        offered(book, FIRST + n, 2 + n)
    area, count = sheet.area(FIRST, 1, FIRST + PACKAGES - 1, 1), sheet.area(FIRST, 2, FIRST + PACKAGES - 1, 2)
    sheet.put(3, 8, "=" + book.tell("{met} of {count} meet the wishes", met=f'COUNTIF({area},{q(book.words.code("ok"))})', count=f"COUNT({count})"), "output")
    sheet.breaks = [2 + len(FIGURES)]


def units(book, name):
    return "kg" if name == "mass_change_g" else book.unit(name)


def fill_table(book, columns):
    """The table as the service answers it, names of the columns included."""
    for n in range(1 + PACKAGES):
        values = book.offered[n] if n < len(book.offered) else []
        for column in range(columns):
            form = FIGURES[column][2] if n and column < len(FIGURES) else ""
            book.table.put(1 + n, 1 + column, cell(values, column, form), "input_number" if form else "input")


def offered(book, row, source):
    sheet = book.packages
    met = ",".join(f'OR({sheet.ref(3, column)}="",N({sheet.ref(row, column)}){sign}{sheet.ref(3, column)}*{one})' for column, (sign, one, _) in WISHES.items())
    yes, no = (q(book.words.code(code)) for code in ("ok", "false"))
    sheet.put(row, 1, f'=IF({sheet.ref(row, 2)}="","",IF(AND({met}),{yes},{no}))', "verdict")
    forms = [form for *_, form, _ in FIGURES] + [""] * (SLOTS * len(SLOT))
    for n, form in enumerate(forms):
        there = book.table.ref(source, 1 + n)
        value = book.shown(there) if n == 5 else f'IF({there}="","",{there})'
        sheet.put(row, 2 + n, f"={value}", "verdict" if n == 5 else "output_number" if form else "output", form)


def cell(values, n, form):
    """A value of the table; a figure as number. A text is never a formula, whoever wrote the table."""
    value = values[n] if n < len(values) else ""
    if value == "":
        return None
    return float(value) if form else "'" + value if value.startswith("=") else value
