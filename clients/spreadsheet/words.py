"""The words of the workbook in one language. English stands in the code; each other language is one file in words/."""
import json
import re
from pathlib import Path

from formulas import q

FOLDER = Path(__file__).resolve().parent / "words"
ENGLISH = "en"


class UnknownWord(Exception):
    """The workbook says something that the file of its language does not have."""


def languages():
    return sorted(file.stem for file in FOLDER.glob("*.json"))


class Words:
    def __init__(self, language=ENGLISH):
        self.language = language
        file = json.loads((FOLDER / f"{language}.json").read_text(encoding="utf-8"))
        self.demo = file.get("demo", {})  # names of the example
        self.texts, self.codes, self.faults = file.get("texts", {}), file["codes"], file["faults"]
        self.of_contract = language == ENGLISH  # whose explanations can be shown
        self.asked = set()  # texts

    def text(self, english):
        if not re.search("[A-Za-z]", english):
            return english
        self.asked.add(english)
        if self.language == ENGLISH:
            return english
        if english not in self.texts:
            raise UnknownWord(f"{self.language}.json has no text for: {english}")
        return self.texts[english]

    def example(self, value):
        """The example with its names in this language."""
        if isinstance(value, dict):
            return {key: self.example(inner) for key, inner in value.items()}
        if isinstance(value, list):
            return [self.example(inner) for inner in value]
        return self.demo.get(value, value) if isinstance(value, str) else value

    def formula(self, english, **parts):
        """A sentence as a formula; {names} in it stand for formulas."""
        pieces = re.split(r"\{(\w+)\}", self.text(english))
        return "&".join(parts[piece] if n % 2 else q(piece) for n, piece in enumerate(pieces) if piece) or '""'

    def code(self, code):
        """A word of the service, such as a verdict or a choice, as a person reads and enters it."""
        if code not in self.codes:
            raise UnknownWord(f"{self.language}.json has no word for the code {code}")
        return self.codes[code]
