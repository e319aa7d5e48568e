"""The files of the workbooks, and what the build does when the contract changes."""
import copy
import re
import tempfile
import unittest
import zipfile
from pathlib import Path
from xml.etree import ElementTree

from openpyxl import load_workbook

from build import build
from contract import Contract, UnknownName
from expected import SERVICE
from opened import BOOK, CONTRACT, FOLDER
from words import ENGLISH, Words, languages


def deepest(formula):
    """How many functions stand within one another."""
    depth = most = 0
    for sign in re.sub(r'"(?:[^"]|"")*"', "", formula):
        depth += (sign == "(") - (sign == ")")
        most = max(most, depth)
    return most


class Files(unittest.TestCase):
    def formulas(self, folder=FOLDER):
        with zipfile.ZipFile(folder / "quoting.xlsx") as file:
            for name in file.namelist():
                if name.startswith("xl/worksheets/sheet"):
                    for formula in ElementTree.fromstring(file.read(name)).iter("{http://schemas.openxmlformats.org/spreadsheetml/2006/main}f"):
                        yield formula.text

    def test_formulas_keep_to_the_limits_of_the_other_spreadsheet(self):
        formulas = [*self.formulas(), *self.formulas(FOLDER / "de")]
        self.assertGreater(len(formulas), 1000)
        self.assertLessEqual(max(map(len, formulas)), 8192)
        self.assertLessEqual(max(map(deepest, formulas)), 64)
        names = set()
        for formula in formulas:
            texts = re.findall(r'"((?:[^"]|"")*)"', formula)
            self.assertTrue(all(len(text) <= 255 for text in texts), formula)
            names |= set(re.findall(r"([A-Za-z_.]*[A-Z0-9]+)\(", re.sub(r'"(?:[^"]|"")*"', "", formula)))
        self.assertEqual({"_xlfn.WEBSERVICE", "_xlfn.NUMBERVALUE", "_xlfn.ENCODEURL", "ABS", "AND", "CHAR", "COUNT", "COUNTA", "COUNTIF", "FIND", "FIXED", "IF",
                          "IFERROR", "INDEX", "ISERROR", "ISNUMBER", "ISTEXT", "LEFT", "LEN", "LOG10", "MATCH", "MID", "MIN", "N", "NOT", "OR", "REPT", "RIGHT", "ROUND", "SQRT", "SUBSTITUTE",
                          "SUM", "SUMIF", "SUMPRODUCT", "TRIM"}, names)

    def test_lists_names_and_number_formats_keep_to_the_limits_of_the_other_spreadsheet(self):
        for folder in (FOLDER, FOLDER / "de"):
            book = load_workbook(folder / "quoting.xlsx")
            words = set(Words(folder.name if folder.name in languages() else ENGLISH).codes.values())
            for page in book.worksheets:
                self.assertRegex(page.title, r"^\w{1,31}$")
                for rule in page.data_validations.dataValidation:
                    source = rule.formula1 or ""
                    self.assertTrue(len(source) <= 255 and len(rule.prompt or "") <= 255 and len(rule.error or "") <= 225, source)
                    # A list is cut at its commas, also where a word has one.
                    self.assertTrue(set(source.strip('"').split(",")) <= words or not source.startswith('"'), source)
                for row in page.iter_rows():
                    for cell in row:
                        self.assertLessEqual(len(cell.number_format.split(";")), 4)
                        self.assertLessEqual(len(str(cell.value)), 8193 if cell.data_type == "f" else 32767)

    def test_parts_are_well_formed(self):
        for kind, folder in (("ods", FOLDER), ("xlsx", FOLDER), ("ods", FOLDER / "de"), ("xlsx", FOLDER / "de")):
            with zipfile.ZipFile(folder / f"quoting.{kind}") as file:
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
        contract.parameter("rail-match", "amplifier.ratings.basis")["name"] = "amplifier.ratings.kind"
        self.refused(contract, "rail-match has no parameter amplifier.ratings.basis")

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
