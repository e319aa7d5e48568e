"""The sheet Packages: what package-options found for a vehicle, held against what the customer wishes for. The service is
asked by its own call, for a plan does not fit into a cell; its table is put in here when the workbook is built, or pasted."""
from contract import unit
from layout import FIRST, PACKAGES, SLOTS

# Name in the table, heading, number format, width; then a part and a box for each slot.
FIGURES = [("package", "Package", "0", 1.9), ("price", "Price", "#,##0.00", 2.4), ("level_db_spl", "Level", "0.0", 2.2),
           ("lowest_hz", "Plays down to", "0.0", 2.2), ("mass_change_g", "Mass change", "+#,##0", 2.4),
           ("verdict", "Verdict", "", 2.1), ("amplifiers", "Amplifiers", "", 4.2)]
SLOT = [("part", "Part", 3.4), ("box", "Box", 3)]
# Column of the table, whether the wish is the most or the least, and what it is.
WISHES = {3: ("<=", "The most it may cost."), 4: (">=", "The least level at the main seat, dB SPL."),
          5: ("<=", "The frequency down to which it must play, Hz."), 6: ("<=", "The most the vehicle may become heavier, g.")}
HEAD = FIRST - 1  # the row with the names of the table


def fill_packages(book):
    sheet, names = book.packages, [name for name, *_ in FIGURES]
    if book.offered[0][:len(names)] != names:
        raise ValueError(f"the table of packages must start with the columns {', '.join(names)}")
    if len(book.offered) > 1 + PACKAGES:
        raise ValueError(f"there is room for {PACKAGES} packages: ask for fewer with list_count")
    sheet.put(1, 1, "Packages", "title")
    sheet.put(2, 1, "What package-options found for a vehicle: none beats another in everything. Paste another table at B5.", "plain")
    sheet.put(3, 1, "Wished", "label")
    sheet.put(3, 2, None, "label")
    headings = [("Meets the wishes", 2.4)] + [(label, width) for _, label, _, width in FIGURES]
    headings += [(f"{label} {n}", width) for n in range(1, SLOTS + 1) for _, label, width in SLOT]
    for column, (label, width) in enumerate(headings, 1):
        sheet.widths.append(width)
        sheet.put(FIRST - 2, column, label, "heading")
        sheet.put(HEAD, column, "" if column == 1 else cell(book.offered[0], column - 2, ""), "field", help=unit(label))
    for column, (_, help_) in WISHES.items():
        sheet.put(3, column, book.demo["wishes"].get(names[column - 2]), "input_number", FIGURES[column - 2][2], help=help_)
    for n in range(PACKAGES):
        offered(book, FIRST + n, book.offered[1 + n] if n + 1 < len(book.offered) else [])
    area = sheet.area(FIRST, 1, FIRST + PACKAGES - 1, 1)
    sheet.put(3, 8, f'=COUNTIF({area},"ok")&" of "&COUNT({sheet.area(FIRST, 2, FIRST + PACKAGES - 1, 2)})&" meet the wishes"', "output")
    sheet.breaks = [2 + len(FIGURES)]


def offered(book, row, values):
    sheet = book.packages
    met = ",".join(f'OR({sheet.ref(3, column)}="",N({sheet.ref(row, column)}){sign}{sheet.ref(3, column)})' for column, (sign, _) in WISHES.items())
    sheet.put(row, 1, f'=IF({sheet.ref(row, 2)}="","",IF(AND({met}),"ok","no"))', "verdict")
    forms = [form for *_, form, _ in FIGURES] + [""] * (SLOTS * len(SLOT))
    for n, form in enumerate(forms):
        sheet.put(row, 2 + n, cell(values, n, form), "verdict" if n == 5 else "input_number" if form else "input", form)


def cell(values, n, form):
    """A value of the table; a figure as number."""
    value = values[n] if n < len(values) else ""
    return None if value == "" else float(value) if form else value
