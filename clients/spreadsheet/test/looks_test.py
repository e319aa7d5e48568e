"""What a person sees of the workbooks: no text is cut, pages and choices are as they should be."""
import re

import layout
from comparison import FIRST_FIGURE
from expected import DEMO
from opened import BOOK, CONTRACT, FOLDER, GERMAN, Opened
from sheets import VERDICTS


class Looks(Opened):
    def test_no_text_is_cut(self):
        for kind in ("ods", "xlsx"):
            with self.subTest(kind):
                self.open(kind, "en-US")
                self.book.write(BOOK.of_channel(0, "network"), "1")
                self.book.write(BOOK.of_channel(1, "name"), "front right, upper door panel")
                self.book.write(BOOK.cell["maximum_delay_ms"], 0.5)
                for key in ("rated_ohm", "level_db_spl", "continuous_power_w", "peak_power_w", "sd_cm2", "xmax_mm", "fs_hz"):
                    self.book.write(self.part("sub 25, two coils", key), "rather more than enough")
                self.enter(self.part("coaxial 13", "mass_g"), 9000)
                self.enter(BOOK.wished_level(1), 160)
                self.enter(BOOK.wished_level(2), 118)
                self.assertGreaterEqual(len(self.says(0)), 3)
                self.enter(BOOK.answer(2, "rail-match"), "no answer of ours " * 20)
                self.assertEqual(layout.LONGEST_TOLD, max(len(text) for _, _, text in self.told()))
                for sheet, end in (("Results", len(layout.RESULTS)), ("Comparison", FIRST_FIGURE + len(layout.COMPARED_FIGURES) - 1)):
                    self.assertLess(8, len(self.told(sheet)))
                    for channel, level, text in BOOK.told[sheet]:
                        self.fits(channel)
                        self.fits(level)
                        self.fits(text, end=end)
                for i in range(len(DEMO["channels"])):
                    self.fits(BOOK.figure(i, "name"))
                    self.fits(BOOK.comparison.ref(layout.FIRST + 3 * i, 1), rows=3)
                    self.fits(BOOK.levels.ref(layout.FIRST + i, 8))
                last = layout.FIRST + layout.CHANNELS
                self.fits(BOOK.cautions_shown, end=len(layout.RESULTS))
                self.fits(BOOK.totals.ref(int(BOOK.total.rpartition("$")[2]) + 5, 1), end=8)
                if kind == "ods":
                    for sheet in (BOOK.results, BOOK.levels, BOOK.comparison, BOOK.packages, BOOK.totals, BOOK.channels, BOOK.parts):
                        for column in range(1, len(sheet.widths) + 1):
                            self.fits(sheet.ref(layout.FIRST - 2, column), font="DejaVu Sans")  # wider than the one named

    def test_where_there_is_nothing_to_tell_the_list_says_so(self):
        self.open("ods", "en-US")
        for i in range(1, len(DEMO["channels"])):
            for key in BOOK.channel_column:
                self.book.write(BOOK.of_channel(i, key), "")
        item = layout.FIRST + layout.CHANNELS + layout.AMPLIFIERS
        for ref in (BOOK.of_amplifier(0, "mass_g"), BOOK.totals.ref(item, 4), BOOK.totals.ref(item + 2, 4)):
            self.book.write(ref, 900)  # light enough
        self.enter(BOOK.of_channel(0, "lower"), "")
        self.assertEqual([("", "ok", "Nothing.")], self.told())
        self.enter(BOOK.of_channel(0, "name"), "")
        self.assertEqual([], self.told())

    def test_of_more_than_there_are_rows_the_last_says_how_many(self):
        self.open("ods", "en-US")
        for i, channel in enumerate(DEMO["channels"] + [{**DEMO["channels"][4], "name": name} for name in ("six", "seven", "eight")]):
            for key in BOOK.channel_column:
                self.book.write(BOOK.of_channel(i, key), channel.get(key, ""))
            self.book.write(BOOK.of_channel(i, "network"), "0.5")
        self.book.recalculate()
        # What two calculations say of one channel in the same words is told once.
        lines = {(self.book.read(BOOK.calls.ref(row, 1)), line) for row in range(layout.FIRST, BOOK.ready_row) for column in (7, 8)
                 for line in (self.book.read(BOOK.calls.ref(row, column)) or "").splitlines()}
        self.assertGreater(len(lines), layout.TOLD)
        self.assertEqual(("", "warning", f"and {len(lines) - layout.TOLD + 1} more, to be read on the sheet Calls"), self.told()[-1])

    def test_gains_have_a_plus(self):
        for kind, locale, gain, loss in (("ods", "en-US", "+0.5 dB", "−1.5 dB"), ("ods", "de-DE", "+0,5 dB", "−1,5 dB"),
                                         ("xlsx", "en-US", "+0.5 dB", "−1.5 dB"), ("xlsx", "de-DE", "+0,5 dB", "−1,5 dB")):
            with self.subTest(kind, locale=locale):
                self.open(kind, locale)
                cell = BOOK.comparison.ref(layout.FIRST + 2, FIRST_FIGURE)
                self.assertEqual(gain, self.book.cell(cell).String)
                self.enter(self.part("coaxial 16", "level_db_spl"), 88.5)
                self.assertEqual(loss, self.book.cell(cell).String)
                self.enter(self.part("coaxial 16", "level_db_spl"), 90)
                self.assertEqual(loss.replace("−1", "0").replace("5", "0"), self.book.cell(cell).String)

    def test_pages(self):
        for kind in ("ods", "xlsx"):
            with self.subTest(kind):
                self.open(kind, "en-US")
                self.book.print(FOLDER / "pages.pdf")
                # Two of Channels, Results, Comparison and Packages; one of Vehicle, Parts, Levels, Totals and Quote; none of
                # Table and Calls.
                self.assertEqual(13, len(re.findall(rb"/Type\s*/Page\b", (FOLDER / "pages.pdf").read_bytes())))

    def printed(self):
        """Sheet, reference and value of all cells that are printed and not empty."""
        for sheet in self.of.sheets:
            if not sheet.hidden and sheet.printed:
                for (row, column), value in self.book.values(sheet.name).items():
                    if value != "":
                        yield sheet, sheet.ref(row, column), value

    def test_no_number_is_wider_than_its_column(self):
        """Such a number is printed as ###. Measured in the font that is named, and in a wider one."""
        for kind, locale, of in (("ods", "en-US", BOOK), ("xlsx", "de-DE", GERMAN)):
            with self.subTest(kind):
                self.open(kind, locale, of)
                self.book.write(of.cell["currency"], "KWD")  # of three decimals
                self.book.write(self.part("coaxial 16", "price"), 123456.78)
                self.book.write(self.part("coaxial 16", "mass_g"), 99999.5)
                self.enter(of.of_channel(0, "x_m"), -0.855)
                numbers = [self.book.cell(ref) for _, ref, value in self.printed() if isinstance(value, float)]
                self.assertGreater(len(numbers), 300)
                for cell in numbers:
                    self.fits_across(cell)

    def test_minus_signs_are_real_where_people_read(self):
        for kind in ("ods", "xlsx"):
            with self.subTest(kind):
                self.open(kind, "en-US")
                below = [ref for _, ref, value in self.printed() if isinstance(value, float) and value < 0]
                self.assertGreater(len(below), 8)
                for ref in below:
                    self.assertRegex(self.book.cell(ref).String, "^−[0-9]", ref)
                self.assertEqual("−0.85", self.book.cell(BOOK.of_channel(2, "x_m")).String)

    def test_no_machine_text_is_on_paper(self):
        for kind, of in (("ods", BOOK), ("xlsx", GERMAN)):
            with self.subTest(kind):
                self.open(kind, "en-US", of)
                for _, ref, value in self.printed():
                    if ref != of.cell["address"]:
                        self.assertNotRegex(str(value), r'[{}"~]|https?:|Err:|#', ref)

    def test_the_fonts_are_named_with_what_stands_in_for_them(self):
        self.open("ods", "en-US")
        self.assertEqual("Liberation Sans;Arial;Helvetica;DejaVu Sans", self.book.cell(BOOK.verdict).CharFontName)
        self.open("xlsx", "en-US")
        self.assertEqual("Liberation Sans", self.book.cell(BOOK.verdict).CharFontName)
        setup = (FOLDER.parents[3] / ".ci" / "setup").read_text(encoding="utf-8")
        self.assertIn("fc-list -q 'Liberation Sans'", setup)

    def test_choices_and_explanations_come_from_the_contract(self):
        for kind in ("ods", "xlsx"):
            with self.subTest(kind):
                self.open(kind, "en-US")
                zone = self.book.cell(BOOK.of_channel(0, "zone")).Validation
                zones = CONTRACT.choices("driver-comparison", "positions.0.zone")
                self.assertEqual(zones, zone.getFormula1().replace('"', "").split(";"))
                self.assertEqual(CONTRACT.help("driver-comparison", "positions.0.zone", BOOK.words, BOOK.units), zone.InputMessage)
                power = self.book.cell(self.part("coaxial 16", "continuous_power_w")).Validation
                self.assertIn("From 0.01 to 20000", power.InputMessage)
                for ref in (BOOK.of_channel(0, "zone"), BOOK.of_channel(0, "bridged"), BOOK.of_amplifier(0, "basis")):
                    rule = self.book.cell(ref).Validation
                    self.assertEqual((True, "STOP"), (rule.ShowErrorMessage, rule.ErrorAlertStyle.value))
                    self.assertTrue(rule.ErrorMessage.startswith("Please enter one of: "), rule.ErrorMessage)
                self.assertTrue(self.book.cell(BOOK.of_channel(0, "bridged")).Validation.InputMessage.endswith("If left out: no."))
                network = self.book.cell(BOOK.of_channel(0, "network")).Validation.InputMessage
                self.assertLessEqual(len(network), 255 if kind == "xlsx" else 1000)
                parts = self.book.cell(BOOK.of_channel(0, "new")).Validation
                self.assertFalse(parts.ShowErrorMessage)  # the part may be entered later
                self.assertRegex(parts.getFormula1(), r"^\$?Parts\.\$A\$6:\$A\$21$")

    def test_headings_stay_and_helpers_are_hidden(self):
        for kind in ("ods", "xlsx"):
            with self.subTest(kind):
                self.open(kind, "en-US")
                shown = [name for name in self.book.document.Sheets.ElementNames if self.book.document.Sheets.getByName(name).IsVisible]
                self.assertEqual(["Vehicle", "Channels", "Parts", "Results", "Levels", "Comparison", "Packages", "Totals", "Quote", "Table", "Calls"], shown)
                view = self.book.document.CurrentController
                for name, frozen in (("Vehicle", False), ("Channels", True), ("Results", True), ("Totals", True)):
                    view.setActiveSheet(self.book.document.Sheets.getByName(name))
                    self.assertEqual(frozen, view.hasFrozenPanes(), name)

    def test_a_verdict_has_its_colour(self):
        for kind in ("ods", "xlsx"):
            with self.subTest(kind):
                self.open(kind, "en-US")
                cell = self.book.cell(BOOK.verdict)
                conditions = [cell.ConditionalFormat.getByIndex(n).getFormula1() for n in range(cell.ConditionalFormat.Count)]
                self.assertEqual([f'"{verdict}"' for verdict in VERDICTS], conditions)
