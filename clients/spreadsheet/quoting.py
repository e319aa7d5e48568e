"""The quoting workbook. What a person enters comes first: all else refers to it."""
from book import Book
from calls import fill_calls
from codes import fill_codes
from comparison import fill_comparison
from forms import fill_channels, fill_parts, fill_vehicle
from layout import FIRST, HEADING
from levels import fill_levels
from lines import fill_lines
from lookup import fill_lookup
from money import fill_money
from packages import fill_packages
from quote import fill_quote
from results import fill_results
from split import fill_split
from told import show_cautions
from totals import fill_totals


LETTER, MARGIN = 0.21, 0.3  # cm: of a bold letter of a wide font in a heading, and beside the text


def widen(sheet):
    """No heading breaks within a word, in any language."""
    for (_, column), cell in sheet.cells.items():
        if cell.style == "heading" and not str(cell.value).startswith("=") and column <= len(sheet.widths):
            longest = max(map(len, str(cell.value or "").split()), default=0)
            sheet.widths[column - 1] = max(sheet.widths[column - 1], round(longest * LETTER + MARGIN, 1))


def workbook(contract, demo, address, packages, words, units):
    book = Book(contract, demo, address, packages, words, units)
    for fill in (fill_codes, fill_vehicle, fill_money, fill_parts, fill_channels, fill_lookup, fill_calls, fill_split, fill_results,
                 fill_levels, fill_comparison, fill_packages, fill_totals, fill_lines, fill_quote):
        fill(book)
    show_cautions(book, book.vehicle, book.vehicle_cautions, 6, book.vehicle_cautions + 16, 6)
    for sheet in book.sheets:
        widen(sheet)
        sheet.heights.setdefault(1, 1)
        if sheet is not book.calls:
            sheet.verdicts = book.words.codes
        if sheet not in (book.vehicle, book.quote, book.table):
            sheet.heights.setdefault(FIRST - 2, HEADING)
    return book
