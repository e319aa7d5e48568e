"""What the workbooks say of entries that cannot be read, of refusals and of a service that is away."""
import copy
import urllib.request

import layout
from expected import DEMO, SERVICE, Expected, post
from opened import BOOK, Opened


class Faults(Opened):
    def test_a_wrong_input_is_a_short_text_in_its_channel_alone(self):
        self.open("ods", "de-DE")
        untouched = self.result(0, "level_db_spl")
        self.book.write(self.part("coaxial 13", "level_db_spl"), 900)
        self.book.write(BOOK.of_channel(4, "network"), "(4+4")
        self.book.recalculate()
        self.assertEqual([], self.book.errors())
        self.assertEqual(untouched, self.result(0, "level_db_spl"))
        self.assertEqual("fault", self.result(2, "verdict"))
        self.assertEqual("fault: sensitivity.level_db_spl must be a number from 40 to 130.", self.says(2)[0])
        self.assertIsNone(self.result(2, "level_db_spl"))
        self.assertEqual("fault", self.result(4, "verdict"))
        with urllib.request.urlopen(SERVICE + "/v1/wiring-load?network=(4%2B4&errors=text&format=json") as answer:
            self.assertEqual("fault: " + answer.read().decode(), self.says(4)[0])
        self.assertEqual("incomplete", self.lacking())
        self.book.write(BOOK.of_channel(4, "network"), "(4+4)||(4+4)")
        self.book.recalculate()
        self.assertNotEqual("fault", self.result(4, "verdict"))

    def test_text_in_a_number_cell_is_told(self):
        self.open("xlsx", "en-US")
        self.book.write(self.part("coaxial 16", "rated_ohm"), "4 & more")
        self.book.recalculate()
        self.assertIn("rated_ohm must be a number", self.says(0)[0])
        self.book.write(self.part("coaxial 16", "rated_ohm"), "4,0")
        self.book.recalculate()
        self.same(Expected().channels[0]["sound-level"]["result"]["level_db_spl"], self.result(0, "level_db_spl"), "comma typed as text")

    def test_a_part_that_is_not_listed_is_told(self):
        self.open("ods", "en-US")
        self.book.write(BOOK.of_channel(0, "factory"), "factory 99")
        self.enter(BOOK.of_channel(0, "new"), "coaxial 99")
        told = ["fault: The factory driver is not on the sheet Parts: factory 99.", "fault: The new driver is not on the sheet Parts: coaxial 99."]
        for sheet, verdict in (("Results", self.result(0, "verdict")), ("Comparison", self.book.read(BOOK.comparison.ref(layout.FIRST, 2)))):
            self.assertEqual("fault", verdict, sheet)
            self.assertEqual(told, self.says(0, sheet))
        self.assertEqual("fault", self.book.read(BOOK.verdict))

    def test_what_is_not_chosen_is_told_in_words_of_the_workbook(self):
        self.open("xlsx", "de-DE")
        for key, words in (("new", "No new driver is chosen."), ("amplifier", "No amplifier is chosen.")):
            self.enter(BOOK.of_channel(0, key), "")
            self.assertEqual("fault", self.result(0, "verdict"))
            self.assertEqual(1, len(self.says(0)), self.says(0))
            self.assertTrue(self.says(0)[0].startswith("fault: " + words), self.says(0))
            self.enter(BOOK.of_channel(0, key), DEMO["channels"][0][key])
            self.assertEqual([], self.says(0))

    def test_a_count_typed_as_text_counts_and_none_is_one(self):
        for kind, locale in (("ods", "de-DE"), ("xlsx", "en-US")):
            with self.subTest(kind):
                self.open(kind, locale)
                figures = [self.result(4, key) for key, *_ in layout.RESULTS]
                self.enter(BOOK.of_channel(4, "count"), "2")
                self.assertEqual(figures, [self.result(4, key) for key, *_ in layout.RESULTS])
                level = self.result(0, "level_db_spl")
                self.enter(BOOK.of_channel(0, "count"), "")
                self.assertEqual(level, self.result(0, "level_db_spl"))
                self.enter(BOOK.of_channel(0, "count"), "a pair")
                self.assertEqual("fault", self.result(0, "verdict"))
                self.assertRegex(self.says(0)[0], "driver_count must be a")

    def test_without_a_readable_position_or_programme_there_is_no_level_and_that_is_a_fault(self):
        self.open("ods", "de-DE")
        for ref, words, bad in ((BOOK.of_channel(2, "x_m"), "a position of the channel or of the seat", "left"),
                                (BOOK.of_channel(2, "y_m"), "a position of the channel or of the seat", ""),
                                (BOOK.cell["seat_z_m"], "a position of the channel or of the seat", "up"),
                                (BOOK.cell["crest_factor_db"], "the programme's peak over RMS, on the sheet Vehicle,", "")):
            with self.subTest(ref):
                before = self.book.read(ref)
                self.enter(ref, bad)
                self.assertIsNone(self.result(2, "level_db_spl"))
                self.assertEqual("fault", self.result(2, "verdict"))
                self.assertEqual(f"fault: No level: {words} is not a number.", self.says(2)[0])
                self.assertTrue(all(line.startswith("warning: ") for line in self.says(2)[1:]), self.says(2))
                self.enter(ref, before)
                self.assertEqual("warning", self.result(2, "verdict"))

    def test_an_empty_figure_that_is_needed_is_a_fault(self):
        self.open("ods", "en-US")
        self.enter(BOOK.part(BOOK.delays_row, 1), "")
        self.assertEqual("fault", self.result(0, "verdict"))
        self.assertEqual(["fault: The answer has no delay_ms: see the sheet Calls."], self.says(0))
        self.assertEqual("fault", self.book.read(BOOK.verdict))

    def test_a_stop_comes_first(self):
        self.open("ods", "en-US")
        self.enter(BOOK.of_channel(4, "network"), "4||4||4||4")
        self.assertEqual("stop", self.result(4, "verdict"))
        self.assertTrue(self.says(4)[0].startswith("stop: "), self.says(4))
        levels = [level for _, level, _ in self.told()]
        self.assertEqual(sorted(levels), levels)  # stop before warning
        self.assertEqual("stop", self.book.read(BOOK.verdict))

    def test_yes_and_no_are_what_was_entered_and_nothing_else(self):
        for kind, locale in (("ods", "en-US"), ("ods", "de-DE"), ("xlsx", "en-US"), ("xlsx", "de-DE")):
            with self.subTest(kind, locale=locale):
                self.open(kind, locale)
                bridged, cell = self.result(4, "clean_power_w"), BOOK.of_channel(4, "bridged")
                self.enter(cell, "Yes")
                self.assertEqual(bridged, self.result(4, "clean_power_w"))
                for word in ("ja", "x", "nein"):
                    self.enter(cell, word)
                    self.assertIsNone(self.result(4, "clean_power_w"), word)
                    self.assertEqual("fault", self.result(4, "verdict"))
                    self.assertIn("bridged must be true or false.", self.says(4)[0])
                self.enter(cell, "NO")
                single = self.result(4, "clean_power_w")
                self.assertLess(single, bridged)
                self.enter(cell, "")
                self.assertEqual(single, self.result(4, "clean_power_w"))

    def test_other_yes_and_no_as_well(self):
        self.open("ods", "de-DE")
        for ref, name in ((BOOK.of_amplifier(0, "regulated"), "supply_regulated"), (BOOK.of_amplifier(0, "rated_bridged"), "ratings.bridged")):
            self.enter(ref, "ja")
            self.assertIn(name + " must be true or false.", self.says(0)[0])
            self.enter(ref, "no")
            self.assertEqual([], self.says(0))

    def test_names_may_hold_any_character(self):
        for kind, locale in (("ods", "de-DE"), ("xlsx", "en-US")):
            with self.subTest(kind):
                self.open(kind, locale)
                demo, untouched = copy.deepcopy(DEMO), self.book.read(BOOK.total)
                demo["channels"][0]["name"] = 'Tür {links}", "delay_ms":1 & oben'
                demo["channels"][0]["new"], demo["channels"][0]["factory"] = 'new }, "price":1', "old {16}"
                for old, new in (("coaxial 16", demo["channels"][0]["new"]), ("factory door 16", "old {16}")):
                    [driver] = [driver for driver in demo["drivers"] if driver["name"] == old]
                    demo["drivers"].append({**driver, "name": new})
                    row = layout.FIRST + len(demo["drivers"]) - 1
                    for key, column in BOOK.driver_column.items():
                        self.book.write(BOOK.parts.ref(row, column), demo["drivers"][-1].get(key, ""))
                for key in ("name", "new", "factory"):
                    self.book.write(BOOK.of_channel(0, key), demo["channels"][0][key])
                self.book.recalculate()
                self.assertEqual([], self.book.errors())
                expected = Expected(demo)
                self.check_results(expected)
                self.check_comparison(expected)
                self.assertEqual("note", self.result(0, "verdict"))
                self.assertEqual("old {16}", self.book.read(BOOK.comparison.ref(layout.FIRST, 4)))
                self.same(untouched, self.book.read(BOOK.total), "total")
                self.assertIn('Tür {links}", "delay_ms":1 & oben: the 90 dB', self.says(0, "Comparison")[0])

    def test_a_driver_that_stays_is_chosen_again(self):
        self.open("xlsx", "en-US")
        total = self.book.read(BOOK.total)
        self.book.write(self.part("factory door 16", "price"), 0)
        self.enter(BOOK.of_channel(0, "new"), "factory door 16")
        self.assertNotEqual("fault", self.result(0, "verdict"))
        self.assertIsNone(self.lacking())
        new = next(driver for driver in DEMO["drivers"] if driver["name"] == "coaxial 16")
        self.same(total - 1.2 * new["price"], self.book.read(BOOK.total), "total")

    def test_a_factory_radio_is_an_amplifier(self):
        self.open("ods", "en-US")
        radio = {"name": "factory radio", "supply_v": 14.4, "basis": "clean", "load_0_ohm": 4, "power_0_w": 14, "load_1_ohm": 8, "power_1_w": 7.5,
                 "mass_g": 0, "price": 0}
        for key, value in radio.items():
            self.book.write(BOOK.of_amplifier(2, key), value)
        self.enter(BOOK.of_channel(0, "amplifier"), "factory radio")
        self.assertEqual([], [line for line in self.says(0) if line.startswith("fault")])
        wanted = post("rail-match", {"load_ohm": self.result(0, "load_with_cable_ohm"), "supply_v": 13.8, "ratings": {
            "supply_v": 14.4, "basis": "clean", "points": [{"load_ohm": 4, "power_w": 14}, {"load_ohm": 8, "power_w": 7.5}]}})
        self.same(wanted["result"]["clean_power_w"], self.result(0, "clean_power_w"), "power of the radio")
        self.assertIsInstance(self.result(0, "level_db_spl"), float)
        self.assertIsNone(self.lacking())

    def test_a_row_left_out_is_no_harm(self):
        self.open("ods", "en-US")
        for key in BOOK.channel_column:
            self.book.write(BOOK.of_channel(2, key), "")
        self.book.recalculate()
        rest = [channel for channel in DEMO["channels"] if channel["name"] != "rear left"]
        delays = post("seat-delays", Expected.delays_question(DEMO["vehicle"], rest))["result"]["channels"]
        for i, channel in zip((0, 1, 3, 4), delays):
            self.same(channel["delay_ms"], self.result(i, "delay_ms"), channel["name"])

    def test_a_stopped_service_is_a_sentence(self):
        for kind in ("ods", "xlsx"):
            with self.subTest(kind):
                self.open(kind, "en-US")
                self.book.write(BOOK.cell["address"], "http://127.0.0.1:9")
                self.book.recalculate()
                sentence = "No answer. Is the service running at http://127.0.0.1:9, and is this file allowed to update its links?"
                self.assertEqual(sentence, self.book.read(BOOK.status))
                self.assertEqual([], self.book.errors())
                self.assertEqual("fault", self.book.read(BOOK.verdict))
                self.assertEqual(["fault: " + sentence], self.says(0))
                self.assertIsNone(self.result(0, "level_db_spl"))


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
                    self.assertEqual("incomplete", self.lacking())
                    self.enter(cell, before)
                    self.assertIsNone(self.lacking())
                    self.same(whole, self.book.read(BOOK.total), "total")

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
        self.assertEqual("incomplete", self.lacking())
