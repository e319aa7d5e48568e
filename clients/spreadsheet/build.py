#!/usr/bin/python3
"""build.py [DIRECTORY]: builds the quoting workbook, quoting.ods and quoting.xlsx, from the contract."""
import json
import sys
from pathlib import Path

import ods
import xlsx
from contract import Contract
from quoting import Workbook

HERE = Path(__file__).resolve().parent
AUTHOR = "Footwell"


def build(directory, contract=None):
    demo = json.loads((HERE / "demo.json").read_text(encoding="utf-8"))
    workbook = Workbook(contract or Contract(), demo)
    sheets = workbook.build()
    directory.mkdir(parents=True, exist_ok=True)
    ods.write(sheets, directory / "quoting.ods", AUTHOR)
    xlsx.write(sheets, directory / "quoting.xlsx", AUTHOR)
    return workbook


if __name__ == "__main__":
    build(Path(sys.argv[1]) if len(sys.argv) > 1 else HERE / "target")
