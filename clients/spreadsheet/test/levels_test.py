"""The sheet Levels against the service asked by JSON, and against the law of the decibel."""
import math

import layout
from expected import DEMO, Expected, post
from opened import BOOK, Opened


class Levels(Opened):
    def level(self, i, column):
        return self.book.read(BOOK.levels.ref(layout.FIRST + i, column))

    def test_the_gain_leads_to_the_level_wished_for(self):
        expected = Expected()
        for kind, locale in (("ods", "en-US"), ("xlsx", "de-DE")):
            with self.subTest(kind):
                self.open(kind, locale)
                for i, wished in enumerate(DEMO["levels"]):
                    question = expected.questions[i]["sound-level"]
                    power = self.level(i, 5)
                    there = post("sound-level", {**question, "power_w": power})["result"]["level_db_spl"]
                    self.assertAlmostEqual(wished, there, delta=1e-6)
                    change = 10 * math.log10(power / question["power_w"])
                    self.same(change, self.level(i, 6), f"{i} gain")
                    answers = expected.channels[i]
                    full = math.sqrt(answers["rail-match"]["result"]["clean_power_w"] * answers["wiring-load"]["result"]["load_with_cable_ohm"])
                    self.same(full * 10 ** (change / 20), self.level(i, 7), f"{i} voltage")
                self.assertEqual([], self.book.errors())

    def test_what_the_amplifier_does_not_give_is_a_stop(self):
        self.open("ods", "en-US")
        self.enter(BOOK.wished_level(0), 118)
        self.assertEqual("stop", self.level(0, 2))
        self.assertGreater(self.level(0, 6), 0)
        self.assertTrue(self.level(0, 8).startswith("The amplifier does not give that cleanly."))

    def test_a_level_out_of_reach_leaves_power_and_gain_empty_and_says_why(self):
        self.open("ods", "en-US")
        self.enter(BOOK.wished_level(0), 160)
        self.assertEqual(["stop", None, None, None], [self.level(0, column) for column in (2, 5, 6, 7)])
        self.assertIn("does not get to 160", self.level(0, 8))
        self.enter(BOOK.wished_level(0), "")
        self.assertEqual([None] * 5, [self.level(0, column) for column in (2, 5, 6, 7, 8)])

    def test_a_fault_names_the_cell(self):
        self.open("ods", "en-US")
        self.enter(BOOK.wished_level(0), "loud")
        self.assertEqual("fault", self.level(0, 2))
        self.assertIn("Levels, row 6, column C (Level wished for) must be a number", self.level(0, 8))
        self.enter(BOOK.wished_level(0), 95)
        self.enter(self.part("coaxial 16", "level_db_spl"), 900)
        self.assertEqual("fault", self.level(0, 2))
        self.assertIn("Parts, row", self.level(0, 8))
