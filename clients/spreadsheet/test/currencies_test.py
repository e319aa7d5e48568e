"""Money in currencies of any number of decimals, against what the service quotes for the same plan."""
import subprocess
from decimal import ROUND_HALF_UP, Decimal
from pathlib import Path

import layout
import money
import quote
from comparison import FIRST_FIGURE
from expected import DEMO, post
from opened import BOOK, GERMAN, Opened
from plan import plan, quoted

# Prices with more decimals than the currency has: what a part costs that sits in two places is rounded once.
PRICES = {"JPY": (118.5, 6290, 18950), "KWD": (118.0005, 62.125, 189.0625), "EUR": (118.005, 62.1, 189)}
PARTS = ("coaxial 16", "coaxial 13", "sub 25, two coils")
DECIMALS = {"JPY": 0, "KWD": 3, "EUR": 2}


class Currencies(Opened):
    def demo(self, currency):
        """The example in another currency."""
        prices = dict(zip(PARTS, PRICES[currency]))
        drivers = [{**driver, "price": prices[driver["name"]]} if driver["name"] in prices else driver for driver in DEMO["drivers"]]
        return {**DEMO, "vehicle": {**DEMO["vehicle"], "currency": currency}, "drivers": drivers}

    def test_decimals_are_those_of_java(self):
        found = subprocess.run(["java", Path(__file__).with_name("Currencies.java")], check=True, capture_output=True, text=True).stdout
        decimals = {code: int(digits) for code, digits in map(str.split, found.splitlines())}
        self.assertGreater(len(decimals), 150)
        other = {code: digits for digits, codes in money.OTHER.items() for code in codes}
        self.assertEqual({code: digits for code, digits in decimals.items() if digits != money.USUAL}, other)

    def test_the_quote_is_that_of_the_service(self):
        for currency in PRICES:
            asked = self.demo(currency)
            answered = post("plan-review", quoted(plan(asked), asked))["result"]["quote"]
            for kind, locale, book in (("ods", "en-US", BOOK), ("xlsx", "de-DE", GERMAN), ("xlsx", "en-US", BOOK), ("ods", "de-DE", GERMAN)):
                with self.subTest(currency, kind=kind, locale=locale):
                    self.open(kind, locale, book)
                    self.book.write(book.cell["currency"], currency)
                    for name, price in zip(PARTS, PRICES[currency]):
                        self.book.write(self.part(name, "price"), price)
                    self.book.recalculate()
                    self.assertEqual([], self.book.errors())
                    self.check(currency, locale, answered)

    def check(self, currency, locale, answered):
        def shown(amount):
            text = f"{amount:,.{DECIMALS[currency]}f}"
            return text.translate(str.maketrans(".,", ",.")) if locale == "de-DE" else text

        rows = [row for row in range(quote.COSTS + 2, quote.GOOD) if self.book.read(self.of.quote.ref(row, 6)) is not None]
        amounts = [item["amount"] for item in answered["items"]] + [answered[sum] for sum in ("net", "tax", "total")]
        self.assertEqual(len(amounts), len(rows))
        for row, amount in zip(rows, amounts):
            cell = self.of.quote.ref(row, 6)
            self.same(float(amount), self.book.read(cell), cell)
            self.assertEqual(shown(amount), self.shown(cell))
            self.assertEqual(currency, self.book.read(self.of.quote.ref(row, 7)))
        self.same(float(answered["total"]), self.book.read(self.of.total), "total")
        self.assertEqual(shown(answered["total"]), self.shown(self.of.total))
        price = self.book.read(self.of.quote.ref(quote.SHORT + 1, 1))
        self.assertTrue(price.endswith(f": {shown(answered['total'])} {currency}"), price)
        self.per_channel(currency, shown)

    def per_channel(self, currency, shown):
        """On Totals rounded as the others are, on Comparison shown so."""
        unit = Decimal(1).scaleb(-DECIMALS[currency])
        column = FIRST_FIGURE + [label for label, *_ in layout.COMPARED_FIGURES].index("Price")
        for i, channel in enumerate(DEMO["channels"]):
            price = Decimal(str(dict(zip(PARTS, PRICES[currency]))[channel["new"]])) * channel["count"]
            rounded = price.quantize(unit, ROUND_HALF_UP)
            total = self.of.totals.ref(layout.FIRST + i, 7)
            self.same(float(rounded), self.book.read(total), total)
            self.assertEqual(shown(rounded), self.shown(total))
            compared = self.of.comparison.ref(layout.FIRST + 3 * i + 1, column)
            self.same(float(price), self.book.read(compared), compared)
            self.assertEqual(shown(rounded), self.shown(compared))
