"""The built workbooks, opened in LibreOffice against the running service at FOOTWELL_URL."""
import tempfile
import time
import unittest
from pathlib import Path

import layout
from build import build
from calc import Calc
from comparison import FIRST_FIGURE
from contract import Contract
from expected import DEMO, SERVICE

FOLDER = Path(__file__).resolve().parents[1] / "target" / "test"
CONTRACT = Contract()
BOOK = build(FOLDER, CONTRACT, SERVICE)
GERMAN = build(FOLDER / "de", CONTRACT, SERVICE, language="de")
INCH = build(FOLDER / "inch", CONTRACT, SERVICE, units="inch")
RUNNING = {}


def running(locale):
    """A LibreOffice in this language, one for all tests of a file: it starts slowly."""
    if locale not in RUNNING:
        profile = tempfile.TemporaryDirectory()
        unittest.addModuleCleanup(RUNNING.clear)
        unittest.addModuleCleanup(profile.cleanup)
        RUNNING[locale] = unittest.enterModuleContext(Calc(FOLDER, profile.name, locale))
    return RUNNING[locale]


class Opened(unittest.TestCase):
    """A workbook open in LibreOffice and answered."""
    book = None

    def open(self, kind, locale, of=BOOK):
        self.close()
        self.of, self.measured = of, set()
        self.book = running(locale).open(of.directory / f"quoting.{kind}")
        self.addCleanup(self.close)
        for _ in range(40):  # leave to follow links may come a moment after opening
            if self.book.read(of.status) == of.say("The service answers."):
                return
            time.sleep(0.25)
            self.book.recalculate()
        self.fail("status: " + str(self.book.read(of.status)))

    def close(self):
        if self.book:
            self.book.close()
        self.book = None

    def result(self, i, key):
        return self.book.read(self.of.figure(i, key))

    def told(self, sheet="Results"):
        """What stands in the list of a sheet: channel, level, text."""
        places = self.of.told[self.of.say(sheet)]
        return [line for line in self.book.table(places[0][0], places[-1][2]) if any(line)]

    def says(self, i, sheet="Results"):
        """What is told of a channel."""
        name = self.book.read(self.of.of_channel(i, "name"))
        return [f"{level}: {text}" for channel, level, text in self.told(sheet) if channel == name]

    def lacking(self):
        """What the total says it lacks."""
        total = self.book.read(self.of.total)
        return total if isinstance(total, str) else None

    def enter(self, ref, value):
        self.book.write(ref, value)

    def part(self, name, key):
        row = layout.FIRST + [driver["name"] for driver in DEMO["drivers"]].index(name)
        return self.of.parts.ref(row, self.of.driver_column[key])

    def same(self, expected, found, what):
        if isinstance(expected, (int, float)) and not isinstance(expected, bool):
            self.assertIsInstance(found, float, what)
            self.assertAlmostEqual(expected, found, delta=1e-9 * max(1, abs(expected)), msg=what)
        else:
            self.assertEqual(expected, found, what)

    def trial(self):
        sheets = self.book.document.Sheets
        if not sheets.hasByName("Measure"):
            sheets.insertNewByName("Measure", sheets.Count)
        return sheets.getByName("Measure").getCellByPosition(0, 0)

    def format(self, cell):
        """That of the first condition that holds, else the cell's own: what people see, which the cell does not say."""
        styles, trial = self.book.document.StyleFamilies.getByName("CellStyles"), self.trial()
        for n in range(cell.ConditionalFormat.Count):
            condition = cell.ConditionalFormat.getByIndex(n)
            if "=" in condition.getFormula1():  # not a verdict, which is compared
                trial.Formula = "=" + condition.getFormula1()
                if trial.Value == 1:
                    return styles.getByName(condition.StyleName).NumberFormat
        return cell.NumberFormat

    def shown(self, ref):
        """A number as it is seen and printed."""
        cell, trial = self.book.cell(ref), self.trial()
        trial.NumberFormat = self.format(cell)
        trial.Value = cell.Value
        return trial.String

    def height(self, cell, width, font):
        """What the text of a cell would need in a column of this width."""
        trial = self.trial()
        trial.Columns.getByIndex(0).Width = width
        trial.String, trial.IsTextWrapped = cell.String, True
        for look in ("CharHeight", "CharWeight", "ParaTopMargin", "ParaBottomMargin", "ParaLeftMargin", "ParaRightMargin"):
            setattr(trial, look, getattr(cell, look))
        trial.CharFontName = font or cell.CharFontName
        trial.Rows.getByIndex(0).OptimalHeight = True
        return trial.Rows.getByIndex(0).Height

    def fits_across(self, cell):
        """A number, in the font that is named and in a wider one."""
        width, shown = cell.Columns.getByIndex(0).Width, len(cell.String)
        if not cell.ShrinkToFit and (shown, width) not in self.measured:
            self.measured.add((shown, width))
            for font in (None, "DejaVu Sans"):
                self.assertLessEqual(self.width(cell, font), width, f"{cell.AbsoluteName}: {cell.String}")

    def width(self, cell, font):
        """What the number of a cell would need."""
        trial = self.trial()
        trial.IsTextWrapped = False
        trial.NumberFormat = self.format(cell)
        trial.Value = cell.Value
        for look in ("CharHeight", "CharWeight", "ParaLeftMargin", "ParaRightMargin"):
            setattr(trial, look, getattr(cell, look))
        trial.CharFontName = font or cell.CharFontName
        column = trial.Columns.getByIndex(0)
        column.OptimalWidth = True
        return column.Width

    def fits(self, ref, rows=1, end=None, font=None):
        cell = self.book.cell(ref)
        sheet, place = cell.Spreadsheet, cell.CellAddress
        width = sum(sheet.Columns.getByIndex(column).Width for column in range(place.Column, end or place.Column + 1))
        height = sum(sheet.Rows.getByIndex(place.Row + row).Height for row in range(rows))
        if cell.String and (cell.String, width, height) not in self.measured:
            self.measured.add((cell.String, width, height))
            self.assertLessEqual(self.height(cell, width, font), height, f"{ref}: {cell.String}")

    def calls(self, column):
        return [self.book.read(self.of.calls.ref(row, column)) for row in range(layout.FIRST, self.of.ready_row + 1)]

    def check_results(self, expected, channels=DEMO["channels"]):
        compared = 0
        for i, answers in enumerate(expected.channels):
            self.same(answers["programme power"], self.result(i, "programme_power_w"), f"{i} programme power")
            for key, _, calculation, part, *_ in layout.RESULTS:
                if calculation == "seat-delays":
                    wanted = expected.delays["result"]["channels"][i][key]
                elif calculation:
                    result = answers[calculation]["result"]
                    wanted = (result.get(part, {}) if part else result).get(key)
                else:
                    continue
                self.same(BOOK.words.codes.get(wanted, wanted), self.result(i, key), f"{i} {key}")
                compared += 1
            levels = ["ok", "note", "warning", "stop"]
            worst = max((answers[c]["verdict"] for c in layout.CALCULATIONS), key=levels.index)
            self.assertEqual(worst, self.result(i, "verdict"))
        self.assertEqual(len(channels) * 12, compared)

    def check_comparison(self, expected):
        for i, answers in enumerate(expected.channels):
            position = answers["driver-comparison"]["result"]["positions"][0]
            for n, group in enumerate(("before", "after", "change")):
                for column, (_, side, change, *_) in enumerate(layout.COMPARED_FIGURES, FIRST_FIGURE):
                    name = change if group == "change" else side
                    found = self.book.read(BOOK.comparison.ref(layout.FIRST + 3 * i + n, column))
                    wanted = position.get(group, {}).get(name)
                    self.same(BOOK.words.codes.get(wanted, wanted), found, f"{i} {group} {name}")
