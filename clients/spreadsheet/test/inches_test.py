"""The workbook of a shop that measures in feet and inches, held against the service asked in metres."""
import copy
import math
import re
from decimal import Decimal

import layout
from comparison import FIRST_FIGURE
from entries import CHANNEL, COMPARISON, DRIVER, VEHICLE
from expected import DEMO, Expected, post
from opened import INCH, Opened

# Exactly, by NIST Special Publication 811, appendix B: the inch is 25.4 mm.
IN_ONE = {"m": 0.3048, "mm": 25.4, "cm2": 6.4516, "cm3": 16.387064}
METRIC_LENGTH = re.compile(r"\d (mm|cm|m|cm²|cm³|m³|litres?)(?![\w²³/·])")
AT_ONE_METRE = re.compile(r"at 1 m\b")  # how levels are stated


def factor(field):
    return IN_ONE.get(field.rpartition("_")[2], 1)


def in_metres(demo):
    """The example as the cells of the workbook have it, with three decimals of a foot or an inch."""
    demo = copy.deepcopy(demo)
    for columns, rows in ((VEHICLE, [demo["vehicle"]]), (DRIVER, demo["drivers"]), (CHANNEL, demo["channels"])):
        for key, *entered in columns:
            field = entered[2] if len(entered) > 2 else ""
            one = factor(field or "")
            for row in rows:
                if one != 1 and row.get(key) is not None:
                    row[key] = round(row[key] / one, 3) * one
    return demo


class Inches(Opened):
    def test_open_document(self):
        self.check("ods", "en-US")

    def test_open_xml_with_decimal_comma(self):
        self.check("xlsx", "de-DE")

    def check(self, kind, locale):
        self.open(kind, locale, INCH)
        self.assertEqual([], self.book.errors())
        expected = Expected(in_metres(DEMO))
        lengths = self.check_results(expected) + self.check_comparison(expected)
        self.assertGreater(lengths, 20)

    def check_results(self, expected):
        lengths = 0
        for i, answers in enumerate(expected.channels):
            for key, _, calculation, part, *_ in layout.RESULTS:
                if not calculation:
                    continue
                if calculation == "seat-delays":
                    wanted = expected.delays["result"]["channels"][i][key]
                else:
                    result = answers[calculation]["result"]
                    wanted = (result.get(part, {}) if part else result).get(key)
                lengths += self.agrees(wanted, key, self.result(i, key), f"{i} {key}")
        return lengths

    def check_comparison(self, expected):
        lengths = 0
        for i, answers in enumerate(expected.channels):
            position = answers[COMPARISON]["result"]["positions"][0]
            for n, group in enumerate(("before", "after", "change")):
                for column, (_, side, change, *_) in enumerate(layout.COMPARED_FIGURES, FIRST_FIGURE):
                    name = change if group == "change" else side
                    found = self.book.read(INCH.comparison.ref(layout.FIRST + 3 * i + n, column))
                    lengths += self.agrees(position.get(group, {}).get(name), name, found, f"{i} {group} {name}")
        return lengths

    def agrees(self, wanted, field, found, what):
        """The same figure; whether it is one that is converted."""
        one = factor(field)
        self.same(wanted / one if one != 1 and wanted is not None else INCH.words.codes.get(wanted, wanted), found, what)
        return one != 1 and wanted is not None

    def test_units_stand_at_the_figures(self):
        self.open("ods", "en-US", INCH)
        below = layout.FIRST - 1
        for sheet, column, wanted in [
                (INCH.channels, INCH.channel_column["x_m"], "ft"), (INCH.channels, INCH.channel_column["cable_m"], "ft"),
                (INCH.channels, INCH.channel_column["cable_mm2"], "mm², AWG"), (INCH.parts, INCH.driver_column["sd_cm2"], "in²"),
                (INCH.parts, INCH.driver_column["xmax_mm"], "in"), (INCH.parts, INCH.driver_column["mass_g"], "g"),
                (INCH.results, INCH.result_column["distance_m"], "ft"), (INCH.results, INCH.result_column["delay_ms"], "ms")]:
            self.assertEqual(wanted, self.book.read(sheet.ref(below, column)))
        figures = [side for _, side, *_ in layout.COMPARED_FIGURES]
        for side, wanted in (("cone_area_cm2", "in²"), ("displacement_cm3", "in³")):
            self.assertEqual(wanted, self.book.read(INCH.comparison.ref(below, FIRST_FIGURE + figures.index(side))))

    def test_sentences_are_in_them_too(self):
        self.open("ods", "en-US", INCH)
        asked = [address for address in self.calls(5) if address and "/v1/" in str(address)]
        self.assertGreater(len(asked), 10)
        self.assertEqual([], [address for address in asked if "&units=inch" not in address])
        for i in range(len(DEMO["channels"])):  # far from the seat, and long cables
            self.enter(INCH.of_channel(i, "cable_m"), 90)
        self.enter(INCH.cell["cabin_length_m"], 8)
        self.book.recalculate()
        told = "\n".join(str(line) for sheet in ("Results", "Comparison") for line in self.told(sheet)) + "\n".join(map(str, self.calls(9)))
        for length in ("ft only", "in one way"):
            self.assertRegex(told, rf"\d {length}")
        self.assertNotRegex(AT_ONE_METRE.sub("", told), METRIC_LENGTH)

    def test_bounds_are_in_them_and_allowed_themselves(self):
        self.open("ods", "en-US", INCH)
        for cell, field in ((INCH.of_channel(0, "cable_m"), "cable_m"), (INCH.cell["cabin_length_m"], "cabin_length_m"),
                            (self.part("coaxial 16", "sd_cm2"), "sd_cm2"), (self.part("coaxial 16", "xmax_mm"), "xmax_mm")):
            help = self.book.cell(cell).Validation.InputMessage
            least, most, unit = re.search(r"From ([\d.]+) to ([\d.]+) (in²|in|ft)\.", help).groups()
            self.assertNotRegex(help, r", (mm|cm|m|cm²|cm³)[;,.]")
            before = self.book.read(cell)
            for bound, outward in ((least, -1), (most, 1)):
                step = Decimal(1).scaleb(Decimal(bound).as_tuple().exponent)
                self.enter(cell, float(bound))
                self.assertEqual([], self.out_of_bounds(most), (field, bound))
                self.enter(cell, float(Decimal(bound) + outward * step))
                self.assertTrue(self.out_of_bounds(f"{least} {unit} to {most} {unit}"), (field, bound, self.says(0)))
            self.enter(cell, before)

    def out_of_bounds(self, text):
        return [line for line in self.says(0) if "must be a number" in line and text in line]

    def test_a_cable_may_be_a_gauge(self):
        self.open("ods", "en-US", INCH)
        remark = INCH.channels.ref(layout.FIRST, len(CHANNEL) + 1)
        cable, channel = INCH.of_channel(0, "cable_mm2"), in_metres(DEMO)["channels"][0]
        amplifier = next(one for one in DEMO["amplifiers"] if one["name"] == channel["amplifier"])
        self.enter(cable, "12 AWG")
        self.book.recalculate()
        across = 0.127 * 92 ** ((36 - 12) / 39)  # ASTM B258
        answer = post("wiring-load", {
            "network": channel["network"], "amplifier": {key: amplifier[key] for key in ("minimum_ohm", "minimum_bridged_ohm", "output_ohm")},
            "bridged": False, "cable": {"one_way_m": channel["cable_m"], "area_mm2": math.pi / 4 * across ** 2}})
        self.same(answer["result"]["load_with_cable_ohm"], self.result(0, "load_with_cable_ohm"), "load with cable")
        self.assertEqual("", self.book.read(remark) or "")
        self.enter(cable, "thick")
        self.book.recalculate()
        self.assertEqual("Cable, one conductor", self.book.read(remark))
