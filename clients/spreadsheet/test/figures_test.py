"""Holds every figure of the workbooks against the one the service gives."""
import sys
import urllib.error
import urllib.request

import layout
from expected import DEMO, Expected, post
from opened import BOOK, Opened
from plan import plan

NAMES = [f"{place} {n} " + "ä" * (59 - len(f"{place} {n}")) for n, place in enumerate(
    ("front left door", "front right door", "centre", "rear left", "rear right", "side left", "side right", "bass"))]
OF_THE_VEHICLE = ("heavy-part", "doors-heavier", "vehicle-heavier")


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

    def test_the_review_of_the_whole_plan_agrees(self):
        self.open("ods", "en-US")
        reviewed = post("plan-review", plan(DEMO))["result"]["channels"]
        self.assertEqual(len(DEMO["channels"]), len(reviewed))
        for i, channel in enumerate(reviewed):
            for name in ("load_ohm", "clean_power_w", "limiter_rms_v", "limiter_peak_v"):
                self.same(channel[name], self.result(i, name), f"{i} {name}")

    def check_totals(self, expected):
        totals = [answers["driver-comparison"]["result"]["totals"] for answers in expected.channels]
        price = sum(t["price"] for t in totals) + sum(a["price"] for a in DEMO["amplifiers"]) + sum(i["quantity"] * i["price"] for i in DEMO["items"])
        mass = sum(t["mass_change_g"] for t in totals) + sum(a["mass_g"] for a in DEMO["amplifiers"]) + sum(i["quantity"] * i["mass_g"] for i in DEMO["items"])
        labour = DEMO["labour"]
        total = (price + labour["hours"] * labour["rate"]) * (1 + labour["tax_percent"] / 100)
        self.same(total, self.book.read(BOOK.total), "total")
        row = int(BOOK.total.rpartition("$")[2])
        self.same(mass, self.book.read(BOOK.totals.ref(row - 5, 6)), "mass")

    def check_sentences(self, expected):
        cautions = self.book.read(BOOK.cautions_shown)
        everything = [answers[c] for answers in expected.channels for c in layout.CALCULATIONS] + [expected.delays, expected.masses]
        wanted = {line for answer in everything for line in answer["safety"]}
        self.assertGreater(len(wanted), 3)
        self.assertEqual(wanted, {line.removeprefix("• ") for line in cautions.strip().split("\n")})
        for i, answers in enumerate(expected.channels):
            findings = [f for c in layout.CALCULATIONS for f in answers[c]["findings"] if f["code"] not in OF_THE_VEHICLE]
            self.assertEqual(sentences([f for level in ("stop", "warning") for f in findings if f["level"] == level]), self.says(i))
            self.assertEqual(sum(finding["level"] == "note" for finding in findings), self.result(i, "notes"))
            known = [f for f in answers["driver-comparison"]["findings"] if f["code"] not in OF_THE_VEHICLE]
            self.assertEqual(sentences(known), self.says(i, "Comparison"))

    def test_what_is_heavy_is_told_of_the_whole_vehicle(self):
        self.open("xlsx", "en-US")
        findings = [f for f in Expected().masses["findings"] if f["code"] in OF_THE_VEHICLE]
        told = [f"{level}: {text}" for channel, level, text in self.told("Comparison") if channel == "vehicle"]
        self.assertEqual(sentences(findings), told)
        for words in ("The new part of bass weighs 5.4 kg.", "bass block weighs 3.6 kg.", "box for two subwoofers weighs 11.5 kg.",
                      "The doors together become 2 kg heavier.", "The vehicle becomes 33.26 kg heavier."):
            self.assertTrue(any(words in line for line in told), (words, told))
        warnings = [f"{level}: {text}" for channel, level, text in self.told() if channel == "vehicle"]
        self.assertEqual([line for line in told if line.startswith("warning")], warnings)
        self.enter(self.part("coaxial 16", "mass_g"), 1900)
        self.assertIn("note: The doors together become 3.3 kg heavier.", " ".join(line[1] + ": " + line[2] for line in self.told("Comparison")))
        for i in range(len(DEMO["channels"])):
            self.assertFalse([line for line in self.says(i, "Comparison") + self.says(i) if "heavier" in line or "Fix it with bolts" in line])
        self.enter(BOOK.totals.ref(layout.FIRST + layout.CHANNELS + layout.AMPLIFIERS + 1, 4), 800)
        self.assertIn("4 × adapter ring weighs 3.2 kg.", " ".join(text for _, _, text in self.told()))

    def test_trims_which_need_the_whole_plan_are_not_told_of(self):
        self.open("ods", "en-US")
        self.assertNotIn("The trims follow", " ".join(map(str, self.calls(9))))
        self.assertEqual("ok", self.book.read(BOOK.calls.ref(BOOK.delays_row, 3)))  # nothing else is to be said of the delays


def sentences(findings):
    """What to do stands behind what is found."""
    return [" ".join([f"{finding['level']}: {finding['text']}", *filter(None, [finding.get("advice")])]) for finding in findings]


class Addresses(Opened):
    def test_every_question_is_short_enough_and_its_answer_may_be_kept(self):
        self.open("ods", "en-US")
        addresses = [address for address in self.calls(5) if address]
        self.assertEqual(len(DEMO["channels"]) * 5 + 3, len(addresses))
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

    def test_eight_channels_with_two_filters_each_and_the_longest_names_fit(self):
        for kind, locale in (("ods", "de-DE"), ("xlsx", "en-US")):
            with self.subTest(kind):
                self.open(kind, locale)
                channels = [{**DEMO["channels"][n % 2], "name": name, "high_pass_hz": 80 + 10.5 * n, "low_pass_hz": 18500.5 - n, "lower": NAMES[7],
                             "x_m": -1.123 + n / 7, "y_m": -0.987 + n / 9} for n, name in enumerate(NAMES[:7])]
                # So far away and so high a corner that the service advises to invert the bass, by its name.
                channels.append({**DEMO["channels"][4], "name": NAMES[7], "high_pass_hz": 22.5, "low_pass_hz": 160, "x_m": 5, "y_m": -0.987})
                demo = {**DEMO, "channels": channels, "vehicle": {**DEMO["vehicle"], "seat": "seat of the driver, ü " + 38 * "x"}}
                self.book.write(BOOK.cell["seat"], demo["vehicle"]["seat"])
                for i, channel in enumerate(channels):
                    self.fill(i, channel)
                self.book.recalculate()
                lengths = [length for length in self.calls(4) if length]
                print(f"longest of {len(lengths)} addresses with eight channels: {max(lengths):.0f} characters", file=sys.stderr)
                self.assertLess(max(lengths), layout.LONGEST_URL)
                self.assertLess(max(len(answer) for answer in self.calls(6) if answer), 32767)
                expected = Expected(demo)
                self.check_results(expected, channels)
                for i, answers in enumerate(expected.channels):
                    self.assertNotIn("~", "".join(self.says(i)))
                wanted = sentences(f for f in expected.delays["findings"] if f["level"] == "warning")
                told = [f"{level}: {text}" for channel, level, text in self.told() if channel == "delays"]
                self.assertEqual([line[:len("warning: ") + layout.LONGEST_TOLD].rstrip() for line in wanted], told)
                self.assertTrue(any(NAMES[7] in line for line in wanted), wanted)
