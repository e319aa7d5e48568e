"""The customer's page against exact arithmetic and what the service says of the parts; and that it is one page whatever is on it."""
import re
from decimal import ROUND_HALF_UP, Decimal

import layout
import quote
from expected import DEMO, Expected
from opened import BOOK, FOLDER, GERMAN, Opened

CENT = Decimal("0.01")
TOLD = {"en": {"louder": "up to {} dB louder", "lower": "plays {} octaves lower", "lowest": "plays down to {} Hz", "heavier": "{} heavier",
               "pay": "To pay", "tax": "Tax, 20 %", "net": "Sum without tax", "fitting": "Fitting, hours"},
        "de": {"louder": "bis {} dB lauter", "lower": "spielt {} Oktaven tiefer", "lowest": "spielt bis {} Hz hinab", "heavier": "{} schwerer",
               "pay": "Zu zahlen", "tax": "Steuer, 20 %", "net": "Summe ohne Steuer", "fitting": "Einbau, Stunden"}}
LONG = "a name as long as a person may care to write for one part"


def cents(amount):
    return amount.quantize(CENT, ROUND_HALF_UP)


def exact(value):
    return Decimal(str(value))


class Quote(Opened):
    def cost_lines(self):
        """What, quantity, price of one, amount and currency of each line."""
        first = quote.COSTS + 2
        rows = self.book.table(self.of.quote.ref(first, 1), self.of.quote.ref(first + layout.QUOTED - 1, quote.WIDE))
        return [(row[0], *row[3:]) for row in rows if row[0].strip()]

    def strings(self):
        return {place: self.book.cell(self.of.quote.ref(*place)).String for place, value in self.book.values(self.of.quote.name).items() if value != ""}

    def changes(self):
        first = quote.CHANGES + 2
        rows = self.book.table(self.of.quote.ref(first, 1), self.of.quote.ref(first + layout.CHANNELS - 1, 4))
        return [row for row in rows if row[0]]

    def test_lines_and_sums_are_exact_and_have_their_currency(self):
        items = [(part["name"], sum(c["count"] for c in DEMO["channels"] if c["new"] == part["name"]), part.get("price")) for part in DEMO["drivers"]]
        items += [(part["name"], 1, part["price"]) for part in DEMO["amplifiers"]] + [(i["name"], i["quantity"], i["price"]) for i in DEMO["items"]]
        items = [(name, count, exact(price), cents(count * exact(price))) for name, count, price in items if count]
        labour = {key: exact(value) for key, value in DEMO["labour"].items()}
        fitting = cents(labour["hours"] * labour["rate"])
        net = sum(amount for *_, amount in items) + fitting
        tax = cents(net * labour["tax_percent"] / 100)
        for kind, locale, book in (("ods", "en-US", BOOK), ("xlsx", "en-US", BOOK), ("ods", "de-DE", GERMAN), ("xlsx", "de-DE", GERMAN)):
            with self.subTest(kind, language=book.words.language):
                self.open(kind, locale, book)
                said = TOLD[book.words.language]
                wanted = [(book.words.example(name), *numbers) for name, *numbers in items]
                wanted += [(said["fitting"], labour["hours"], labour["rate"], fitting), (said["net"], "", "", net),
                           (said["tax"], "", "", tax), (said["pay"], "", "", net + tax)]
                lines = self.cost_lines()
                self.assertEqual([(*line, "EUR") for line in wanted],
                                 [(name, *(exact(n) if n != "" else "" for n in numbers), currency) for name, *numbers, currency in lines])
                self.same(float(net + tax), self.book.read(book.total), "total")
                shown = f"{net + tax:,.2f} EUR".translate(str.maketrans(".,", ",.") if locale == "de-DE" else {})
                self.assertTrue(self.book.read(book.quote.ref(quote.SHORT + 1, 1)).endswith(": " + shown), shown)

    def test_what_changes_is_what_the_service_says_in_plain_words(self):
        for kind, locale, book in (("ods", "en-US", BOOK), ("xlsx", "de-DE", GERMAN)):
            with self.subTest(kind, language=book.words.language):
                self.open(kind, locale, book)
                said, mark = TOLD[book.words.language], "," if locale == "de-DE" else "."

                def number(value, decimals):
                    return str(exact(value).quantize(Decimal(1).scaleb(-decimals), ROUND_HALF_UP)).replace(".", mark)

                rows = self.changes()
                self.assertEqual(len(DEMO["channels"]), len(rows))
                for channel, answers, row in zip(DEMO["channels"], Expected().channels, rows):
                    result = answers["driver-comparison"]["result"]
                    change, mass = result["positions"][0].get("change", {}), result["totals"]["mass_change_g"]
                    wanted = [said["louder"].format(number(change["largest_level_db"], 1)), said["lower"].format(number(change["lower_reach_octaves"], 1))
                              ] if "factory" in channel else [said["lowest"].format(number(result["positions"][0]["after"]["lowest_useful_hz"], 0))]
                    weight = number(mass / 1000, 1) + " kg" if mass >= 1000 else number(mass, 0) + " g"
                    self.assertEqual("; ".join([*wanted, said["heavier"].format(weight)]), row[3])
                    names = [channel["name"], channel.get("factory", {"en": "nothing", "de": "nichts"}[book.words.language]),
                             f"{channel['count']} × {channel['new']}".removeprefix("1 × ")]
                    self.assertEqual([book.words.example(name) for name in names[:2]], list(row[:2]))
                    self.assertTrue(row[2].endswith(book.words.example(channel["new"])), row)

    def test_quieter_less_low_and_lighter_are_said_too(self):
        self.open("ods", "en-US")
        self.book.write(self.part("coaxial 16", "level_db_spl"), 70)
        self.book.write(self.part("coaxial 16", "fs_hz"), 164)
        self.enter(self.part("coaxial 16", "mass_g"), 120)
        self.assertRegex(self.changes()[0][3], r"^[\d.]+ dB less loud; plays 1\.0 octaves less low; 500 g lighter$")

    def test_what_is_incomplete_has_no_sum(self):
        self.open("xlsx", "en-US")
        self.enter(self.part("coaxial 16", "price"), "")
        lines = {line[0]: line[1:] for line in self.cost_lines()}
        self.assertEqual(("", "", "incomplete", ""), lines["To pay"])
        self.assertEqual("Price with tax: not complete yet", self.book.read(BOOK.quote.ref(quote.SHORT + 1, 1)).strip())

    def test_head(self):
        self.open("xlsx", "de-DE", GERMAN)
        shown = list(self.strings().values())
        for text in ("Klangwerkstatt Aldermere", "Für R. Tolvane", "2026-114", "30.11.2026", "31.12.2026", "Das Fahrzeug wird 33,3 kg schwerer."):
            self.assertIn(text, shown)

    def test_full_and_with_long_names_it_is_one_page_and_nothing_is_cut(self):
        for kind, locale, book in (("ods", "en-US", BOOK), ("xlsx", "de-DE", GERMAN)):
            with self.subTest(kind, language=book.words.language):
                self.open(kind, locale, book)
                for key in ("shop", "shop_address", "customer", "vehicle"):
                    self.book.write(book.cell[key], LONG)
                for i in range(layout.CHANNELS):
                    name = f"{i} new {LONG}"
                    for key, column in book.driver_column.items():
                        self.book.write(book.parts.ref(layout.FIRST + 5 + i, column), {**DEMO["drivers"][2], "name": name, "price": 12345.67}[key])
                    for key in book.channel_column:
                        self.book.write(book.of_channel(i, key), book.words.example(DEMO["channels"][i % 4]).get(key, ""))
                    self.book.write(book.of_channel(i, "name"), f"{i} channel {LONG}")
                    self.book.write(book.of_channel(i, "lower"), "")
                    self.book.write(book.of_channel(i, "new"), name)
                    for column, value in enumerate((f"{i} item {LONG}", 12, 100, 1234.5), 2):
                        self.book.write(book.totals.ref(layout.FIRST + layout.CHANNELS + layout.AMPLIFIERS + i, column), value)
                self.book.recalculate()
                self.assertEqual([], self.book.errors())
                self.assertEqual(8 + 1 + 8 + 4, len(self.cost_lines()))  # one amplifier plays all
                for (row, column), text in self.strings().items():
                    self.assertNotRegex(text, r"\{\"|https?:|###|Err:|#")
                    if book.quote.cells[row, column].style == "small" and text:
                        self.fits(book.quote.ref(row, column), end=quote.WIDE if column == 4 else quote.WIDE if row > quote.COSTS else None, font="DejaVu Sans")
                self.book.print(FOLDER / "quote.pdf", book.quote.name)
                self.assertEqual(1, len(re.findall(rb"/Type\s*/Page\b", (FOLDER / "quote.pdf").read_bytes())))
