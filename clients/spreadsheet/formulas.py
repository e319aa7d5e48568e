"""Formulas that put questions and take answers apart."""
from contract import OPTIONS

LINE, TAB = "CHAR(10)", "CHAR(9)"
FINDING = '{"level":"'  # how a finding starts in an answer


def q(text):
    """A text as it stands in a formula."""
    return '"' + text.replace('"', '""') + '"'


class Query:
    """The formula of an address: every filled cell adds its parameter."""

    def __init__(self, contract, calculation):
        self.contract, self.calculation = contract, calculation
        self.parts, self.sent = [], set()

    def value(self, name, cell):
        kind = self.contract.parameter(self.calculation, name)["schema"].get("type")
        self.sent.add(name)
        text = cell
        if kind == "boolean":
            # Anything else goes as it stands: the service refuses it.
            text = f'IF({cell}="yes","true",IF({cell}="no","false",{cell}))'
        elif kind in ("number", "integer"):
            # A number has no comma but the one that some languages write for the point.
            text = f'SUBSTITUTE({cell},",",".")'
        self.parts.append(f'IF({cell}="","","&{name}="&ENCODEURL({text}))')
        return self

    def choice(self, name, value, when):
        self.sent.add(name)
        self.contract.choice(self.calculation, name, value)
        self.parts.append(f'IF({when},"&{name}={value}","")')
        return self

    def group(self, condition, build):
        """Parameters that are sent together or not at all."""
        inner = build(Query(self.contract, self.calculation))
        self.sent |= inner.sent
        self.parts.append(f'IF({condition},{"&".join(inner.parts)},"")')
        return self

    def formula(self, base, condition):
        missing = set(self.contract.required(self.calculation)) - self.sent - OPTIONS
        if missing:
            raise ValueError(f"{self.calculation} needs {', '.join(sorted(missing))}")
        start = f"/v1/{self.calculation}?format=json&errors=text"
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


def after(answer, start, nth="1"):
    """What an object holds after its first text, which the nth start opens."""
    ends = f"FIND({q(chr(34) + ',' + chr(34))},{answer},FIND(CHAR(1),SUBSTITUTE({answer},{q(start)},CHAR(1),{nth})))"
    return f'IFERROR(MID({answer},{ends}+2,FIND("}}",{answer},{ends})-{ends}-2)&",","")'


def line(text, nth):
    """The nth line of a text whose lines all end with a LINE."""
    at = f"FIND(CHAR(1),SUBSTITUTE({LINE}&{text},{LINE},CHAR(1),{nth}))"
    return f'IFERROR(MID({text},{at},FIND({LINE},{text},{at})-{at}),"")'


def alone(cells):
    """The texts of cells one after the other, each once."""
    return "&".join(f'IF(OR({",".join(f"{cell}={other}" for other in cells[:n])}),"",{cell})' if n else cell for n, cell in enumerate(cells))


def worst(verdicts):
    """The worst verdict in an area."""
    levels = ("fault", "stop", "warning", "note", "ok")
    return "".join(f'IF(COUNTIF({verdicts},"{level}")>0,"{level}",' for level in levels) + '""' + ")" * len(levels)
