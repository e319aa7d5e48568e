"""The sheet Packages against what package-options answers about the demo van of the documentation."""
import csv
import io
import json
import tempfile
import unittest
import urllib.request
from pathlib import Path

import layout
from build import HERE, build
from expected import DEMO, SERVICE
from opened import BOOK, CONTRACT, Opened

EXAMPLES = HERE.parents[1] / "docs" / "examples"


def answered():
    """The table of the documentation's example."""
    plan, offer = (json.loads((EXAMPLES / name).read_text(encoding="utf-8")) for name in ("camper-van.json", "camper-van-offer.json"))
    question = urllib.request.Request(f"{SERVICE}/v1/package-options?format=packages_csv", json.dumps({"plan": plan, **offer}).encode(),
                                      {"Content-Type": "application/json"})
    with urllib.request.urlopen(question, timeout=60) as answer:
        return list(csv.reader(io.StringIO(answer.read().decode())))


class Packages(Opened):
    def table(self, columns=15):
        return self.book.table(BOOK.table.ref(1, 1), BOOK.table.ref(1 + layout.PACKAGES, columns))

    def shown(self, columns=15):
        return self.book.table(BOOK.packages.ref(layout.FIRST, 2), BOOK.packages.ref(layout.FIRST + layout.PACKAGES - 1, 1 + columns))

    def met(self):
        rows = range(layout.FIRST, layout.FIRST + layout.PACKAGES)
        return [found for found in (self.book.read(BOOK.packages.ref(row, 1)) for row in rows) if found]

    def test_the_sheet_holds_what_the_service_answers(self):
        wanted = answered()
        for kind, locale in (("ods", "de-DE"), ("xlsx", "en-US")):
            with self.subTest(kind):
                self.open(kind, locale)
                shown = [list(row) for row in self.table() if row[0] != ""]
                self.assertEqual(shown[1:], [list(row) for row in self.shown() if row[0] != ""])
                self.assertEqual(wanted[0], shown[0])
                self.assertEqual(len(wanted), len(shown))
                for row, found in zip(wanted[1:], shown[1:]):
                    for value, number in zip(row[:5], found[:5]):
                        self.same(float(value), number, row)
                    self.assertEqual(row[5:], found[5:])

    def test_wishes_tell_which_packages_are_left(self):
        self.open("ods", "en-US")
        packages = answered()[1:]
        for wishes in (DEMO["wishes"], {"price": 1300}, {"level_db_spl": 111.2, "lowest_hz": 40}, {"mass_change_g": 17800}, {}):
            for column, name in ((3, "price"), (4, "level_db_spl"), (5, "lowest_hz"), (6, "mass_change_g")):
                wish = wishes.get(name, "")
                self.enter(BOOK.packages.ref(3, column), wish / 1000 if column == 6 and wish else wish)
            wanted = ["ok" if float(p[1]) <= wishes.get("price", 1e9) and float(p[2]) >= wishes.get("level_db_spl", 0)
                      and float(p[3]) <= wishes.get("lowest_hz", 1e9) and float(p[4]) <= wishes.get("mass_change_g", 1e9) else "no" for p in packages]
            self.assertEqual(wanted, self.met())
            self.assertEqual(f"{wanted.count('ok')} of {len(packages)} meet the wishes", self.book.read(BOOK.packages.ref(3, 8)))


class Tables(unittest.TestCase):
    def test_another_table_is_put_in_and_what_is_none_ends_the_build(self):
        with tempfile.TemporaryDirectory() as folder:
            table = Path(folder) / "packages.csv"
            table.write_text("package,price,level_db_spl,lowest_hz,mass_change_g,verdict,amplifiers,front.part,front.box\n"
                             "1,99.5,101.25,60,-500,ok,radio,small,\n", encoding="utf-8")
            book = build(Path(folder), CONTRACT, packages=table)
            first = [book.table.cells[2, column].value for column in range(1, 10)]
            self.assertEqual([1.0, 99.5, 101.25, 60.0, -500.0, "ok", "radio", "small", None], first)
            self.assertIsNone(book.table.cells[3, 1].value)
            table.write_text("\n".join([",".join(["package", "price", "level_db_spl", "lowest_hz", "mass_change_g", "verdict", "amplifiers"]),
                                        *25 * ["1,1,1,1,1,ok,radio"]]), encoding="utf-8")
            with self.assertRaisesRegex(ValueError, "room for 24 packages"):
                build(Path(folder), CONTRACT, packages=table)
            table.write_text("part,price\n1,2\n", encoding="utf-8")
            with self.assertRaisesRegex(ValueError, "must start with the columns package, price"):
                build(Path(folder), CONTRACT, packages=table)
