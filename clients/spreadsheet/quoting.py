"""The quoting workbook. What a person enters comes first: all else refers to it."""
from book import Book
from calls import fill_calls
from comparison import fill_comparison
from forms import fill_channels, fill_parts, fill_vehicle
from layout import FIRST, HEADING
from levels import fill_levels
from lookup import fill_lookup
from packages import fill_packages
from results import fill_results
from split import fill_split
from told import show_cautions
from totals import fill_totals


def workbook(contract, demo, address, packages):
    book = Book(contract, demo, address, packages)
    for fill in (fill_vehicle, fill_parts, fill_channels, fill_lookup, fill_calls, fill_split, fill_results, fill_levels, fill_comparison, fill_packages, fill_totals):
        fill(book)
    show_cautions(book, book.vehicle, book.vehicle_cautions, 6, book.vehicle_cautions + 12, 6)
    for sheet in book.sheets:
        sheet.heights[1] = 1
        if sheet is not book.vehicle:
            sheet.heights[FIRST - 2] = HEADING
    return book
