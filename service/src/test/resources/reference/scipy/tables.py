"""Where the scripts of this folder write: the folder named first, or else the tables' own.

    python3 SCRIPT.py [FOLDER]
"""
import functools
import pathlib
import sys

FOLDER = pathlib.Path(sys.argv[1]) if len(sys.argv) > 1 else pathlib.Path(__file__).parent.parent


def table(name):
    """The table of that name, opened for writing."""
    return open(FOLDER / name, "w", encoding="utf-8")


def printer(name):
    """A print that writes into the table of that name."""
    return functools.partial(print, file=table(name))
