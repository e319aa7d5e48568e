"""Every word of the workbook in every language, and the German workbook in LibreOffice."""
import json
import re
import unittest

import layout
from build import build
from expected import DEMO
from opened import BOOK, CONTRACT, FOLDER, GERMAN, Opened
from words import ENGLISH, FOLDER as FILES, UnknownWord, Words, languages

PLACES = re.compile(r"\{\w+\}")


def file_of(language):
    return json.loads((FILES / f"{language}.json").read_text(encoding="utf-8"))


class Files(unittest.TestCase):
    def test_no_text_is_missing_or_left_over(self):
        self.assertIn("de", languages())
        for language in set(languages()) - {ENGLISH}:
            with self.subTest(language):
                texts = file_of(language)["texts"]
                self.assertEqual(BOOK.words.asked, set(texts))
                for english, text in texts.items():
                    self.assertEqual(sorted(PLACES.findall(english)), sorted(PLACES.findall(text)), english)

    def test_every_code_has_a_word_of_its_own(self):
        self.assertTrue(languages())
        for language in languages():
            with self.subTest(language):
                codes = file_of(language)["codes"]
                self.assertEqual(set(BOOK.words.codes), set(codes))
                self.assertEqual(len(codes), len({word.lower() for word in codes.values()}))

    def test_names_of_the_example_are_in_it(self):
        known = json.dumps(DEMO, ensure_ascii=False)
        for language in languages():
            for name in file_of(language).get("demo", {}):
                self.assertIn(json.dumps(name, ensure_ascii=False), known)

    def test_an_unknown_text_ends_the_build(self):
        with self.assertRaisesRegex(UnknownWord, "de.json has no text for: Good evening"):
            Words("de").text("Good evening")
        with self.assertRaisesRegex(UnknownWord, "de.json has no word for the code loud"):
            Words("de").code("loud")


class German(Opened):
    def shown(self):
        """All texts of the sheets that are shown, but for what the service is asked and answers."""
        for sheet in self.of.sheets:
            if not sheet.hidden and sheet not in (self.of.calls, self.of.table):
                for (row, column), value in self.book.values(sheet.name).items():
                    yield sheet.ref(row, column), str(value)

    def test_no_english_is_left(self):
        texts = {english for english, german in file_of("de")["texts"].items() if english != german}
        english = {text for text in texts if not PLACES.search(text)}
        words = {word for code, word in file_of(ENGLISH)["codes"].items() if word != GERMAN.words.codes[code]}
        for kind in ("ods", "xlsx"):
            with self.subTest(kind):
                self.open(kind, "de-DE", GERMAN)
                shown = list(self.shown())
                self.assertLess(500, sum(bool(text) for _, text in shown))
                for ref, text in shown:
                    self.assertNotIn(text, english | words, ref)
                    self.assertNotRegex(text, r"\b([Tt]he|and|with|must|which|weighs|becomes)\b", ref)

    def test_findings_come_in_german_and_the_figures_are_the_same(self):
        self.open("ods", "de-DE", GERMAN)
        self.assertTrue(all("&lang=de" in address for address in self.calls(5)[:-1] if address))
        told = " ".join(text for _, _, text in self.told())
        self.assertIn("verlangt dieser Pegel von den Membranen", told)
        self.assertEqual({"Warnung"}, {level for _, level, _ in self.told()})
        self.assertEqual("Warnung", self.book.read(GERMAN.verdict))
        english = {}
        for book, locale in ((BOOK, "en-US"), (GERMAN, "de-DE")):
            self.open("xlsx", locale, book)
            english[book] = [self.book.read(book.figure(i, key)) for i in range(len(DEMO["channels"])) for key, *_, form, _ in layout.RESULTS if form]
        self.assertEqual(english[BOOK], english[GERMAN])

    def test_an_english_workbook_asks_for_english_in_any_locale(self):
        self.open("ods", "de-DE")
        self.assertTrue(all("&lang=en" in address for address in self.calls(5)[:-1] if address))
        self.assertIn("The vehicle becomes", " ".join(text for _, _, text in self.told("Comparison")))

    def test_faults_name_the_cell_in_german(self):
        for kind, locale in (("ods", "de-DE"), ("xlsx", "en-US")):
            with self.subTest(kind):
                self.open(kind, locale, GERMAN)
                self.book.write(self.part("coaxial 16", "rated_ohm"), 0)
                self.book.write(self.part("coaxial 16", "level_db_spl"), "")
                self.book.write(GERMAN.of_channel(4, "network"), "")
                self.book.write(GERMAN.of_channel(2, "bridged"), "vielleicht")
                self.enter(GERMAN.of_channel(3, "high_pass_hz"), -5)
                told = [text for _, level, text in self.told() if level == "Fehler"]
                for place in ("Teile, Zeile 8, Spalte B (Impedanz): erlaubt ist eine Zahl", "Teile, Zeile 8, Spalte C (Kennschallpegel) fehlt.",
                              "Kanäle, Zeile 10, Spalte E (Verschaltung der Spulen) fehlt.", "Kanäle, Zeile 8, Spalte J (Gebrückt): erwartet wird ja oder nein.",
                              "Kanäle, Zeile 9, Spalte Q (Hochpass): erlaubt ist eine Zahl"):
                    self.assertTrue(any(text.startswith(place) for text in told), (place, told))
                self.assertFalse([text for text in told if "_" in text], told)

    def test_choices_are_words_and_the_service_gets_its_codes(self):
        self.open("xlsx", "de-DE", GERMAN)
        zone = self.book.cell(GERMAN.of_channel(0, "zone"))
        self.assertEqual(["vorn", "Mitte", "hinten"], zone.Validation.getFormula1().replace('"', "").split(";"))
        self.assertEqual("Bitte eines davon eingeben: vorn, Mitte, hinten.", zone.Validation.ErrorMessage)
        basis = self.book.cell(self.part("coaxial 16", "basis")).Validation  # a comma would cut a list in the cell
        self.assertRegex(basis.getFormula1(), r"^\$?Codes\.\$B\$\d+:\$B\$\d+$")
        self.assertTrue(basis.ShowErrorMessage)
        self.assertIn("positions.0.zone=front", self.book.read(GERMAN.calls.ref(GERMAN.call_row(0, "driver-comparison"), 5)))
        bridged, cell = self.result(4, "clean_power_w"), GERMAN.of_channel(4, "bridged")
        self.enter(cell, "nein")
        self.assertLess(self.result(4, "clean_power_w"), bridged)

    def test_levels_and_packages_read_german(self):
        self.open("ods", "de-DE", GERMAN)
        self.enter(GERMAN.wished_level(0), 118)
        self.enter(GERMAN.wished_level(1), 160)
        self.assertEqual("Halt", self.book.read(GERMAN.levels.ref(layout.FIRST, 2)))
        self.assertTrue(self.book.read(GERMAN.levels.ref(layout.FIRST, 8)).startswith("Das gibt der Verstärker nicht sauber ab."))
        self.assertRegex(self.book.read(GERMAN.levels.ref(layout.FIRST + 1, 8)), "160")
        self.assertEqual("2 von 5 erfüllen die Wünsche", self.book.read(GERMAN.packages.ref(3, 8)))
        self.assertEqual(["nein", "ok", "nein", "ok", "nein"], [self.book.read(GERMAN.packages.ref(layout.FIRST + n, 1)) for n in range(5)])
        self.assertEqual("Hinweis", self.book.read(GERMAN.packages.ref(layout.FIRST, 7)))


class Third(unittest.TestCase):
    def test_a_third_language_is_one_file(self):
        added = FILES / "xx.json"
        try:
            added.write_text(json.dumps({**file_of("de"), "texts": {text: f"x {text}" if text != "YYYY-MM-DD" else text for text in file_of("de")["texts"]}}), encoding="utf-8")
            self.assertIn("xx", languages())
            # Names of sheets are single words in any language.
            texts = json.loads(added.read_text(encoding="utf-8"))
            texts["texts"] |= {sheet.name: f"X{sheet.name}" for sheet in BOOK.sheets if sheet.name in texts["texts"]}
            added.write_text(json.dumps(texts), encoding="utf-8")
            book = build(FOLDER / "xx", CONTRACT, language="xx")
            self.assertEqual("XQuote", book.quote.name)
        finally:
            added.unlink(missing_ok=True)
