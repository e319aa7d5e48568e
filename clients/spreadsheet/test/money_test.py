"""What the totals say of entries that cannot be taken, and of what is missing."""
import layout
from opened import BOOK, Opened


class Money(Opened):
    def entered(self, label):
        rows = range(layout.FIRST, layout.FIRST + 40)
        [row] = [row for row in rows if self.book.read(BOOK.totals.ref(row, 1)) == label]
        return row

    def test_what_cannot_be_read_is_lacking(self):
        for kind, locale in (("ods", "de-DE"), ("xlsx", "en-US")):
            self.open(kind, locale)
            whole = self.book.read(BOOK.total)
            for label, bad, told in [("Fitting, hours", "nine", "not a number"), ("Fitting, hours", "", "not a number"),
                                     ("Fitting, price of an hour", "68 €", "not a number"), ("Fitting, hours", -1, "less than 0"),
                                     ("Tax, per cent", "20 %", "not a number"), ("Tax, per cent", 0.2, "20 % is entered as 20")]:
                with self.subTest(kind, locale=locale, label=label, bad=bad):
                    row = self.entered(label)
                    cell = BOOK.totals.ref(row, 3)
                    before = self.book.read(cell)
                    self.enter(cell, bad)
                    self.assertEqual(told, self.book.read(BOOK.totals.ref(row, 8)))
                    self.assertRegex(self.lacking(), "^incomplete: (hours|price of an hour|tax) missing$")
                    self.enter(cell, before)
                    self.assertIsNone(self.lacking())
                    self.same(whole, self.book.read(BOOK.total), "total")

    def test_an_empty_currency_and_a_negative_quantity_are_told_beside_the_cell(self):
        self.open("ods", "de-DE")
        cell, row = BOOK.cell["currency"], layout.FIRST + layout.CHANNELS + layout.AMPLIFIERS
        self.enter(cell, "")
        self.assertEqual("missing", self.book.read(BOOK.vehicle.ref(int(cell.rpartition("$")[2]), 4)))
        self.assertEqual("incomplete: currency missing", self.lacking())
        self.assertIsNone(self.book.read(BOOK.totals.ref(layout.FIRST - 1, 7)))
        self.enter(BOOK.totals.ref(row, 3), -1)
        self.assertEqual("quantity less than 0; mass; price", self.book.read(BOOK.totals.ref(row, 8)))
        self.assertEqual("incomplete: 1 price, currency missing", self.lacking())
        self.enter(BOOK.totals.ref(row + 3, 5), 12)  # a price without what it is for
        self.assertEqual("quantity; mass; price", self.book.read(BOOK.totals.ref(row + 3, 8)))

    def test_a_total_that_is_incomplete_is_no_number(self):
        for kind, locale in (("ods", "de-DE"), ("xlsx", "en-US")):
            with self.subTest(kind):
                self.open(kind, locale)
                self.book.write(self.part("coaxial 16", "price"), "")
                self.enter(self.part("coaxial 13", "mass_g"), "")
                end = int(BOOK.total.rpartition("$")[2])
                for row, column, text in ((end, 7, "incomplete: 2 prices missing"), (end - 2, 7, "incomplete"), (end - 5, 7, "incomplete"),
                                          (end - 5, 6, "incomplete"), (end - 5, 8, "2 masses, 2 prices")):
                    self.assertEqual(text, self.book.read(BOOK.totals.ref(row, column)))
                    self.assertEqual(text, self.book.cell(BOOK.totals.ref(row, column)).String)  # and looks it
                self.assertIsNone(self.book.read(BOOK.totals.ref(end - 1, 7)))  # the tax of it
                self.assertEqual([], self.book.errors())
                self.enter(self.part("coaxial 16", "price"), 118)
                self.assertIsNone(self.lacking())  # a mass is not in the price

    def test_without_hours_and_tax_there_are_the_parts(self):
        self.open("ods", "de-DE")
        for label in ("Fitting, hours", "Tax, per cent"):
            self.enter(BOOK.totals.ref(self.entered(label), 3), 0)
        self.assertIsNone(self.lacking())
        self.same(self.book.read(BOOK.totals.ref(self.entered("Parts"), 7)), self.book.read(BOOK.total), "total")

    def test_an_item_with_a_price_that_is_a_text_is_lacking(self):
        self.open("xlsx", "en-US")
        row = layout.FIRST + layout.CHANNELS + layout.AMPLIFIERS
        self.enter(BOOK.totals.ref(row, 5), "96,50 EUR")
        self.assertEqual("price", self.book.read(BOOK.totals.ref(row, 8)))
        self.assertEqual("incomplete: 1 price missing", self.lacking())
