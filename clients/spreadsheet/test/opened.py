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

    def open(self, kind, locale):
        self.close()
        self.book = running(locale).open(FOLDER / f"quoting.{kind}")
        self.addCleanup(self.close)
        for _ in range(40):  # leave to follow links may come a moment after opening
            if self.book.read(BOOK.status) == "The service answers.":
                return
            time.sleep(0.25)
            self.book.recalculate()
        self.fail("status: " + str(self.book.read(BOOK.status)))

    def close(self):
        if self.book:
            self.book.close()
        self.book = None

    def result(self, i, key):
        return self.book.read(BOOK.results.ref(layout.FIRST + i, BOOK.result_column[key]))

    def told(self, sheet="Results"):
        """What stands in the list of a sheet: channel, level, text."""
        places = BOOK.told[sheet]
        return [line for line in self.book.table(places[0][0], places[-1][2]) if any(line)]

    def says(self, i, sheet="Results"):
        """What is told of a channel."""
        name = self.book.read(BOOK.of_channel(i, "name"))
        return [f"{level}: {text}" for channel, level, text in self.told(sheet) if channel == name]

    def lacking(self):
        """What the total says it lacks."""
        total = self.book.read(BOOK.total)
        return total if isinstance(total, str) else None

    def enter(self, ref, value):
        self.book.write(ref, value)

    def part(self, name, key):
        row = layout.FIRST + [driver["name"] for driver in DEMO["drivers"]].index(name)
        return BOOK.parts.ref(row, BOOK.driver_column[key])

    def same(self, expected, found, what):
        if isinstance(expected, (int, float)) and not isinstance(expected, bool):
            self.assertIsInstance(found, float, what)
            self.assertAlmostEqual(expected, found, delta=1e-9 * max(1, abs(expected)), msg=what)
        else:
            self.assertEqual(expected, found, what)

    def calls(self, column):
        return [self.book.read(BOOK.calls.ref(row, column)) for row in range(layout.FIRST, BOOK.ready_row + 1)]

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
                self.same(wanted, self.result(i, key), f"{i} {key}")
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
                    self.same(position.get(group, {}).get(name), found, f"{i} {group} {name}")
