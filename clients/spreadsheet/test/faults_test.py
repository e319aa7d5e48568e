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
        self.assertEqual("fault: Parts, row 9, column C (Sensitivity) must be a number from 40 to 130.", self.says(2)[0])
        self.assertIsNone(self.result(2, "level_db_spl"))
        self.assertEqual("fault", self.result(4, "verdict"))
        with urllib.request.urlopen(SERVICE + "/v1/wiring-load?network=(4%2B4&errors=text&format=json") as answer:
            place = "Channels, row 10, column E (Network of their coils)"
            self.assertEqual("fault: " + answer.read().decode().replace("the network", place), self.says(4)[0])
        self.assertEqual("incomplete: 2 prices missing", self.lacking())
        self.book.write(BOOK.of_channel(4, "network"), "(4+4)||(4+4)")
        self.book.recalculate()
        self.assertNotEqual("fault", self.result(4, "verdict"))

    def test_text_in_a_number_cell_is_told(self):
        self.open("xlsx", "en-US")
        self.book.write(self.part("coaxial 16", "rated_ohm"), "4 & more")
        self.book.recalculate()
        self.assertIn("Parts, row 8, column B (Impedance) must be a number", self.says(0)[0])
        self.book.write(self.part("coaxial 16", "rated_ohm"), "4,0")
        self.book.recalculate()
        self.same(Expected().channels[0]["sound-level"]["result"]["level_db_spl"], self.result(0, "level_db_spl"), "comma typed as text")

    def test_a_part_that_is_not_listed_is_told(self):
        self.open("ods", "en-US")
        self.book.write(BOOK.of_channel(0, "factory"), "factory 99")
        self.enter(BOOK.of_channel(0, "new"), "coaxial 99")
        told = ["fault: Channels, row 6, column B (Factory driver): factory 99 is not on the sheet Parts.",
                "fault: Channels, row 6, column C (New driver): coaxial 99 is not on the sheet Parts."]
        for sheet, verdict in (("Results", self.result(0, "verdict")), ("Comparison", self.book.read(BOOK.comparison.ref(layout.FIRST, 2)))):
            self.assertEqual("fault", verdict, sheet)
            self.assertEqual(told, self.says(0, sheet))
        self.assertEqual("fault", self.book.read(BOOK.verdict))

    def test_what_is_not_chosen_is_told_in_words_of_the_workbook(self):
        self.open("xlsx", "de-DE")
        for key, words in (("new", "Channels, row 6, column C (New driver): none is chosen."),
                           ("amplifier", "Channels, row 6, column I (Amplifier): none is chosen.")):
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
                self.assertRegex(self.says(0)[0], r"Channels, row 6, column D \(Drivers\) must be a")

    def test_without_a_readable_position_or_programme_there_is_no_level_and_that_is_a_fault(self):
        self.open("ods", "de-DE")
        for ref, words, bad in ((BOOK.of_channel(2, "x_m"), "Channels, row 8, column M (Forward)", "left"),
                                (BOOK.of_channel(2, "y_m"), "Channels, row 8, column N (To the left)", ""),
                                (BOOK.cell["seat_z_m"], "Vehicle, row 22, column C (Up)", "up"),
                                (BOOK.cell["crest_factor_db"], "Vehicle, row 14, column C (Programme, peak over RMS)", "")):
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
        self.assertEqual(["fault: The answer has nothing for Delay: see the sheet Calls."], self.says(0))
        self.assertEqual("fault", self.book.read(BOOK.verdict))

    def test_every_fault_of_a_question_is_a_line_with_its_place(self):
        self.open("ods", "en-US")
        self.book.write(self.part("coaxial 16", "level_db_spl"), "")
        self.book.write(self.part("coaxial 16", "rated_ohm"), 0)
        self.book.write(BOOK.cell["cabin_length_m"], 900)
        self.enter(BOOK.of_channel(0, "lowest_hz"), -1)
        told = [line for line in self.says(0) if line.startswith("fault: ")]
        for place in ("Parts, row 8, column B (Impedance) must be a number", "Parts, row 8, column C (Sensitivity) is required.",
                      "Vehicle, row 11, column C (Cabin, longest inside) must be", "Channels, row 6, column P (Plays fully from) must be"):
            self.assertTrue(any(line.startswith("fault: " + place) for line in told), (place, told))
        self.assertFalse([line for line in told if "_" in line], told)

    def test_faults_of_the_delays_have_their_rows_also_when_one_is_left_out(self):
        self.open("xlsx", "de-DE")
        for key in BOOK.channel_column:
            self.book.write(BOOK.of_channel(1, key), "")
        self.book.write(BOOK.of_channel(2, "high_pass_hz"), -5)
        self.book.write(BOOK.of_channel(4, "full_range"), "vielleicht")
        self.book.write(BOOK.of_channel(0, "high_pass_hz"), 90000)
        self.enter(BOOK.cell["rate_hz"], 1)
        told = [text for channel, _, text in self.told() if channel == "delays"]
        for place in ("Channels, row 8, column Q (High-pass) must be", "Channels, row 6, column Q (High-pass) must be",
                      "Channels, row 10, column T (Surely without filter) must be yes or no.", "Vehicle, row 27, column C (Sample rate) must be"):
            self.assertTrue(any(text.startswith(place) for text in told), (place, told))
        self.assertFalse([text for text in told if "_" in text or "channels." in text], told)

    def test_names_that_are_not_there_or_twice_are_told(self):
        self.open("ods", "en-US")
        self.book.write(BOOK.of_channel(3, "name"), "front left")
        self.enter(BOOK.of_channel(1, "lower"), "deep bass")
        self.assertEqual(["Channels, row 6, column A (Channel): another channel is called so too.",
                          "Channels, row 7, column S (Below the high-pass plays): no channel is called deep bass.",
                          "Channels, row 9, column A (Channel): another channel is called so too."],
                         [text for _, level, text in self.told() if level == "fault"])

    def test_a_decimal_point_in_a_language_with_a_comma_is_told_beside_the_cell(self):
        for kind, locale, sign in (("ods", "de-DE", "."), ("xlsx", "en-US", ",")):
            with self.subTest(kind, locale=locale):
                self.open(kind, locale)
                self.book.write(BOOK.cell["supply_v"], f"13{sign}8")
                self.book.write(BOOK.of_channel(2, "cable_m"), f"5{sign}5")
                self.book.write(BOOK.of_amplifier(0, "price"), f"289{sign}5")
                self.enter(self.part("coaxial 16", "continuous_power_w"), f"80{sign}5")
                row = int(BOOK.cell["supply_v"].rpartition("$")[2])
                self.assertEqual("not a number", self.book.read(BOOK.vehicle.ref(row, 4)))
                self.assertEqual("Cable, one way", self.book.read(BOOK.channels.ref(layout.FIRST + 2, len(BOOK.channel_column) + 1)))
                self.assertIsNone(self.book.read(BOOK.channels.ref(layout.FIRST + 1, len(BOOK.channel_column) + 1)))
                driver = int(self.part("coaxial 16", "name").rpartition("$")[2])
                self.assertEqual("Power, continuous", self.book.read(BOOK.parts.ref(driver, len(BOOK.driver_column) + 1)))
                self.assertEqual("Price", self.book.read(BOOK.parts.ref(BOOK.first_amplifier, len(BOOK.amplifier_column) + 1)))
                told = [f"{channel}: {text}" for channel, level, text in self.told() if level == "fault"]
                why = " is a text here, not a number. Write it with this spreadsheet's decimal sign."
                for place in (f"vehicle: Vehicle, row {row}, column C (Supply voltage, engine running): 13{sign}8",
                              f"rear left: Channels, row 8, column K (Cable, one way): 5{sign}5",
                              f"front left: Parts, row 8, column E (Power, continuous): 80{sign}5"):
                    self.assertIn(place + why, told)
                self.assertEqual("fault", self.book.read(BOOK.verdict))
                self.assertEqual("incomplete: 1 price missing", self.lacking())

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
                    self.assertIn("Channels, row 10, column J (Bridged) must be yes or no.", self.says(4)[0])
                self.enter(cell, "NO")
                single = self.result(4, "clean_power_w")
                self.assertLess(single, bridged)
                self.enter(cell, "")
                self.assertEqual(single, self.result(4, "clean_power_w"))

    def test_other_yes_and_no_as_well(self):
        self.open("ods", "de-DE")
        for ref, name in ((BOOK.of_amplifier(0, "regulated"), "column M (Supply regulated)"), (BOOK.of_amplifier(0, "rated_bridged"), "column N (Ratings are bridged)")):
            self.enter(ref, "ja")
            self.assertIn(f"Parts, row 26, {name} must be yes or no.", self.says(0)[0])
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
        wanted = post("rail-match", {"load_ohm": self.result(0, "load_with_cable_ohm"), "supply_v": 13.8, "amplifier": {"ratings": {
            "supply_v": 14.4, "basis": "clean", "points": [{"load_ohm": 4, "power_w": 14}, {"load_ohm": 8, "power_w": 7.5}]}}})
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
