"""Holds every figure of the workbooks against the one the service gives."""
import sys
import urllib.error
import urllib.request

import layout
from expected import DEMO, Expected, post
from opened import BOOK, Opened
from plan import plan


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
            for name in ("load_ohm", "clean_power_w", "headroom_db", "limiter_rms_v", "limiter_peak_v", "level_db_spl", "delay_ms", "trim_db"):
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
