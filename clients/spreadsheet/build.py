#!/usr/bin/python3
"""Builds the quoting workbook, quoting.ods and quoting.xlsx, from the contract."""
import argparse
import csv
import json
from pathlib import Path

import ods
import xlsx
from contract import Contract
from quoting import workbook
from units import INCH, METRIC, Units
from words import ENGLISH, Words, languages

HERE = Path(__file__).resolve().parent
AUTHOR = "Footwell"
ADDRESS = "http://localhost:8080"


def build(directory, contract=None, address=ADDRESS, packages=HERE / "demo-packages.csv", language=ENGLISH, units=METRIC):
    demo = json.loads((HERE / "demo.json").read_text(encoding="utf-8"))
    with open(packages, encoding="utf-8", newline="") as table:
        words = Words(language)
        book = workbook(contract or Contract(), words.example(demo), address, list(csv.reader(table)), words, Units(units))
    book.directory = directory
    directory.mkdir(parents=True, exist_ok=True)
    ods.write(book.sheets, directory / "quoting.ods", AUTHOR)
    xlsx.write(book.sheets, directory / "quoting.xlsx", AUTHOR)
    return book


if __name__ == "__main__":
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("directory", nargs="?", type=Path, default=HERE / "target", help="where to write them")
    options.add_argument("--address", default=ADDRESS, help="of the service; may be changed in the workbook")
    options.add_argument("--packages", type=Path, default=HERE / "demo-packages.csv", help="table of the packages found, as package-options answers it with format=packages_csv")
    options.add_argument("--lang", default=ENGLISH, choices=languages(), help="language of the workbook and of what the service says in it")
    options.add_argument("--units", default=METRIC, choices=[METRIC, INCH], help="in which a shop measures; with inch it enters and reads feet, inches and AWG")
    chosen = options.parse_args()
    build(chosen.directory, address=chosen.address, packages=chosen.packages, language=chosen.lang, units=chosen.units)
