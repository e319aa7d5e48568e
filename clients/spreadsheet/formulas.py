"""Formulas that put questions and take answers apart."""
import re

from contract import OPTIONS

LINE, TAB = "CHAR(10)", "CHAR(9)"
FINDING = '{"level":"'  # how a finding starts in an answer


def q(text):
    """A text as it stands in a formula."""
    return '"' + text.replace('"', '""') + '"'


class Query:
    """The formula of an address: every filled cell adds its parameter. Where it was entered is kept, for faults."""

    def __init__(self, book, calculation, asked=""):
        self.book, self.contract, self.calculation = book, book.contract, calculation
        self.asked = asked  # of the calculation as a whole, such as solve; its own request stands within that question then
        self.within = "request." if asked else ""
        self.parts, self.sent = [], set()
        self.entered = {}  # cell by parameter
        self.rows, self.columns = {}, {}  # of lists: places of the entries by their index, of the fields by their name
        self.names = {}  # cell by the short name that is sent instead of what stands in it

    def encoded(self, name, cell):
        kind = self.contract.parameter(self.calculation, name)["schema"].get("type")
        text = cell
        if kind == "boolean":
            text = self.book.coded(cell)
        elif self.contract.choices(self.calculation, name):
            text = self.book.coded(cell)
        elif kind in ("number", "integer"):
            # A number has no comma but the one that some languages write for the point.
            text = f'SUBSTITUTE({self.book.units.sent(name, cell)},",",".")'
        return f"ENCODEURL({text})"

    def value(self, name, cell):
        self.parts.append(f'IF({cell}="","","&{self.within}{name}="&{self.encoded(name, cell)})')
        self.sent.add(name)
        self.entered[self.within + name] = cell
        return self

    def question(self, **fields):
        """What is asked of the calculation as a whole: a cell with a number by its name, or a text."""
        for name, value in fields.items():
            name = name.rstrip("_")
            self.contract.parameter(f"{{calculation}}/{self.asked}", name)
            if "!" in value:
                self.parts.append(f'"&{name}="&ENCODEURL(SUBSTITUTE({value},",","."))')
                self.entered[name] = value
            else:
                self.parts.append(q(f"&{name}={value}"))
        return self

    def short(self, name, short, cell):
        """A short name instead of one that a person typed, which may be of any length."""
        self.fixed(name, short)
        self.names[short] = cell
        return self

    def fixed(self, name, value):
        self.contract.parameter(self.calculation, name)
        self.parts.append(q(f"&{name}={value}"))
        self.sent.add(name)
        return self

    def listed(self, name, texts):
        """A field of all entries of a list in one parameter; each text is a formula that gives nothing or ends with a comma."""
        self.contract.parameter(self.calculation, name)
        self.sent.add(re.sub(r"\*", "0", name))
        self.parts.append(self.book.listed(name, "&".join(texts)))
        return self

    def choice(self, name, value, when):
        self.sent.add(name)
        self.contract.choice(self.calculation, name, value)
        self.parts.append(f'IF({when},"&{self.within}{name}={value}","")')
        return self

    def group(self, condition, build):
        """Parameters that are sent together or not at all."""
        inner = build(Query(self.book, self.calculation, self.asked))
        self.sent |= inner.sent
        self.entered |= inner.entered
        self.parts.append(f'IF({condition},{"&".join(inner.parts)},"")')
        return self

    def formula(self, base, condition):
        missing = set(self.contract.required(self.calculation)) - self.sent - OPTIONS
        if missing:
            raise ValueError(f"{self.calculation} needs {', '.join(sorted(missing))}")
        address = "/".join(filter(None, ("/v1", self.calculation, self.asked)))
        start = f"{address}?format=json&errors=text&lang={self.book.words.language}{self.book.units.asked}"
        return f'IF({condition},{base}&"{start}"&{"&".join(self.parts)},"")'


# An answer is searched as text. A name that is searched for cannot be found in what a person typed: the quotes
# around it are written with a backslash there.

def number(answer, name):
    """The number of a name in the text of an answer; empty when it is not there."""
    key = f'"{name}":'
    at = f"FIND({q(key)},{answer})"
    end = f'FIND(",",SUBSTITUTE({answer},"}}",","),{at})'
    return f'IFERROR(NUMBERVALUE(MID({answer},{at}+{len(key)},{end}-{at}-{len(key)}),".",","),"")'


def word(answer, name):
    """The text of a name in the text of an answer."""
    return between(answer, f'"{name}":"', '"')


def between(answer, start, end, nth=1):
    """The piece of a text from the nth start to the next end, both left out."""
    at = f"FIND({q(start)},{answer})" if nth == 1 else f"FIND(CHAR(1),SUBSTITUTE({answer},{q(start)},CHAR(1),{nth}))"
    return f'IFERROR(MID({answer},{at}+{len(start)},FIND({q(end)},{answer},{at}+{len(start)})-{at}-{len(start)}),"")'


def named(text, names):
    """A text with the names a person gave instead of the short ones."""
    for short, cell in names.items():
        text = f"SUBSTITUTE({text},{q(short)},{cell})"
    return text


def not_a_number(cell):
    """Whether something else than a number stands in a cell; digits alone may be a text."""
    return f'AND(ISTEXT({cell}),ISERROR(NUMBERVALUE({cell},"#","~")))'


def misread(cell):
    """Whether a number stands in a cell as text, with a decimal sign that this spreadsheet does not take for one."""
    return f'AND({not_a_number(cell)},ISNUMBER(NUMBERVALUE(SUBSTITUTE({cell},",","."),".","~")))'


def line(text, nth):
    """The nth line of a text whose lines all end with a LINE."""
    at = f"FIND(CHAR(1),SUBSTITUTE({LINE}&{text},{LINE},CHAR(1),{nth}))"
    return f'IFERROR(MID({text},{at},FIND({LINE},{text},{at})-{at}),"")'


def alone(cells):
    """The texts of cells one after the other, each once."""
    return "&".join(f'IF(OR({",".join(f"{cell}={other}" for other in cells[:n])}),"",{cell})' if n else cell for n, cell in enumerate(cells))


def worst(area, text="", none=""):
    """The worst verdict in an area; with text behind it where that is a star."""
    levels = ("fault", "stop", "warning", "note", "ok")
    return "".join(f'IF(COUNTIF({area},"{level}{text}")>0,"{level}",' for level in levels) + q(none) + ")" * len(levels)
