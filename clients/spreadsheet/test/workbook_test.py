#!/usr/bin/python3
"""Opens the built workbooks in LibreOffice against the running service at FOOTWELL_URL and holds every figure
against the one the service gives over HTTP to the same question, put as JSON."""
import copy
import json
import os
import re
import sys
import tempfile
import time
import unittest
import urllib.error
import urllib.request
import zipfile
from pathlib import Path
from xml.etree import ElementTree

HERE = Path(__file__).resolve().parent
sys.path[:0] = [str(HERE), str(HERE.parent)]

import layout  # noqa: E402
from build import build  # noqa: E402
from calc import Calc  # noqa: E402
from comparison import FIRST_FIGURE  # noqa: E402
from contract import Contract, UnknownName  # noqa: E402
from plan import plan  # noqa: E402
from sheets import VERDICTS  # noqa: E402

SERVICE = os.environ["FOOTWELL_URL"]
DEMO = json.loads((HERE.parent / "demo.json").read_text(encoding="utf-8"))
FOLDER = HERE.parent / "target" / "test"
CONTRACT = Contract()
BOOK = build(FOLDER, CONTRACT, SERVICE)


def post(calculation, question):
    """The whole answer, or the problem."""
    request = urllib.request.Request(f"{SERVICE}/v1/{calculation}", json.dumps(question).encode(), {"Content-Type": "application/json"})
    try:
        with urllib.request.urlopen(request, timeout=30) as answer:
            return json.load(answer)
    except urllib.error.HTTPError as refusal:
        raise AssertionError(f"{calculation}: {refusal.read().decode()}") from refusal


def filled(**fields):
    return {name: value for name, value in fields.items() if value not in (None, {}, [])}


def by_name(rows):
    return {row["name"]: row for row in rows}


class Expected:
    """The demonstration asked directly."""

    def __init__(self, demo=DEMO):
        vehicle = demo["vehicle"]
        drivers, amplifiers = by_name(demo["drivers"]), by_name(demo["amplifiers"])
        self.channels = [self.channel(vehicle, channel, drivers, amplifiers) for channel in demo["channels"]]
        self.delays = post("seat-delays", self.delays_question(vehicle, demo["channels"]))

    def channel(self, vehicle, channel, drivers, amplifiers):
        amplifier, new, count = amplifiers[channel["amplifier"]], drivers[channel["new"]], channel["count"]
        answers = {"wiring-load": post("wiring-load", {
            "network": channel["network"],
            "amplifier": {"minimum_ohm": amplifier["minimum_ohm"], "minimum_bridged_ohm": amplifier["minimum_bridged_ohm"],
                          "output_ohm": amplifier["output_ohm"], "bridged": channel["bridged"] == "yes"},
            "cable": {"one_way_m": channel["cable_m"], "area_mm2": channel["cable_mm2"]}})}
        load = answers["wiring-load"]["result"]
        answers["rail-match"] = post("rail-match", {
            "load_ohm": load["load_with_cable_ohm"], "bridged": channel["bridged"] == "yes", "supply_v": vehicle["supply_v"],
            "minimum_ohm": amplifier["minimum_ohm"], "minimum_bridged_ohm": amplifier["minimum_bridged_ohm"],
            "ratings": {"supply_v": amplifier["supply_v"], "basis": amplifier["basis"], "points": [
                {"load_ohm": amplifier[f"load_{n}_ohm"], "power_w": amplifier[f"power_{n}_w"]} for n in (0, 1)]},
            "driver": {"continuous_power_w": count * new["continuous_power_w"], "rated_ohm": load["load_ohm"]}})
        power = answers["rail-match"]["result"]["clean_power_w"] * load["load_ohm"] / load["load_with_cable_ohm"]
        position, seat = ([of[start + axis] for axis in ("x_m", "y_m", "z_m")] for of, start in ((channel, ""), (vehicle, "seat_")))
        distance = sum((here - there) ** 2 for here, there in zip(position, seat)) ** 0.5
        answers["programme power"] = 2 * power / 10 ** (vehicle["crest_factor_db"] / 10)
        answers["sound-level"] = post("sound-level", filled(
            sensitivity={"level_db_spl": new["level_db_spl"], "basis": new["basis"]}, rated_ohm=new["rated_ohm"],
            power_w=answers["programme power"], distance_m=distance, driver_count=count,
            drive="shared" if count > 1 else None, addition="coherent" if count > 1 else None,
            cabin={"length_m": vehicle["cabin_length_m"]}, crest_factor_db=vehicle["crest_factor_db"],
            continuous_power_w=new["continuous_power_w"],
            cone={"sd_cm2": new["sd_cm2"], "xmax_mm": new["xmax_mm"], "frequency_hz": channel["lowest_hz"]}))
        factory = drivers.get(channel.get("factory"))
        answers["driver-comparison"] = post("driver-comparison", {
            "currency": vehicle["currency"], "temperature_c": vehicle["temperature_c"], "positions": [filled(
                name=channel["name"], zone=channel["zone"], band=channel["band"], at=channel["at"], driver_count=count,
                displacement_hz=channel["lowest_hz"], factory=self.side(factory), replacement=self.side(new),
                amplifier_before=factory and {"power_w": vehicle["factory_power_w"], "load_ohm": vehicle["factory_load_ohm"]},
                amplifier_after={"power_w": power / count, "load_ohm": new["rated_ohm"]})]})
        return answers

    @staticmethod
    def side(part):
        return part and {**{key: value for key, value in part.items() if key not in ("level_db_spl", "basis")},
                         "sensitivity": {"level_db_spl": part["level_db_spl"], "basis": part["basis"]}}

    @staticmethod
    def delays_question(vehicle, channels):
        def filter_at(corner):
            return corner and {"kind": vehicle["filter_kind"], "order": vehicle["filter_order"], "frequency_hz": corner}

        return {"channels": [filled(name=c["name"], position={axis: c[axis] for axis in ("x_m", "y_m", "z_m")},
                                    high_pass=filter_at(c.get("high_pass_hz")), low_pass=filter_at(c.get("low_pass_hz"))) for c in channels],
                "crossovers": [{"lower": c["lower"], "upper": c["name"], "frequency_hz": c["high_pass_hz"]} for c in channels if "lower" in c],
                "seats": [{"name": vehicle["seat"], "position": {axis: vehicle["seat_" + axis] for axis in ("x_m", "y_m", "z_m")}}],
                "processor": {"rate_hz": vehicle["rate_hz"], "maximum_delay_ms": vehicle["maximum_delay_ms"]},
                "temperature_c": vehicle["temperature_c"]}


RUNNING = {}


def running(locale):
    """A LibreOffice in this language, one for all tests: it starts slowly."""
    if locale not in RUNNING:
        profile = tempfile.TemporaryDirectory()
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
        return self.book.read(BOOK.totals.ref(int(BOOK.total.rpartition("$")[2]), 8))

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


class Figures(Opened):
    def test_open_document_in_english(self):
        self.check("ods", "en-US")

    def test_open_document_with_decimal_comma(self):
        self.check("ods", "de-DE")

    def test_open_xml_in_english(self):
        self.check("xlsx", "en-US")

    def test_open_xml_with_decimal_comma(self):
        self.check("xlsx", "de-DE")

    def check(self, kind, locale):
        self.open(kind, locale)
        level = self.book.cell(BOOK.figure(0, "level_db_spl")).String
        self.assertRegex(level, r"^\d+,\d$" if locale == "de-DE" else r"^\d+\.\d$")
        self.assertEqual([], self.book.errors())
        expected = Expected()
        self.check_results(expected)
        self.check_comparison(expected)
        self.check_totals(expected)
        self.check_sentences(expected)

    def check_results(self, expected):
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
        self.assertEqual(len(DEMO["channels"]) * 13, compared)

    def test_the_review_of_the_whole_plan_agrees(self):
        self.open("ods", "en-US")
        reviewed = post("plan-review", plan(DEMO))["result"]["channels"]
        self.assertEqual(len(DEMO["channels"]), len(reviewed))
        for i, channel in enumerate(reviewed):
            for name in ("load_ohm", "clean_power_w", "headroom_db", "limiter_rms_v", "limiter_peak_v", "level_db_spl", "delay_ms"):
                self.same(channel[name], self.result(i, name), f"{i} {name}")

    def check_comparison(self, expected):
        for i, answers in enumerate(expected.channels):
            position = answers["driver-comparison"]["result"]["positions"][0]
            for n, group in enumerate(("before", "after", "change")):
                for column, (_, side, change, *_) in enumerate(layout.COMPARED_FIGURES, FIRST_FIGURE):
                    name = change if group == "change" else side
                    found = self.book.read(BOOK.comparison.ref(layout.FIRST + 3 * i + n, column))
                    self.same(position.get(group, {}).get(name), found, f"{i} {group} {name}")

    def check_totals(self, expected):
        totals = [answers["driver-comparison"]["result"]["totals"] for answers in expected.channels]
        price = sum(t["price"] for t in totals) + sum(a["price"] for a in DEMO["amplifiers"]) + sum(i["quantity"] * i["price"] for i in DEMO["items"])
        mass = sum(t["mass_change_g"] for t in totals) + sum(a["mass_g"] for a in DEMO["amplifiers"]) + sum(i["quantity"] * i["mass_g"] for i in DEMO["items"])
        labour = DEMO["labour"]
        total = (price + labour["hours"] * labour["rate"]) * (1 + labour["tax_percent"] / 100)
        self.same(total, self.book.read(BOOK.total), "total")
        row = int(BOOK.total.rpartition("$")[2])
        self.same(mass, self.book.read(BOOK.totals.ref(row - 5, 6)), "mass")
        self.assertIsNone(self.book.read(BOOK.totals.ref(row, 8)))

    def check_sentences(self, expected):
        cautions = self.book.read(BOOK.results.ref(layout.FIRST + layout.CHANNELS + 4, 1))
        everything = [answers[c] for answers in expected.channels for c in layout.CALCULATIONS] + [expected.delays]
        wanted = {line for answer in everything for line in answer["safety"]}
        self.assertGreater(len(wanted), 3)
        self.assertEqual(wanted, {line.removeprefix("• ") for line in cautions.strip().split("\n")})
        for i, answers in enumerate(expected.channels):
            findings = [f for c in layout.CALCULATIONS for f in answers[c]["findings"]]
            lines = [f"{finding['level']}: {finding['text']}" for level in ("stop", "warning") for finding in findings if finding["level"] == level]
            self.assertEqual(lines, self.says(i))
            self.assertEqual(sum(finding["level"] == "note" for finding in findings), self.result(i, "notes"))
            known = [f"{finding['level']}: {finding['text']}" for finding in answers["driver-comparison"]["findings"]]
            self.assertEqual(known, self.says(i, "Comparison"))


class Addresses(Opened):
    def test_every_question_is_short_enough_and_its_answer_may_be_kept(self):
        self.open("ods", "en-US")
        addresses = [address for address in self.calls(5) if address]
        self.assertEqual(len(DEMO["channels"]) * 4 + 2, len(addresses))
        print(f"longest address: {max(map(len, addresses))} characters; longest answer: {max(len(a) for a in self.calls(6) if a)}", file=sys.stderr)
        self.assertLess(max(map(len, addresses)), 2000)
        self.assertLess(max(len(answer) for answer in self.calls(6) if answer), 32767)
        for address in addresses[:-1]:
            with urllib.request.urlopen(address) as answer:
                self.assertIn("max-age=", answer.headers["Cache-Control"])
                tag = answer.headers["ETag"]
            with self.assertRaises(urllib.error.HTTPError) as again:
                urllib.request.urlopen(urllib.request.Request(address, headers={"If-None-Match": tag}))
            self.assertEqual(304, again.exception.code)

    def fill(self, i, channel):
        for key in BOOK.channel_column:
            self.book.write(BOOK.of_channel(i, key), channel.get(key, ""))

    def test_six_channels_with_a_filter_each_fit_and_of_eight_only_the_delays_do_not(self):
        self.open("ods", "en-US")
        first = len(DEMO["channels"])
        more = [{key: value for key, value in {**DEMO["channels"][2], "name": name}.items()} for name in ("centre", "side left", "side right")]
        self.fill(first, more[0])
        self.book.recalculate()
        longest = max(length for length in self.calls(4) if length)
        print(f"longest address with six channels: {longest:.0f} characters", file=sys.stderr)
        self.assertLess(longest, 2000)
        wanted = post("seat-delays", Expected.delays_question(DEMO["vehicle"], DEMO["channels"] + more[:1]))
        for i, channel in enumerate(wanted["result"]["channels"]):
            self.same(channel["delay_ms"], self.result(i, "delay_ms"), channel["name"])
        for i, channel in enumerate(more[1:], first + 1):
            self.fill(i, channel)
        self.book.recalculate()
        self.assertRegex(" ".join(text for channel, _, text in self.told() if channel == "delays"),
                         r"^The question has \d+ characters, a cell sends at most 2000\.")
        self.assertIsNone(self.result(0, "delay_ms"))
        self.assertEqual(self.result(2, "clean_power_w"), self.result(7, "clean_power_w"))


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
                Figures.check_results(self, expected)
                Figures.check_comparison(self, expected)
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


class Looks(Opened):
    def height(self, cell, width):
        """What the text of a cell would need in a column of this width."""
        sheets = self.book.document.Sheets
        if not sheets.hasByName("Measure"):
            sheets.insertNewByName("Measure", sheets.Count)
        trial = sheets.getByName("Measure").getCellByPosition(0, 0)
        trial.Columns.getByIndex(0).Width = width
        trial.String, trial.IsTextWrapped = cell.String, True
        for look in ("CharHeight", "CharWeight", "CharFontName", "ParaTopMargin", "ParaBottomMargin", "ParaLeftMargin", "ParaRightMargin"):
            setattr(trial, look, getattr(cell, look))
        trial.Rows.getByIndex(0).OptimalHeight = True
        return trial.Rows.getByIndex(0).Height

    def fits(self, ref, rows=1, end=None):
        cell = self.book.cell(ref)
        sheet, place = cell.Spreadsheet, cell.CellAddress
        width = sum(sheet.Columns.getByIndex(column).Width for column in range(place.Column, end or place.Column + 1))
        height = sum(sheet.Rows.getByIndex(place.Row + row).Height for row in range(rows))
        if cell.String and (cell.String, width, height) not in self.measured:
            self.measured.add((cell.String, width, height))
            self.assertLessEqual(self.height(cell, width), height, f"{ref}: {cell.String}")

    def test_no_text_is_cut(self):
        for kind in ("ods", "xlsx"):
            with self.subTest(kind):
                self.open(kind, "en-US")
                self.measured = set()
                self.book.write(BOOK.of_channel(0, "network"), "1")
                self.book.write(BOOK.of_channel(1, "name"), "front right, upper door panel")
                self.book.write(BOOK.cell["maximum_delay_ms"], 0.5)
                for key in ("rated_ohm", "level_db_spl", "continuous_power_w", "peak_power_w", "sd_cm2", "xmax_mm", "fs_hz"):
                    self.book.write(self.part("sub 25, two coils", key), "rather more than enough")
                self.enter(self.part("coaxial 13", "mass_g"), 9000)
                self.assertGreaterEqual(len(self.says(0)), 4)
                self.assertEqual(300, max(len(text) for _, _, text in self.told()))
                for sheet, end in (("Results", len(layout.RESULTS)), ("Comparison", FIRST_FIGURE + len(layout.COMPARED_FIGURES) - 1)):
                    self.assertLess(8, len(self.told(sheet)))
                    for channel, level, text in BOOK.told[sheet]:
                        self.fits(channel)
                        self.fits(level)
                        self.fits(text, end=end)
                for i in range(len(DEMO["channels"])):
                    self.fits(BOOK.figure(i, "name"))
                    self.fits(BOOK.comparison.ref(layout.FIRST + 3 * i, 1), rows=3)
                last = layout.FIRST + layout.CHANNELS
                self.fits(BOOK.results.ref(last + 4, 1), end=len(layout.RESULTS))
                self.fits(BOOK.totals.ref(int(BOOK.total.rpartition("$")[2]) + 5, 1), end=8)
                if kind == "ods":
                    for sheet in (BOOK.results, BOOK.comparison, BOOK.totals, BOOK.channels, BOOK.parts):
                        for column in range(1, len(sheet.widths) + 1):
                            self.fits(sheet.ref(layout.FIRST - 2, column))

    def test_where_there_is_nothing_to_tell_the_list_says_so(self):
        self.open("ods", "en-US")
        for i in range(1, len(DEMO["channels"])):
            for key in BOOK.channel_column:
                self.book.write(BOOK.of_channel(i, key), "")
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
        lines = [line for row in range(layout.FIRST, BOOK.ready_row) for column in (7, 8)
                 for line in (self.book.read(BOOK.calls.ref(row, column)) or "").splitlines()]
        self.assertGreater(len(lines), layout.TOLD)
        self.assertEqual(("", "warning", f"and {len(lines) - layout.TOLD + 1} more, to be read on the sheet Calls"), self.told()[-1])

    def test_gains_have_a_plus(self):
        for kind, locale, gain, loss in (("ods", "en-US", "+0.5 dB", "-1.5 dB"), ("ods", "de-DE", "+0,5 dB", "-1,5 dB"),
                                         ("xlsx", "en-US", "+0.5 dB", "-1.5 dB"), ("xlsx", "de-DE", "+0,5 dB", "-1,5 dB")):
            with self.subTest(kind, locale=locale):
                self.open(kind, locale)
                cell = BOOK.comparison.ref(layout.FIRST + 2, FIRST_FIGURE)
                self.assertEqual(gain, self.book.cell(cell).String)
                self.enter(self.part("coaxial 16", "level_db_spl"), 88.5)
                self.assertEqual(loss, self.book.cell(cell).String)
                self.enter(self.part("coaxial 16", "level_db_spl"), 90)
                self.assertEqual(loss.replace("-1", "0").replace("5", "0"), self.book.cell(cell).String)

    def test_pages(self):
        for kind in ("ods", "xlsx"):
            with self.subTest(kind):
                self.open(kind, "en-US")
                self.book.print(FOLDER / "pages.pdf")
                # Two of Channels, Results and Comparison; one of Vehicle, Parts, Totals and Calls.
                self.assertEqual(10, len(re.findall(rb"/Type\s*/Page\b", (FOLDER / "pages.pdf").read_bytes())))

    def test_choices_and_explanations_come_from_the_contract(self):
        for kind in ("ods", "xlsx"):
            with self.subTest(kind):
                self.open(kind, "en-US")
                zone = self.book.cell(BOOK.of_channel(0, "zone")).Validation
                zones = CONTRACT.choices("driver-comparison", "positions.0.zone")
                self.assertEqual(zones, zone.getFormula1().replace('"', "").split(";"))
                self.assertEqual(CONTRACT.help("driver-comparison", "positions.0.zone"), zone.InputMessage)
                power = self.book.cell(self.part("coaxial 16", "continuous_power_w")).Validation
                self.assertIn("From 0.1 to 20000", power.InputMessage)
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
                self.assertEqual(["Vehicle", "Channels", "Parts", "Results", "Comparison", "Totals", "Calls"], shown)
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


class Files(unittest.TestCase):
    def formulas(self):
        with zipfile.ZipFile(FOLDER / "quoting.xlsx") as file:
            for name in file.namelist():
                if name.startswith("xl/worksheets/sheet"):
                    for formula in ElementTree.fromstring(file.read(name)).iter("{http://schemas.openxmlformats.org/spreadsheetml/2006/main}f"):
                        yield formula.text

    def test_formulas_keep_to_the_limits_of_the_other_spreadsheet(self):
        formulas = list(self.formulas())
        self.assertGreater(len(formulas), 1000)
        self.assertLessEqual(max(map(len, formulas)), 8192)
        names = set()
        for formula in formulas:
            texts = re.findall(r'"((?:[^"]|"")*)"', formula)
            self.assertTrue(all(len(text) <= 255 for text in texts), formula)
            names |= set(re.findall(r"([A-Za-z_.]*[A-Z0-9]+)\(", re.sub(r'"(?:[^"]|"")*"', "", formula)))
        self.assertEqual({"_xlfn.WEBSERVICE", "_xlfn.NUMBERVALUE", "_xlfn.ENCODEURL", "AND", "CHAR", "COUNTA", "COUNTIF", "FIND", "IF",
                          "IFERROR", "INDEX", "ISNUMBER", "LEFT", "LEN", "MATCH", "MID", "NOT", "OR", "REPT", "RIGHT", "SQRT", "SUBSTITUTE",
                          "SUM", "SUMPRODUCT", "TRIM"}, names)

    def test_parts_are_well_formed(self):
        for kind in ("ods", "xlsx"):
            with zipfile.ZipFile(FOLDER / f"quoting.{kind}") as file:
                for name in file.namelist():
                    if name.endswith((".xml", ".rels")):
                        ElementTree.fromstring(file.read(name))
        with zipfile.ZipFile(FOLDER / "quoting.ods") as file:
            self.assertEqual(("mimetype", zipfile.ZIP_STORED), (file.infolist()[0].filename, file.infolist()[0].compress_type))

    def test_two_builds_are_the_same_questions(self):
        again = build(FOLDER / "again", CONTRACT, SERVICE)
        self.assertEqual({k: c.value for k, c in BOOK.calls.cells.items()}, {k: c.value for k, c in again.calls.cells.items()})


class FollowingTheContract(unittest.TestCase):
    def changed(self):
        contract = Contract.__new__(Contract)
        contract.document = copy.deepcopy(CONTRACT.document)
        return contract

    def refused(self, contract, message):
        with tempfile.TemporaryDirectory() as folder, self.assertRaisesRegex(UnknownName, message):
            build(Path(folder), contract)

    def test_a_renamed_parameter_ends_the_build(self):
        contract = self.changed()
        contract.parameter("rail-match", "ratings.basis")["name"] = "ratings.kind"
        self.refused(contract, "rail-match has no parameter ratings.basis")

    def test_a_renamed_figure_ends_the_build(self):
        contract = self.changed()
        properties = contract.document["components"]["schemas"]["SoundLevelResult"]["properties"]
        properties["sound_level_db_spl"] = properties.pop("level_db_spl")
        self.refused(contract, "the result of sound-level has no level_db_spl")

    def test_a_figure_that_a_search_could_mistake_ends_the_build(self):
        contract = self.changed()
        properties = contract.document["components"]["schemas"]["WiringLoadResultCoilShare"]["properties"]
        properties["load_with_cable_ohm"] = {"type": "number"}
        self.refused(contract, "load_with_cable_ohm stands at several places of wiring-load")

    def test_a_renamed_list_ends_the_build(self):
        contract = self.changed()
        properties = contract.document["components"]["schemas"]["SoundLevelResult"]["properties"]
        properties["bounds"] = properties.pop("limits")
        self.refused(contract, "the result of sound-level has no limits")

    def test_a_moved_address_ends_the_build(self):
        contract = self.changed()
        del contract.document["paths"]["/health/ready"]
        self.refused(contract, "the contract has no GET /health/ready")

    def test_a_value_that_is_no_longer_allowed_ends_the_build(self):
        contract = self.changed()
        contract.parameter("sound-level", "addition")["schema"]["enum"] = ["in_phase", "apart"]
        self.refused(contract, "addition of sound-level cannot be coherent")


if __name__ == "__main__":
    unittest.main(verbosity=2)
