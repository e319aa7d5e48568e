"""A workbook as plain data, before it becomes a file. Formulas are written as in English, with commas."""
import re
from dataclasses import dataclass, field

from openpyxl.utils import get_column_letter

PAGE = 27  # cm between the margins of a page
# The first is installed by .ci/setup; the others stand in where it is not.
FONTS = ["Liberation Sans", "Arial", "Helvetica", "DejaVu Sans"]
INK, PAPER, LINE =  "1F3A4D", "FFFFFF", "C9D1D6"


@dataclass(frozen=True)
class Style:
    size: int = 10
    bold: bool = False
    italic: bool = False
    ink: str = "22292E"
    fill: str = ""
    border: bool = False
    wrap: bool = False
    shrink: bool = False  # to the width of the cell
    across: str = "left"
    down: str = "top"


STYLES = {
    "plain": Style(),
    "title": Style(size=18, bold=True, ink=INK),
    "hint": Style(ink="55616A", wrap=True),
    "label": Style(border=True, fill="EEF2F4"),
    "group": Style(size=11, bold=True, ink=INK),
    "heading": Style(bold=True, ink=PAPER, fill=INK, border=True, wrap=True, across="center", down="center"),
    "field": Style(size=8, ink="55616A", fill="EEF2F4", border=True, wrap=True, across="center", down="center"),
    "input": Style(fill="FFF3CC", border=True),
    "input_number": Style(fill="FFF3CC", border=True, across="right"),
    "output": Style(border=True, shrink=True),
    "name": Style(border=True, wrap=True),
    "output_number": Style(border=True, across="right"),
    "output_word": Style(border=True, across="center"),
    "says": Style(size=9, border=True, wrap=True),
    "told": Style(size=9, wrap=True, down="center"),
    "told_level": Style(size=9, bold=True, across="center", down="center"),
    "total": Style(bold=True, border=True, fill="E3EAEE"),
    "total_number": Style(bold=True, border=True, fill="E3EAEE", across="right"),
    "total_word": Style(bold=True, border=True, fill="E3EAEE", across="center"),
    "verdict": Style(bold=True, border=True, across="center"),
    "caution": Style(fill="FDF0EE", border=True, wrap=True),
    "line": Style(wrap=False, shrink=True, down="center"),
    "line_number": Style(across="right", down="center", shrink=True),
    "small": Style(size=9, wrap=True, down="center"),
    "strong": Style(size=11, bold=True, down="center", shrink=True),
    "column": Style(bold=True, ink=PAPER, fill=INK, down="center", shrink=True),
    "column_right": Style(bold=True, ink=PAPER, fill=INK, down="center", across="right", shrink=True),
    "machine": Style(size=8, ink="55616A", border=True),
}

# Fills of the cells with a verdict, by its code; a fault is a question that could not be answered.
VERDICTS = {"ok": "CFE8D2", "note": "D5E4F5", "warning": "FBDD9B", "stop": "F2A9A0", "fault": "F2A9A0"}

JUDGED = {"verdict", "told_level"}  # styles of cells that hold one


@dataclass
class Cell:
    value: object = None
    style: str = "plain"
    number: str = ""  # such as 0.00, #,##0.00 or +0.0" dB"; with a plus, gains show it
    help: str = ""
    choices: object = None  # a list of texts and nothing else, or a range such as Parts!$A$6:$A$25 to pick from
    refusal: str = ""  # what is said when something else is entered; nothing if it may be


@dataclass
class Sheet:
    name: str
    widths: list = field(default_factory=list)  # cm, one per column
    freeze: tuple = (0, 0)  # rows, columns
    hidden: bool = False
    printed: bool = True
    portrait: bool = False
    one_page: bool = False  # printed on one page, else as many as its width asks for
    breaks: list = field(default_factory=list)  # columns that start a page; the frozen ones are on each
    row_breaks: list = field(default_factory=list)  # rows that start a page
    cells: dict = field(default_factory=dict)
    heights: dict = field(default_factory=dict)  # cm, by row
    verdicts: dict = field(default_factory=dict)  # words shown for them, where they are not shown as codes
    merged: list = field(default_factory=list)  # (row, column, row, column)
    decimals: str = ""  # where those of the currency stand

    def put(self, row, column, value=None, style="plain", number="", help="", choices=None, refusal=""):
        self.cells[row, column] = Cell(value, style, number, help, choices, refusal)
        return self.ref(row, column)

    def merge(self, row, column, last_row, last_column, value, style="plain", number=""):
        self.put(row, column, value, style, number)
        for r in range(row, last_row + 1):
            for c in range(column, last_column + 1):
                self.cells.setdefault((r, c), Cell(None, style))
        if (row, column) != (last_row, last_column):
            self.merged.append((row, column, last_row, last_column))
        return self.ref(row, column)

    def ref(self, row, column):
        return f"{self.name}!${get_column_letter(column)}${row}"

    def area(self, row, column, last_row, last_column):
        return f"{self.ref(row, column)}:${get_column_letter(last_column)}${last_row}"

    def scale(self):
        """Per cent, so that the columns of every page fit between its margins; nothing where there are no breaks."""
        if not self.breaks + self.row_breaks:
            return 0
        edges = [0, *(column - 1 for column in self.breaks), len(self.widths)]
        kept = sum(self.widths[:self.freeze[1]])
        pages = [sum(self.widths[start:end]) + (kept if start else 0) for start, end in zip(edges, edges[1:])]
        return int(100 * PAGE / max(pages))

    def judged(self):
        """Where verdicts stand."""
        return [place for place, cell in self.cells.items() if cell.style in JUDGED]

    def sums(self, form):
        """Where money of this format stands."""
        return [place for place, cell in self.cells.items() if cell.number == form]

    def size(self):
        return max(r for r, _ in self.cells), max(c for _, c in self.cells)


def sections(number):
    """A number format for values above 0, below it and for 0 itself, with a real minus sign."""
    body = number.lstrip("+")
    signs = ("+", "\u2212", "") if number.startswith("+") else ("", "\u2212", "")
    return [(sign, body) for sign in signs]


# Of money in most currencies; in others as many decimals as theirs are.
MONEY, SIGNED = "#,##0.00", "+#,##0.00"


def is_day(number):
    return "YY" in number


GENERAL = "General"  # as many decimals as a number has


# A text in quotes, a reference with or without its sheet, a function, a comma, or anything else.
TOKEN = re.compile(r'"(?:[^"]|"")*"|(?:\w+!)?\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?(?![\w(])|[A-Z][A-Z0-9]*(?=\()|,|[\s\S]')


def translate(formula, reference, function, separator):
    """A formula in the tongue of a file format."""
    def word(match):
        token = match.group()
        if token == ",":
            return separator
        if token[0] == '"':
            return token
        if re.fullmatch(r"[A-Z][A-Z0-9]*", token) and formula[match.end():match.end() + 1] == "(":
            return function(token)
        return reference(token) if re.search(r"[A-Z]\$?\d", token) else token
    return TOKEN.sub(word, formula)
