"""Inches and feet for shops that measure so: people read and enter them, and all questions and answers are metric."""
import re
from decimal import ROUND_HALF_UP, Decimal

from contract import unit

METRIC, INCH = "metric", "inch"
# By the metric unit: the one that is read, the same as an address writes it, and how many metric ones it is, exactly
# (NIST Special Publication 811, appendix B).
READ_IN = {"m": ("ft", "ft", "0.3048"), "mm": ("in", "in", "25.4"), "cm²": ("in²", "in2", "6.4516"), "cm³": ("in³", "in3", "16.387064")}
WIRE, GAUGE = "mm²", "AWG"  # the cross-section of a wire is entered as either
DECIMALS = 3  # of the example's figures
DIGITS = 4  # of bounds and defaults, as the service tells them; and all in front of the point


class Units:
    def __init__(self, system=METRIC):
        self.system = system

    def _read(self, field):
        return READ_IN.get(unit(field)) if self.system == INCH else None

    def converts(self, field):
        return self._read(field) is not None

    def has_gauge(self, field):
        return self.system == INCH and unit(field) == WIRE

    def of(self, field):
        """What a figure is in, as it stands below a heading or beside a cell."""
        if self.has_gauge(field):
            return f"{WIRE}, {GAUGE}"
        return self._read(field)[0] if self.converts(field) else unit(field)

    def sent(self, field, cell):
        """What was entered, as a formula, in the contract's unit; what is no number keeps its own, and the service reads it."""
        if not self.converts(field):
            return cell
        _, written, metric = self._read(field)
        return f'IF(ISNUMBER({cell}),{cell}*{metric},{cell}&"{written}")'

    def shown(self, field, number):
        """A figure of an answer, as a formula; nothing stays nothing."""
        return f'IFERROR({number}/{self._read(field)[2]},"")' if self.converts(field) else number

    def form(self, field, form):
        """Its number format: what is larger than the metric unit has a decimal more."""
        return form + ".0" if self.converts(field) and form.endswith("0") and "." not in form else form

    def example(self, field, value):
        """A figure of the example as a shop would enter it."""
        if not self.converts(field) or not isinstance(value, (int, float)):
            return value
        return float(round(Decimal(str(value)) / Decimal(self._read(field)[2]), DECIMALS))

    def told(self, field, number, rounding=ROUND_HALF_UP):
        """A number of the contract as it is read, without its unit. A bound is rounded so that it is allowed itself."""
        if not self.converts(field) or isinstance(number, bool):
            return number
        exact = Decimal(str(number)) / Decimal(self._read(field)[2])
        decimals = max(0, DIGITS - exact.adjusted() - 1)
        return float(exact.quantize(Decimal(1).scaleb(-decimals), rounding))

    def described(self, field, text):
        """What the contract says of a field, its unit being what is read."""
        return re.sub(rf", {unit(field)}(?=$|[;,.])", f", {self.of(field)}", text) if self.converts(field) else text

    def behind(self, field):
        """The unit behind such a number, where it is another than the contract's."""
        return f" {self.of(field)}" if self.converts(field) else ""

    @property
    def asked(self):
        """What every question says of them."""
        return "" if self.system == METRIC else f"&units={self.system}"
