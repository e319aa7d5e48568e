"""What stands where in the quoting workbook. Each sheet is filled by a module of its own, which asks here for the others' cells."""
from entries import AMPLIFIER, CHANNEL, DRIVER
from layout import AMPLIFIERS, CALCULATIONS, CAUTIONS, CHANNELS, DRIVERS, FINDINGS, FIRST, RESULTS, SLOTS, WISHED
from lookup import LOOKUP
from money import found
from sheets import Sheet


def numbered(columns):
    return {key: number for number, (key, *_) in enumerate(columns, 1)}


class Book:
    def __init__(self, contract, demo, address, packages, words, units):
        self.contract, self.demo, self.address = contract, demo, address
        self.words, self.units = words, units
        self.say, self.tell = self.words.text, self.words.formula  # as it stands, and as a formula
        self.offered = packages  # rows of the table that package-options answers
        self.vehicle = Sheet(self.say("Vehicle"), [0.6, 7.2, 5.6, 2.6, 0.8, 13], one_page=True)
        self.channels = Sheet(self.say("Channels"), freeze=(FIRST - 1, 1))
        self.parts = Sheet(self.say("Parts"), freeze=(FIRST - 1, 1))
        self.results = Sheet(self.say("Results"), freeze=(FIRST - 1, 2))
        self.levels = Sheet(self.say("Levels"), freeze=(FIRST - 1, 2), one_page=True)
        self.packages = Sheet(self.say("Packages"), freeze=(FIRST - 1, 2))
        self.comparison = Sheet(self.say("Comparison"), freeze=(FIRST - 1, 3))
        self.totals = Sheet(self.say("Totals"), [5.2, 5.2, 2, 2.4, 2.6, 2.8, 3, 4.4], freeze=(FIRST - 1, 0), one_page=True)
        self.calls = Sheet(self.say("Calls"), [3.6, 4.2, 2.2, 2.4, 6, 6, 6, 6, 30], freeze=(FIRST - 1, 2), printed=False)
        self.lookup = Sheet("Lookup", freeze=(FIRST - 1, 1), hidden=True)
        self.table = Sheet(self.say("Table"), [3] * (7 + 2 * SLOTS), printed=False)
        self.quote = Sheet(self.say("Quote"), [4.4, 4.5, 4.7, 1.9, 2.6, 2.9, 1.4], one_page=True, portrait=True)
        self.codes = Sheet("Codes", hidden=True)
        self.lines = Sheet("Lines", hidden=True)
        self.split = Sheet("Split", freeze=(FIRST - 1, 2), hidden=True)
        self.sheets = [self.vehicle, self.channels, self.parts, self.results, self.levels, self.comparison, self.packages, self.totals,
                       self.quote, self.table, self.calls, self.lookup, self.split, self.codes, self.lines]
        self.decimals = found(self.codes)
        for sheet in self.sheets:
            sheet.decimals = self.decimals
        self.cell, self.numbers = {}, set()  # of the vehicle, by key; which of them hold numbers
        self.queries = {}  # of the calls, by row
        self.told = {}  # by name of the sheet: rows with channel, level and text of a finding
        self.channel_column, self.driver_column, self.amplifier_column, self.result_column = map(
            numbered, (CHANNEL, DRIVER, AMPLIFIER, RESULTS))
        self.lookup_column = numbered((key,) for key in LOOKUP)
        self.first_amplifier = FIRST + DRIVERS + 4
        self.names = {"drivers": self.driver_area("name"), "amplifiers": self.amplifier_area("name"), "channels": self.channel_area("name")}
        self.delays_row = self.call_row(CHANNELS, CALCULATIONS[0])
        self.masses_row = self.delays_row + 1
        self.ready_row = self.masses_row + 1 + CHANNELS
        self.listed_row = FIRST + CHANNELS + 1  # of the sheet Lookup; one for each field of a list that is sent

    def unit(self, field):
        """What a figure is in, as it stands below a heading: of money it is the currency."""
        return f'=IF({self.cell["currency"]}="","",{self.cell["currency"]})' if field.rpartition(".")[2] == "price" else self.units.of(field)

    # Words of the service, which a person reads and enters in another tongue

    def code_area(self, column):
        return self.codes.area(2, column, 1 + len(self.words.codes), column)

    def words_of(self, codes):
        """Where the words for these codes stand, which follow one another."""
        rows = [2 + list(self.words.codes).index(code) for code in codes]
        if rows != list(range(rows[0], rows[0] + len(rows))):
            raise ValueError(f"{self.words.language}.json must keep these together and in this order: {', '.join(codes)}")
        return self.codes.area(rows[0], 2, rows[-1], 2)

    def shown(self, code):
        """The word for a code."""
        return f'IFERROR(INDEX({self.code_area(2)},MATCH({code},{self.code_area(1)},0)),"")'

    def coded(self, word):
        """The code for a word; anything else goes as it stands, and the service refuses it."""
        return f'IFERROR(INDEX({self.code_area(1)},MATCH({word},{self.code_area(2)},0)),{word})'

    # What a person enters

    def of_channel(self, i, key):
        return self.channels.ref(FIRST + i, self.channel_column[key])

    def channel_area(self, key):
        return self.channels.area(FIRST, self.channel_column[key], FIRST + CHANNELS - 1, self.channel_column[key])

    def driver_area(self, key):
        return self.parts.area(FIRST, self.driver_column[key], FIRST + DRIVERS - 1, self.driver_column[key])

    def of_amplifier(self, n, key):
        return self.parts.ref(self.first_amplifier + n, self.amplifier_column[key])

    def amplifier_area(self, key):
        column, last = self.amplifier_column[key], self.first_amplifier + AMPLIFIERS - 1
        return self.parts.area(self.first_amplifier, column, last, column)

    # What is worked out and answered

    def of(self, i, key):
        return self.lookup.ref(FIRST + i, self.lookup_column[key])

    def wished_level(self, i):
        return self.levels.ref(FIRST + i, WISHED)

    def figure(self, i, key):
        """Where a person reads the figure of a channel."""
        return self.results.ref(FIRST + i, self.result_column[key])

    def listed(self, name, values):
        """What a field of a list adds to a question, given its values with a comma behind each."""
        row, self.listed_row = self.listed_row, self.listed_row + 1
        self.lookup.put(row, 1, name, "machine")
        values = self.lookup.put(row, 2, "=" + values, "machine")
        return self.lookup.put(row, 3, f'=IF(SUBSTITUTE({values},",","")="","","&{name}="&{values})', "machine")

    def call_row(self, i, calculation):
        return FIRST + i * len(CALCULATIONS) + CALCULATIONS.index(calculation)

    def level_row(self, i):
        return self.masses_row + 1 + i

    def call_rows(self, i):
        return [self.call_row(i, calculation) for calculation in CALCULATIONS]

    def called(self, i, column):
        """A cell of each question about a channel."""
        return [self.calls.ref(row, column) for row in self.call_rows(i)]

    def answer(self, i, calculation):
        return self.calls.ref(self.call_row(i, calculation), 6)

    @property
    def all_delays(self):
        return self.calls.ref(self.delays_row, 6)

    def finding(self, row, n):
        return self.split.ref(row, 2 + n)

    def part(self, row, n):
        """A piece of an answer, cut out because its names stand elsewhere too."""
        return self.split.ref(row, self.part_column(n))

    def findings(self, row):
        return self.split.area(row, 3, row, 2 + FINDINGS)

    def fault(self, row):
        """What the answer says of faults, in lines."""
        return self.split.ref(row, self.part_column(CHANNELS + 2))

    @staticmethod
    def part_column(n):
        return 2 + FINDINGS + 1 + CAUTIONS * 2 + n
