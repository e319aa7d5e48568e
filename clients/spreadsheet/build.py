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

HERE = Path(__file__).resolve().parent
AUTHOR = "Footwell"
ADDRESS = "http://localhost:8080"


def build(directory, contract=None, address=ADDRESS, packages=HERE / "demo-packages.csv"):
    demo = json.loads((HERE / "demo.json").read_text(encoding="utf-8"))
    with open(packages, encoding="utf-8", newline="") as table:
        book = workbook(contract or Contract(), demo, address, list(csv.reader(table)))
    directory.mkdir(parents=True, exist_ok=True)
    ods.write(book.sheets, directory / "quoting.ods", AUTHOR)
    xlsx.write(book.sheets, directory / "quoting.xlsx", AUTHOR)
    return book


if __name__ == "__main__":
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("directory", nargs="?", type=Path, default=HERE / "target", help="where to write them")
    options.add_argument("--address", default=ADDRESS, help="of the service; may be changed in the workbook")
    options.add_argument("--packages", type=Path, default=HERE / "demo-packages.csv", help="table of the packages found, as package-options answers it with format=packages_csv")
    chosen = options.parse_args()
    build(chosen.directory, address=chosen.address, packages=chosen.packages)
