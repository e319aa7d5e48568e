"""Writes a workbook as Office Open XML."""
from textwrap import shorten

from openpyxl import Workbook
from openpyxl.formatting.rule import CellIsRule, Rule
from openpyxl.styles import Alignment, Border, Font, PatternFill, Side
from openpyxl.styles.differential import DifferentialStyle
from openpyxl.styles.numbers import NumberFormat
from openpyxl.utils import get_column_letter
from openpyxl.workbook.defined_name import DefinedName
from openpyxl.worksheet.pagebreak import Break
from openpyxl.worksheet.page import PageMargins
from openpyxl.worksheet.datavalidation import DataValidation

from money import formats
from sheets import FONTS, LINE, STYLES, VERDICTS, is_day, sections, translate

# Functions younger than the format stand in it with this prefix.
YOUNGER = {"WEBSERVICE", "NUMBERVALUE", "ENCODEURL"}
LONGEST_PROMPT, LONGEST_ERROR = 255, 225
SANS_SERIF = 2  # what stands in where the font is not there
DECIMALS = "decimals"  # the name of the cell with those of the currency
OWN_FORMATS = 200  # numbers of formats from there on are not given by others
DIGITS = 5.1  # in a centimetre of width


def formula(text):
    return translate(text, lambda ref: ref, lambda name: ("_xlfn." if name in YOUNGER else "") + name, ",")


def write(sheets, path, author):
    book = Workbook()
    book.remove(book.active)
    book.properties.creator = author
    book._named_styles["Normal"].font = Font(name=FONTS[0], family=SANS_SERIF, size=STYLES["plain"].size)  # widths are counted in its digits
    for sheet in sheets:
        page = book.create_sheet(sheet.name)
        page.sheet_state = "hidden" if sheet.hidden else "visible"
        page.sheet_view.showGridLines = False
        for column, width in enumerate(sheet.widths, 1):
            page.column_dimensions[get_column_letter(column)].width = width * DIGITS
        for row, height in sheet.heights.items():
            page.row_dimensions[row].height = height * 28.35
        for (row, column), cell in sheet.cells.items():
            place = page.cell(row, column)
            is_formula = isinstance(cell.value, str) and cell.value.startswith("=")
            place.value = formula(cell.value) if is_formula else cell.value
            dress(place, STYLES[cell.style], cell.number)
        for first_row, first, last_row, last in sheet.merged:
            page.merge_cells(start_row=first_row, start_column=first, end_row=last_row, end_column=last)
        if sheet.freeze != (0, 0):
            page.freeze_panes = page.cell(sheet.freeze[0] + 1, sheet.freeze[1] + 1)
        validate(page, sheet)
        colour(page, sheet)
        count(page, sheet)
        page.page_setup.orientation = "portrait" if sheet.portrait else "landscape"
        page.page_setup.paperSize = page.PAPERSIZE_A4
        paginate(page, sheet)
    # In conditions another sheet is only reached by a name.
    book.defined_names.append(DefinedName(DECIMALS, attr_text=sheets[0].decimals))
    book.calculation.fullCalcOnLoad = True
    book.save(path)


def paginate(page, sheet):
    page.print_options.horizontalCentered = True
    if not sheet.printed:
        page.print_area = f"{get_column_letter(sheet.size()[1] + 2)}1"  # an empty cell, for there is no way to say none
    page.page_margins = PageMargins(0.5, 0.5, 0.5, 0.5, 0, 0)
    if sheet.scale():
        page.page_setup.scale = sheet.scale()
        page.print_title_cols = f"$A:${get_column_letter(sheet.freeze[1])}" if sheet.breaks else None
        for breaks, starts in ((page.col_breaks, sheet.breaks), (page.row_breaks, sheet.row_breaks)):
            for start in starts:
                breaks.append(Break(start - 1))
    else:
        page.sheet_properties.pageSetUpPr.fitToPage = True
        page.page_setup.fitToHeight = 1 if sheet.one_page else 0


def dress(place, style, number):
    place.font = Font(name=FONTS[0], family=SANS_SERIF, size=style.size, bold=style.bold, italic=style.italic, color=style.ink)
    place.alignment = Alignment(horizontal=style.across, vertical=style.down, wrap_text=style.wrap, shrink_to_fit=style.shrink)
    if style.fill:
        place.fill = PatternFill("solid", start_color=style.fill)
    if style.border:
        side = Side("thin", color=LINE)
        place.border = Border(side, side, side, side)
    if number:
        place.number_format = number if is_day(number) else signed(number)


def signed(number):
    return ";".join((f'"{sign}"' if sign else "") + body for sign, body in sections(number))


def validate(page, sheet):
    rules = {}
    for (row, column), cell in sheet.cells.items():
        if cell.help or cell.choices:
            source = f'"{",".join(cell.choices)}"' if isinstance(cell.choices, list) else cell.choices
            key = source, cell.help, cell.refusal
            if key not in rules:
                rule = rules[key] = DataValidation(type="list" if source else None, formula1=source, allow_blank=True,
                                                   showErrorMessage=bool(cell.refusal), showInputMessage=bool(cell.help))
                rule.prompt = shorten(cell.help, LONGEST_PROMPT, placeholder=" …") or None
                rule.error = shorten(cell.refusal, LONGEST_ERROR, placeholder=" …") or None
                page.add_data_validation(rule)
            rules[key].add(page.cell(row, column))


def colour(page, sheet):
    places = " ".join(f"{get_column_letter(c)}{r}" for r, c in sheet.judged())
    if places:
        for verdict, fill in VERDICTS.items():
            page.conditional_formatting.add(places, CellIsRule("equal", [f'"{sheet.verdicts.get(verdict, verdict)}"'], fill=PatternFill("solid", bgColor=fill)))


def count(page, sheet):
    """Shows as many decimals of money as its currency has."""
    for n, (form, decimals, shown) in enumerate(formats(), OWN_FORMATS):
        places = " ".join(f"{get_column_letter(c)}{r}" for r, c in sheet.sums(form))
        if places:
            style = DifferentialStyle(numFmt=NumberFormat(numFmtId=n, formatCode=signed(shown)))
            page.conditional_formatting.add(places, Rule(type="expression", formula=[f"{DECIMALS}={decimals}"], dxf=style))
