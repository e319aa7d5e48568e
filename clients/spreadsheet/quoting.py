"""The quoting workbook: what stands in which cell. Every name of a field is looked up in the contract."""
from contract import OPTIONS, unit
from sheets import Sheet

CHANNELS, DRIVERS, AMPLIFIERS, ITEMS = 8, 16, 4, 8
LONGEST_URL = 2000  # Excel sends up to 2,048 characters
CALCULATIONS = ["wiring-load", "rail-match", "sound-level", "driver-comparison"]  # asked for every channel
FINDINGS, CAUTIONS = 8, 6  # as many are taken from an answer; of more it says how many
FIRST = 6  # row of the first channel on every sheet
LINE = "CHAR(10)"
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
        if kind == "boolean":
            self.parts.append(f'IF({cell}="yes","&{name}=true","")')
        else:
            # A number has no comma but the one that some languages write for the point.
            text = f'SUBSTITUTE({cell},",",".")' if kind in ("number", "integer") else cell
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
        return f'=IF({condition},{base}&"{start}"&{"&".join(self.parts)},"")'


def number(answer, name):
    """The number of a name in the text of an answer; empty when it is not there."""
    key = f'"{name}":'
    at = f"FIND({q(key)},{answer})"
    end = f'FIND(",",SUBSTITUTE({answer},"}}",","),{at})'
    return f'=IFERROR(NUMBERVALUE(MID({answer},{at}+{len(key)},{end}-{at}-{len(key)}),".",","),"")'


def word(answer, name):
    """The text of a name in the text of an answer."""
    key = f'"{name}":"'
    at = f"FIND({q(key)},{answer})"
    return f'=IFERROR(MID({answer},{at}+{len(key)},FIND("""",{answer},{at}+{len(key)})-{at}-{len(key)}),"")'


def between(answer, start, end, nth=1):
    """The piece of a text from the nth start to the next end, both left out."""
    at = f"FIND({q(start)},{answer})" if nth == 1 else f"FIND(CHAR(1),SUBSTITUTE({answer},{q(start)},CHAR(1),{nth}))"
    return f'IFERROR(MID({answer},{at}+{len(start)},FIND({q(end)},{answer},{at}+{len(start)})-{at}-{len(start)}),"")'


def worst(verdicts):
    """The worst verdict in an area."""
    levels = ("fault", "stop", "warning", "note", "ok")
    return "".join(f'IF(COUNTIF({verdicts},"{level}")>0,"{level}",' for level in levels) + '""' + ")" * len(levels)


class Workbook:
    def __init__(self, contract, demo, address):
        self.contract, self.demo, self.address = contract, demo, address
        self.result_column = {key: n for n, (key, *_) in enumerate(RESULTS, 1)}
        self.vehicle = Sheet("Vehicle", [0.6, 6.6, 5.2, 2, 1, 13])
        self.channels = Sheet("Channels", freeze=(FIRST - 1, 1))
        self.parts = Sheet("Parts", freeze=(FIRST - 1, 1))
        self.results = Sheet("Results", freeze=(FIRST - 1, 1))
        self.comparison = Sheet("Comparison", freeze=(FIRST - 1, 2))
        self.totals = Sheet("Totals", [5.2, 5.2, 2, 2.4, 2.6, 2.8, 3, 3.4], freeze=(FIRST - 1, 0))
        self.lookup = Sheet("Lookup", freeze=(FIRST - 1, 1), hidden=True)
        self.calls = Sheet("Calls", [3.4, 4.2, 2.2, 2.4, 12, 12, 12, 12, 12], freeze=(FIRST - 1, 2))
        self.split = Sheet("Split", freeze=(FIRST - 1, 2), hidden=True)

    def build(self):
        self.fill_vehicle()
        self.fill_parts()
        self.fill_channels()
        self.fill_lookup()
        self.fill_calls()
        self.fill_split()
        self.fill_results()
        self.fill_comparison()
        self.fill_totals()
        for sheet in (self.channels, self.parts, self.results, self.comparison, self.totals, self.calls):
            sheet.heights[1], sheet.heights[FIRST - 2] = 1, 1.3
        self.parts.heights[self.first_amplifier - 2] = 1.3
        return [self.vehicle, self.channels, self.parts, self.results, self.comparison, self.totals,
                self.calls, self.lookup, self.split]

    # What a person enters

    def fill_vehicle(self):
        sheet, self.cell = self.vehicle, {}
        sheet.put(1, 2, "Quote for a sound system", "title")
        sheet.heights[1] = 1
        rows = [
            ("Service", None, None, None),
            ("address", "Service address", None, "Where Footwell runs, such as http://localhost:8080"),
            ("status", "Status", None, None),
            ("Vehicle", None, None, None),
            ("vehicle", "Vehicle", None, "Stands on the quote; not sent."),
            ("cabin_length_m", "Cabin, longest inside", "sound-level", "cabin.length_m"),
            ("temperature_c", "Air temperature", "seat-delays", "temperature_c"),
            ("supply_v", "Supply voltage, engine running", "rail-match", "supply_v"),
            ("crest_factor_db", "Programme, peak over RMS", "sound-level", "crest_factor_db"),
            ("factory_power_w", "Factory amplifier, power for each driver", "driver-comparison", "positions.0.amplifier_before.power_w"),
            ("factory_load_ohm", "… stated for a load of", "driver-comparison", "positions.0.amplifier_before.load_ohm"),
            ("Listening position, midpoint between the ears", None, None, None),
            ("seat", "Seat", "seat-delays", "seats.0.name"),
            ("seat_x_m", "Forward", "seat-delays", "seats.0.position.x_m"),
            ("seat_y_m", "To the left", "seat-delays", "seats.0.position.y_m"),
            ("seat_z_m", "Up", "seat-delays", "seats.0.position.z_m"),
            ("Signal processor", None, None, None),
            ("filter_kind", "Kind of the filters", "seat-delays", "channels.0.high_pass.kind"),
            ("filter_order", "Order of the filters", "seat-delays", "channels.0.high_pass.order"),
            ("rate_hz", "Sample rate", "seat-delays", "processor.rate_hz"),
            ("maximum_delay_ms", "Longest delay", "seat-delays", "processor.maximum_delay_ms"),
            ("Quote", None, None, None),
            ("currency", "Currency", "driver-comparison", "currency"),
        ]
        values = {**self.demo["vehicle"], "address": self.address}
        row = 3
        for key, label, calculation, name in rows:
            if label is None:
                row += row > 3
                sheet.put(row, 2, key, "group")
            else:
                sheet.put(row, 2, label, "label")
                if key == "status":
                    self.status_row = row
                    row += 2
                else:
                    self.cell[key] = self.entry(sheet, row, 3, values.get(key), calculation, name)
                    sheet.put(row, 4, unit(name) if calculation else "", "hint")
            row += 1
        for i, line in enumerate(HOW_TO):
            sheet.put(3 + i, 6, line, "hint" if i else "group")
        colours = 4 + len(HOW_TO)
        sheet.put(colours, 6, "Colours", "group")
        sheet.put(colours + 1, 6, "You enter. Select such a cell to read what belongs there.", "input")
        sheet.put(colours + 2, 6, "The service answers.", "output")
        self.cautions_row = colours + 4

    def entry(self, sheet, row, column, value, calculation, name, choices=None):
        """A cell to fill in, explained and limited by the contract."""
        if calculation is None:
            return sheet.put(row, column, value, "input", help=name or "", choices=choices)
        schema = self.contract.parameter(calculation, name)["schema"]
        numeric = schema.get("type") in ("number", "integer")
        listed = ["yes", "no"] if schema.get("type") == "boolean" else schema.get("enum")
        return sheet.put(row, column, value, "input_number" if numeric else "input",
                         help=self.contract.help(calculation, name), choices=choices or listed)

    def entries(self, sheet, top, columns, values, count, title=None):
        """A table to fill in: headings, names of the contract, rows."""
        for column, (key, label, calculation, name, width, choices) in enumerate(columns, 1):
            if len(sheet.widths) < column:
                sheet.widths.append(width)
            sheet.put(top, column, label, "heading")
            sheet.put(top + 1, column, unit(name) if calculation else "", "field")
            for i in range(count):
                value = values[i].get(key) if i < len(values) else None
                self.entry(sheet, top + 2 + i, column, value, calculation, name, choices)
        return {column[0]: number for number, column in enumerate(columns, 1)}

    def fill_parts(self):
        sheet = self.parts
        sheet.put(1, 1, "Parts", "title")
        sheet.put(2, 1, "Drivers, of the factory and new. The impedance is that of one driver as wired, all its voice coils together.", "plain")
        side = "positions.0.replacement."
        self.driver_columns = [("name", "Driver", "driver-comparison", side + "name", 4.4, None)] + [
            (key, label, "driver-comparison", side + name, width, None) for key, label, name, width in [
                ("rated_ohm", "Impedance", "rated_ohm", 2.2), ("level_db_spl", "Sensitivity", "sensitivity.level_db_spl", 2.3),
                ("basis", "stated for", "sensitivity.basis", 4.9), ("continuous_power_w", "Power, continuous", "continuous_power_w", 2.2),
                ("peak_power_w", "Power, peak", "peak_power_w", 2.2), ("sd_cm2", "Cone area", "sd_cm2", 2.2),
                ("xmax_mm", "Travel, one way", "xmax_mm", 2.2), ("fs_hz", "Resonance", "fs_hz", 2.3),
                ("mass_g", "Mass", "mass_g", 2.2), ("price", "Price", "price", 2.4)]]
        self.driver_column = self.entries(sheet, FIRST - 2, self.driver_columns, self.demo["drivers"], DRIVERS)
        top = FIRST + DRIVERS + 2
        sheet.put(top - 1, 1, "Amplifiers: the ratings of one channel, or of two bridged where it says so.", "plain")
        rail = "rail-match"
        self.amplifier_columns = [
            ("name", "Amplifier", "driver-comparison", "additions.0.name", 0, None),
            ("supply_v", "Rated at a supply of", rail, "ratings.supply_v", 0, None),
            ("load_0_ohm", "First load", rail, "ratings.points.0.load_ohm", 0, None),
            ("basis", "kind of power", rail, "ratings.basis", 0, None),
            ("power_0_w", "power into it", rail, "ratings.points.0.power_w", 0, None),
            ("load_1_ohm", "Second load", rail, "ratings.points.1.load_ohm", 0, None),
            ("power_1_w", "power into it", rail, "ratings.points.1.power_w", 0, None),
            ("minimum_ohm", "Smallest load, a channel", rail, "minimum_ohm", 0, None),
            ("minimum_bridged_ohm", "Smallest load, bridged", rail, "minimum_bridged_ohm", 0, None),
            ("mass_g", "Mass", "driver-comparison", "additions.0.mass_g", 0, None),
            ("price", "Price", "driver-comparison", "additions.0.price", 0, None),
            ("output_ohm", "Output impedance", "wiring-load", "amplifier.output_ohm", 2.3, None),
            ("regulated", "Supply regulated", rail, "supply_regulated", 2.2, None),
            ("rated_bridged", "Ratings are bridged", rail, "ratings.bridged", 2.2, None)]
        self.amplifier_column = self.entries(sheet, top, self.amplifier_columns, self.demo["amplifiers"], AMPLIFIERS)
        self.first_amplifier = top + 2
        self.driver_names = sheet.area(FIRST, 1, FIRST + DRIVERS - 1, 1)
        self.amplifier_names = sheet.area(self.first_amplifier, 1, self.first_amplifier + AMPLIFIERS - 1, 1)

    def fill_channels(self):
        sheet, delays, comparison, sound = self.channels, "seat-delays", "driver-comparison", "sound-level"
        sheet.put(1, 1, "Channels", "title")
        sheet.put(2, 1, "One row for each amplifier channel. Positions from the same origin as the seat: forward, to the left and up are positive.", "plain")
        names = sheet.area(FIRST, 1, FIRST + CHANNELS - 1, 1)
        columns = [
            ("name", "Channel", delays, "channels.0.name", 3.4, None),
            ("factory", "Factory driver", None, "The part that goes out, from the sheet Parts. Empty where there was none.", 4.2, self.driver_names),
            ("new", "New driver", None, "The part that comes in, from the sheet Parts.", 4.2, self.driver_names),
            ("count", "Drivers", comparison, "positions.0.driver_count", 1.7, None),
            ("network", "Network of their coils", "wiring-load", "network", 3.4, None),
            ("zone", "Zone", comparison, "positions.0.zone", 1.9, None),
            ("band", "Band", comparison, "positions.0.band", 2.4, None),
            ("at", "Place", comparison, "positions.0.at", 1.9, None),
            ("amplifier", "Amplifier", None, "From the sheet Parts.", 3.4, self.amplifier_names),
            ("bridged", "Bridged", "rail-match", "bridged", 1.8, None),
            ("cable_m", "Cable, one way", "wiring-load", "cable.one_way_m", 1.9, None),
            ("cable_mm2", "Cable, one conductor", "wiring-load", "cable.area_mm2", 2.2, None),
            ("x_m", "Forward", delays, "channels.0.position.x_m", 1.9, None),
            ("y_m", "To the left", delays, "channels.0.position.y_m", 1.9, None),
            ("z_m", "Up", delays, "channels.0.position.z_m", 1.9, None),
            ("lowest_hz", "Plays fully from", sound, "cone.frequency_hz", 2.1, None),
            ("high_pass_hz", "High-pass", delays, "channels.0.high_pass.frequency_hz", 2.1, None),
            ("low_pass_hz", "Low-pass", delays, "channels.0.low_pass.frequency_hz", 2.1, None),
            ("lower", "Below the high-pass plays", delays, "crossovers.0.lower", 3.2, names),
            ("full_range", "Surely without filter", delays, "channels.0.full_range", 2.2, None)]
        self.channel_column = self.entries(sheet, FIRST - 2, columns, self.demo["channels"], CHANNELS)
        self.contract.parameter(comparison, "positions.0.displacement_hz")

    # What is computed here: nothing but looking up, distances and sums

    def of_channel(self, i, key):
        return self.channels.ref(FIRST + i, self.channel_column[key])

    def of(self, i, key):
        return self.lookup.ref(FIRST + i, self.lookup_column[key])

    def fill_lookup(self):
        sheet = self.lookup
        sheet.put(1, 1, "Lookup", "title")
        sheet.put(2, 1, "What the parts of each channel say. Nothing to enter here.", "plain")
        drivers = [key for key, *_ in self.driver_columns]
        amplifiers = [key for key, *_ in self.amplifier_columns if key not in ("mass_g", "price")]
        keys = ["name", "index", "factory row", "new row", "amplifier row", "distance_m", "programme power",
                "continuous power of all", "clean power for each"]
        keys += ["factory " + key for key in drivers] + ["new " + key for key in drivers]
        keys += ["amplifier " + key for key in amplifiers] + ["crossover index", "delays query", "complaint"]
        self.lookup_column = {key: n for n, key in enumerate(keys, 1)}
        for key, column in self.lookup_column.items():
            sheet.put(FIRST - 2, column, key, "heading")
        for i in range(CHANNELS):
            for key, column in self.lookup_column.items():
                sheet.put(FIRST + i, column, self.looked_up(i, key), "machine")

    def looked_up(self, i, key):
        name = self.of_channel(i, "name")
        first_name = self.of_channel(0, "name")
        if key == "name":
            return f'=IF({name}="","",{name})'
        if key == "index":
            return f'=IF({name}="","",COUNTA({first_name}:{name.partition("!")[2]})-1)'
        if key.endswith(" row"):
            what = key.removesuffix(" row")
            wanted = self.of_channel(i, what)
            names = self.amplifier_names if what == "amplifier" else self.driver_names
            return f'=IF({wanted}="","",IFERROR(MATCH({wanted},{names},0),"unknown"))'
        if key == "distance_m":
            here = self.channels.area(FIRST + i, self.channel_column["x_m"], FIRST + i, self.channel_column["z_m"])
            seat = [f'({self.of_channel(i, axis)}-{self.cell["seat_" + axis]})^2' for axis in ("x_m", "y_m", "z_m")]
            return f'=IF(COUNT({here})=3,IFERROR(SQRT({"+".join(seat)}),""),"")'
        if key == "programme power":
            # A sine at full power has a crest factor of 2 in power; the programme's is larger by its own.
            return f'=IFERROR(2*{self.answer_number(i, "clean_power_w")}/10^({self.cell["crest_factor_db"]}/10),"")'
        if key == "continuous power of all":
            return f'=IFERROR({self.of_channel(i, "count")}*{self.of(i, "new continuous_power_w")},"")'
        if key == "clean power for each":
            return f'=IFERROR({self.answer_number(i, "clean_power_w")}/{self.of_channel(i, "count")},"")'
        if key == "crossover index":
            lower, first_lower = self.of_channel(i, "lower"), self.of_channel(0, "lower")
            return f'=IF(OR({name}="",{lower}=""),"",COUNTA({first_lower}:{lower.partition("!")[2]})-1)'
        if key == "delays query":
            return self.delays_of(i)
        if key == "complaint":
            return "=" + "&".join(
                f'IF({self.of(i, what + " row")}="unknown",{q(f"{label} is not on the sheet Parts: ")}&{self.of_channel(i, what)}&". ","")'
                for what, label in [("factory", "The factory driver"), ("new", "The new driver"), ("amplifier", "The amplifier")])
        what, _, field = key.partition(" ")
        row = self.of(i, what + " row")
        if what == "amplifier":
            column, first, count = self.amplifier_column[field], self.first_amplifier, AMPLIFIERS
        else:
            column, first, count = self.driver_column[field], FIRST, DRIVERS
        found = f"INDEX({self.parts.area(first, column, first + count - 1, column)},{row})"
        return f'=IFERROR(IF({found}="","",{found}),"")'

    def delays_of(self, i):
        """What a channel adds to the question for the delays."""
        query, index = Query(self.contract, "seat-delays"), self.of(i, "index")
        for name, cell in [("name", self.of_channel(i, "name"))] + [
                ("position." + axis, self.of_channel(i, axis)) for axis in ("x_m", "y_m", "z_m")]:
            query.value("channels.0." + name, cell)
        query.value("channels.0.full_range", self.of_channel(i, "full_range"))
        for way in ("high_pass", "low_pass"):
            corner = self.of_channel(i, way + "_hz")
            query.group(f'{corner}<>""', lambda filters, way=way, corner=corner: filters
                        .value(f"channels.0.{way}.kind", self.cell["filter_kind"])
                        .value(f"channels.0.{way}.order", self.cell["filter_order"])
                        .value(f"channels.0.{way}.frequency_hz", corner))
        query.group(f'{self.of(i, "crossover index")}<>""', lambda crossover: crossover
                    .value("crossovers.0.lower", self.of_channel(i, "lower"))
                    .value("crossovers.0.upper", self.of_channel(i, "name"))
                    .value("crossovers.0.frequency_hz", self.of_channel(i, "high_pass_hz")))
        text = "&".join(query.parts)
        text = text.replace("&channels.0.", f'&channels."&{index}&".').replace("&crossovers.0.", f'&crossovers."&{self.of(i, "crossover index")}&".')
        return f'=IF({index}="","",{text})'

    # What is asked and what comes back

    def call_row(self, i, calculation):
        return FIRST + i * len(CALCULATIONS) + CALCULATIONS.index(calculation)

    def answer(self, i, calculation):
        return self.calls.ref(self.call_row(i, calculation), 6)

    def part(self, row, n):
        return self.split.ref(row, 2 + FINDINGS + 1 + CAUTIONS * 2 + n)

    def answer_number(self, i, name):
        """Where the number of a channel stands on the sheet of results."""
        return self.results.ref(FIRST + i, self.result_column[name])

    def fill_calls(self):
        sheet, contract = self.calls, self.contract
        sheet.put(1, 1, "Calls", "title")
        sheet.put(2, 1, "Every question to the service and its answer. Nothing to enter here.", "plain")
        sheet.put(3, 1, "Service", "label")
        address = self.cell["address"]
        base = sheet.put(3, 2, f'=IF(RIGHT({address},1)="/",LEFT({address},LEN({address})-1),{address})', "output")
        for column, label in enumerate(["Channel", "Calculation", "Verdict", "Characters", "Address", "Answer", "Faults and stops", "Warnings", "All findings"], 1):
            sheet.put(FIRST - 2, column, label, "heading")
            sheet.put(FIRST - 1, column, "", "field")
        self.delays_row = self.call_row(CHANNELS, CALCULATIONS[0])
        self.ready_row = self.delays_row + 1
        for i in range(CHANNELS):
            name = self.of_channel(i, "name")
            named = f'AND({name}<>"",{self.of(i, "complaint")}="")'
            for calculation, query, condition in [
                    ("wiring-load", self.wiring(i), named),
                    ("rail-match", self.rail(i), f'AND({named},{self.answer_number(i, "load_ohm")}<>"")'),
                    ("sound-level", self.sound(i), f'AND({named},{self.of(i, "programme power")}<>"",{self.of(i, "distance_m")}<>"")'),
                    ("driver-comparison", self.compared(i), f'AND({named},{self.of_channel(i, "new")}<>"")')]:
                self.call(self.call_row(i, calculation), f'=IF({name}="","",{name})', calculation, query.formula(base, condition))
        self.call(self.delays_row, "all", "seat-delays", self.delays(base))
        contract.get("/health/ready")
        self.call(self.ready_row, "service", "ready", f'={base}&"/health/ready"')
        answer = sheet.ref(self.ready_row, 6)
        self.status = self.vehicle.ref(self.status_row, 3)
        self.vehicle.merge(self.status_row, 3, self.status_row + 2, 4, f'=IF(LEFT({answer},1)="{{","The service answers.",{answer})', "says")

    def call(self, row, channel, calculation, address):
        sheet = self.calls
        sheet.put(row, 1, channel, "machine")
        sheet.put(row, 2, calculation, "machine")
        url, answer = sheet.ref(row, 5), sheet.ref(row, 6)
        verdict = between(answer, '],"verdict":"', '"')
        sheet.put(row, 3, f'=IF({answer}="","",IF(LEFT({answer},1)="{{",{verdict},"fault"))', "verdict")
        sheet.put(row, 4, f'=IF({url}="","",LEN({url}))', "machine")
        sheet.put(row, 5, address, "machine")
        long = f'"The question has "&LEN({url})&" characters, a cell sends at most {LONGEST_URL}. Shorter names, fewer filters or an empty processor help."'
        none = q("No answer. Is the service running at ") + f'&{self.cell["address"]}&' + q(", and is this file allowed to update its links?")
        sheet.put(row, 6, f'=IF({url}="","",IF(LEN({url})>{LONGEST_URL},{long},IFERROR(WEBSERVICE({url}),{none})))', "machine")
        slots = [self.split.ref(row, 2 + n) for n in range(1, FINDINGS + 1)]
        stops, warnings = ("&".join(f'IF(LEFT({slot},{len(level)})="{level}",{slot}&{LINE},"")' for slot in slots) for level in ("stop", "warning"))
        fault = f'IF({sheet.ref(row, 3)}="fault",LEFT({answer},300)&{LINE},"")'
        more = f'(LEN({answer})-LEN(SUBSTITUTE({answer},{q(FINDING)},"")))/{len(FINDING)}'
        rest = f'IF({more}>{FINDINGS},"and "&{more}-{FINDINGS}&" more","")'
        sheet.put(row, 7, f"={fault}&{stops}", "machine")
        sheet.put(row, 8, f"={warnings}", "machine")
        sheet.put(row, 9, "=" + "&".join(f'{slot}&IF({slot}="","",{LINE})' for slot in slots) + "&" + rest, "machine")

    def wiring(self, i):
        query = Query(self.contract, "wiring-load").value("network", self.of_channel(i, "network"))
        for name in ("minimum_ohm", "minimum_bridged_ohm", "output_ohm"):
            query.value("amplifier." + name, self.of(i, "amplifier " + name))
        return (query.group(f'{self.of(i, "amplifier minimum_ohm")}<>""', lambda amplifier: amplifier
                            .value("amplifier.bridged", self.of_channel(i, "bridged")))
                .value("cable.one_way_m", self.of_channel(i, "cable_m"))
                .value("cable.area_mm2", self.of_channel(i, "cable_mm2")))

    def rail(self, i):
        query = Query(self.contract, "rail-match")
        query.value("load_ohm", self.answer_number(i, "load_with_cable_ohm"))
        for key, name in [("supply_v", "ratings.supply_v"), ("basis", "ratings.basis"), ("load_0_ohm", "ratings.points.0.load_ohm"),
                          ("power_0_w", "ratings.points.0.power_w"), ("load_1_ohm", "ratings.points.1.load_ohm"),
                          ("power_1_w", "ratings.points.1.power_w"), ("minimum_ohm", "minimum_ohm"),
                          ("minimum_bridged_ohm", "minimum_bridged_ohm"), ("regulated", "supply_regulated"), ("rated_bridged", "ratings.bridged")]:
            query.value(name, self.of(i, "amplifier " + key))
        return (query.value("bridged", self.of_channel(i, "bridged")).value("supply_v", self.cell["supply_v"])
                .group(f'{self.of(i, "continuous power of all")}<>""', lambda driver: driver
                       .value("driver.continuous_power_w", self.of(i, "continuous power of all"))
                       .value("driver.rated_ohm", self.answer_number(i, "load_ohm"))))

    def sound(self, i):
        new = lambda key: self.of(i, "new " + key)
        several = f'AND(ISNUMBER({self.of_channel(i, "count")}),{self.of_channel(i, "count")}>1)'
        known = ",".join(f'{cell}<>""' for cell in (new("sd_cm2"), new("xmax_mm"), self.of_channel(i, "lowest_hz")))
        return (Query(self.contract, "sound-level")
                .value("sensitivity.level_db_spl", new("level_db_spl")).value("sensitivity.basis", new("basis"))
                .value("rated_ohm", new("rated_ohm")).value("power_w", self.of(i, "programme power"))
                .value("distance_m", self.of(i, "distance_m")).value("driver_count", self.of_channel(i, "count"))
                .choice("drive", "shared", several).choice("addition", "coherent", several)
                .value("cabin.length_m", self.cell["cabin_length_m"]).value("crest_factor_db", self.cell["crest_factor_db"])
                .value("continuous_power_w", new("continuous_power_w"))
                .group(f"AND({known})", lambda cone: cone.value("cone.sd_cm2", new("sd_cm2")).value("cone.xmax_mm", new("xmax_mm"))
                       .value("cone.frequency_hz", self.of_channel(i, "lowest_hz"))))

    def compared(self, i):
        query, at = Query(self.contract, "driver-comparison"), "positions.0."
        for key, name in [("name", "name"), ("zone", "zone"), ("band", "band"), ("at", "at"), ("count", "driver_count"), ("lowest_hz", "displacement_hz")]:
            query.value(at + name, self.of_channel(i, key))

        def side(of, name):
            for key, _, _, field, *_ in self.driver_columns:
                of.value(at + name + field.removeprefix(at + "replacement"), self.of(i, f'{"new" if name == "replacement" else "factory"} {key}'))
            return of
        query.group(f'{self.of_channel(i, "factory")}<>""', lambda factory: side(factory, "factory"))
        side(query, "replacement")
        query.group(f'AND({self.of_channel(i, "factory")}<>"",{self.cell["factory_power_w"]}<>"")', lambda before: before
                    .value(at + "amplifier_before.power_w", self.cell["factory_power_w"])
                    .value(at + "amplifier_before.load_ohm", self.cell["factory_load_ohm"]))
        query.group(f'{self.of(i, "clean power for each")}<>""', lambda after: after
                    .value(at + "amplifier_after.power_w", self.of(i, "clean power for each"))
                    .value(at + "amplifier_after.load_ohm", self.of(i, "new rated_ohm")))
        return query.value("currency", self.cell["currency"]).value("temperature_c", self.cell["temperature_c"])

    def delays(self, base):
        query = Query(self.contract, "seat-delays").value("seats.0.name", self.cell["seat"])
        for axis in ("x_m", "y_m", "z_m"):
            query.value("seats.0.position." + axis, self.cell["seat_" + axis])
        for name in ("rate_hz", "maximum_delay_ms"):
            query.value("processor." + name, self.cell[name])
        query.value("temperature_c", self.cell["temperature_c"])
        query.parts += [self.of(i, "delays query") for i in range(CHANNELS)]
        return query.formula(base, f'COUNTA({self.channels.area(FIRST, 1, FIRST + CHANNELS - 1, 1)})>0')

    def fill_split(self):
        """Answers taken apart: findings, cautions, and groups of numbers whose names stand elsewhere too."""
        sheet = self.split
        sheet.put(1, 1, "Split", "title")
        sheet.put(2, 1, "The answers taken apart. Nothing to enter here.", "plain")
        safety = 2 + FINDINGS + 1
        before = '""'
        for row in range(FIRST, self.ready_row + 1):
            answer = self.calls.ref(row, 6)
            sheet.put(row, 1, f"={self.calls.ref(row, 1)}", "machine")
            sheet.put(row, 2, f"={self.calls.ref(row, 2)}", "machine")
            for n in range(1, FINDINGS + 1):
                level = between(answer, FINDING, '"', n)
                text = between(answer, '"text":"', '","', n)
                sheet.put(row, 2 + n, f'=IF({level}="","",{level}&": "&SUBSTITUTE({text},"\\""",""""))', "machine")
            cautions = sheet.put(row, safety, "=" + between(answer, '"safety":["', '"]'), "machine")
            for n in range(1, CAUTIONS + 1):
                line = sheet.put(row, safety + n, f'=TRIM(MID(SUBSTITUTE({cautions},""",""",REPT(" ",2000)),{(n - 1) * 2000 + 1},2000))', "machine")
                before = sheet.put(row, safety + CAUTIONS + n,
                                   f'={before}&IF(OR({line}="",LEN(SUBSTITUTE({before},{line},""))<LEN({before})),"","• "&{line}&{LINE})', "machine")
        self.cautions = before
        for i in range(CHANNELS):
            row = self.call_row(i, "rail-match")
            self.split_part(row, 1, "rail-match", "", between(self.answer(i, "rail-match"), '"result":{', "["))
            row = self.call_row(i, "sound-level")
            self.split_part(row, 1, "sound-level", "limits", between(self.answer(i, "sound-level"), '"limits":{', "}") + '&","')
            row = self.call_row(i, "driver-comparison")
            for n, (group, path) in enumerate(COMPARED.items(), 1):
                self.split_part(row, n, "driver-comparison", path, between(self.answer(i, "driver-comparison"), f'"{group}":{{', "}") + '&","')
            self.contract.result("seat-delays", "channels.name")
            index = self.of(i, "index")
            answer = self.calls.ref(self.delays_row, 6)
            at = f'FIND(CHAR(1),SUBSTITUTE({answer},"""name"":",CHAR(1),{index}+1))'
            self.split_part(self.delays_row, 1 + i, "seat-delays", "channels",
                            f'IF({index}="","",IFERROR(MID({answer},{at},FIND("}}",{answer},{at})-{at})&",",""))')

    def split_part(self, row, n, calculation, path, formula):
        if path:
            self.contract.result(calculation, path)
        self.split.put(row, 2 + FINDINGS + 1 + CAUTIONS * 2 + n, "=" + formula, "machine")

    # What a person reads

    def fill_results(self):
        sheet = self.results
        sheet.put(1, 1, "Results", "title")
        sheet.put(2, 1, f'={self.cell["vehicle"]}&", at the seat "&{self.cell["seat"]}', "plain")
        for column, (key, label, calculation, part, form, width) in enumerate(RESULTS, 1):
            sheet.widths.append(width)
            sheet.put(FIRST - 2, column, label, "heading")
            sheet.put(FIRST - 1, column, unit(key) if calculation else "", "field",
                      help=self.contract.result(calculation, f"{part}.{key}".strip(".")).get("description", "") if calculation else "")
            for i in range(CHANNELS):
                sheet.put(FIRST + i, column, self.result(i, key, calculation, part, form),
                          {"verdict": "verdict", "says": "says", "name": "output"}.get(key, "output_number" if form else "output_word"), form)
                sheet.heights[FIRST + i] = 1.9
        last = FIRST + CHANNELS
        verdicts = self.calls.area(FIRST, 3, self.ready_row, 3)
        end = len(RESULTS)
        sheet.merge(last, 1, last, end - 2, "Delays of all channels", "total")
        sheet.put(last, end - 1, f"={self.calls.ref(self.delays_row, 3)}", "verdict")
        sheet.put(last, end, f"={self.says([self.delays_row])}", "says")
        sheet.merge(last + 1, 1, last + 1, end - 2, "The whole system: its worst verdict", "total")
        self.verdict = sheet.put(last + 1, end - 1, f"={worst(verdicts)}", "verdict")
        sheet.put(last + 1, end, None, "says")
        sheet.put(last + 3, 1, "Cautions", "group")
        sheet.merge(last + 4, 1, last + 4, end, f"={self.cautions}", "caution")
        sheet.heights[last], sheet.heights[last + 4] = 1.2, 2.8
        self.vehicle.put(self.cautions_row, 6, "Cautions", "group")
        self.vehicle.merge(self.cautions_row + 1, 6, self.cautions_row + 12, 6, f"={self.cautions}", "caution")

    def result(self, i, key, calculation, part, form):
        if key == "name":
            return f'=IF({self.of_channel(i, "name")}="","",{self.of_channel(i, "name")})'
        rows = [self.call_row(i, calculation) for calculation in CALCULATIONS]
        if key == "verdict":
            called = self.calls.area(rows[0], 3, rows[-1], 3)
            return f'=IF({self.of(i, "complaint")}<>"","fault",{worst(called)})'
        if key == "says":
            missing = (f'IF(AND({self.of_channel(i, "name")}<>"",{self.of(i, "complaint")}="",{self.of(i, "programme power")}<>"",'
                       f'{self.of(i, "distance_m")}=""),"No level: a position of the channel or of the seat is not a number.","")')
            return f'={self.of(i, "complaint")}&{missing}&{self.says(rows)}'
        if key == "programme_power_w":
            return f'={self.of(i, "programme power")}'
        read = number if form else word
        if calculation == "seat-delays":
            return read(self.part(self.delays_row, 1 + i), key)
        if part or (calculation, key) == ("rail-match", "headroom_db"):
            return read(self.part(self.call_row(i, calculation), 1), key)
        found = read(self.answer(i, calculation), self.contract.searchable(calculation, key))
        if key == "load_with_cable_ohm":
            # Without a cable there is the load alone.
            return f'=IF(ISNUMBER({found[1:]}),{found[1:]},{self.answer_number(i, "load_ohm")})'
        return found

    def says(self, rows):
        """What must be read, worst first, and how much more there is."""
        severe = "&".join(self.calls.ref(row, column) for column in (7, 8) for row in rows)
        notes = "+".join(f'SUMPRODUCT(--(LEFT({self.split.area(row, 3, row, 2 + FINDINGS)},6)="note: "))' for row in rows)
        return f'{severe}&IF({notes}>0,"Notes, to be read on the sheet Calls: "&{notes},"")'

    def fill_comparison(self):
        sheet = self.comparison
        sheet.put(1, 1, "Before and after", "title")
        sheet.put(2, 1, "Levels are of one driver at 1 m, other figures of all drivers of the channel.", "plain")
        headings = [("Channel", 3.2), ("", 1.7), ("Part", 4.2)] + [(label, 2.6) for label, *_ in COMPARISON] + [("Verdict", 2.1), ("What to know", 16)]
        for column, (label, width) in enumerate(headings, 1):
            sheet.widths.append(width)
            sheet.put(FIRST - 2, column, label, "heading")
            sheet.put(FIRST - 1, column, "", "field")
        for column, (_, side, change, *_) in enumerate(COMPARISON, 4):
            sheet.put(FIRST - 1, column, unit(side), "field", help=self.compared_help(side, change))
        for i in range(CHANNELS):
            self.compare(sheet, FIRST + 3 * i, i, len(headings))

    def compare(self, sheet, top, i, end):
        row, name = self.call_row(i, "driver-comparison"), self.of_channel(i, "name")
        sheet.merge(top, 1, top + 2, 1, f'=IF({name}="","",{name})', "output")
        for n, label in enumerate(("factory", "new", "change")):
            style = "total" if label == "change" else "output"
            sheet.put(top + n, 2, f'=IF({name}="","","{label}")', style)
            sheet.put(top + n, 3, word(self.part(row, 2 + n), "name") if n < 2 else None, style)
            for column, (_, side, change, form, change_form) in enumerate(COMPARISON, 4):
                field, shown = (change, change_form) if n == 2 else (side, form)
                read = number if shown else word
                sheet.put(top + n, column, read(self.part(row, 2 + n), field) if field else None,
                          style + ("_number" if shown else "_word"), shown)
        sheet.merge(top, end - 1, top + 2, end - 1, f"={self.calls.ref(row, 3)}", "verdict")
        what = f'IF({self.calls.ref(row, 3)}="fault",{self.calls.ref(row, 7)},{self.calls.ref(row, 9)})'
        sheet.merge(top, end, top + 2, end, f'=IF({self.of(i, "complaint")}<>"",{self.of(i, "complaint")},{what})', "says")
        for n in range(3):
            sheet.heights[top + n] = 0.8

    def compared_help(self, side, change):
        texts = [self.contract.result("driver-comparison", f"positions.before.{side}").get("description", "")] if side else []
        if change:
            texts.append("Change: " + self.contract.result("driver-comparison", f"positions.change.{change}").get("description", ""))
        return ". ".join(text for text in texts if text)

    def fill_totals(self):
        sheet = self.totals
        sheet.put(1, 1, "Totals", "title")
        sheet.put(2, 1, f'={self.cell["vehicle"]}', "plain")
        currency = f'={self.cell["currency"]}'
        headings = [("For", ""), ("What", ""), ("Quantity", ""), ("Mass, each", "g"), ("Price, each", currency),
                    ("Mass change", "g"), ("Price", currency), ("Lacking", "")]
        for column, (label, below) in enumerate(headings, 1):
            sheet.put(FIRST - 2, column, label, "heading")
            sheet.put(FIRST - 1, column, below, "field")
        row = FIRST
        for i in range(CHANNELS):
            part = self.part(self.call_row(i, "driver-comparison"), 1)
            name, new = self.of_channel(i, "name"), self.of_channel(i, "new")
            self.line(sheet, row, f'{name}<>""', name, new, self.of_channel(i, "count"), number(part, "mass_change_g"), number(part, "price"))
            row += 1
        used = self.channels.area(FIRST, self.channel_column["amplifier"], FIRST + CHANNELS - 1, self.channel_column["amplifier"])
        for n in range(AMPLIFIERS):
            name, mass, price = (self.parts.ref(self.first_amplifier + n, self.amplifier_column[key]) for key in ("name", "mass_g", "price"))
            fitted = f'AND({name}<>"",SUMPRODUCT(--({used}={name}))>0)'
            self.line(sheet, row, fitted, q("amplifier"), name, "1", *(f'=IF(AND({fitted},ISNUMBER({cell})),{cell},"")' for cell in (mass, price)))
            row += 1
        for item in (self.demo["items"] + [{}] * ITEMS)[:ITEMS]:
            named, quantity, mass, price = (sheet.ref(row, column) for column in (2, 3, 4, 5))
            self.line(sheet, row, f'{named}<>""', q("item"), named, quantity,
                      *(f'=IF(AND(ISNUMBER({quantity}),ISNUMBER({each})),{quantity}*{each},"")' for each in (mass, price)))
            sheet.put(row, 2, item.get("name"), "input", help="Anything else that is fitted: cables, rings, boxes.")
            sheet.put(row, 3, item.get("quantity"), "input_number", help="How many.")
            for column, key, form in ((4, "mass_g", "#,##0"), (5, "price", "#,##0.00")):
                sheet.put(row, column, item.get(key), "input_number", form, help=self.contract.help("driver-comparison", "additions.0." + key))
            row += 1
        self.sums(sheet, row)

    @staticmethod
    def line(sheet, row, shown, kind, what, quantity, mass, price):
        """One line of the quote, with what it lacks."""
        for column, value, style, form in [
                (1, f'=IF({shown},{kind},"")', "output", ""), (2, f'=IF({shown},{what}&"","")', "output", ""),
                (3, f'=IF({shown},{quantity},"")', "output_number", "0"), (4, None, "output", ""), (5, None, "output", ""),
                (6, mass, "output_number", "#,##0"), (7, price, "output_number", "#,##0.00")]:
            sheet.put(row, column, value, style, form)
        lacking = f'IF({sheet.ref(row, 6)}="","mass ","")&IF({sheet.ref(row, 7)}="","price","")'
        sheet.put(row, 8, f'=IF({shown},{lacking},"")', "output")

    def sums(self, sheet, end):
        """Below the lines: hours, tax and the sum."""
        labour = self.demo["labour"]
        mass, price = (sheet.area(FIRST, column, end - 1, column) for column in (6, 7))
        parts, hours, rate, before, tax, total = range(end, end + 6)
        lacking = f'=IF(SUMPRODUCT(--(LEN({sheet.area(FIRST, 8, end - 1, 8)})>0))>0,"incomplete","")'
        for row, label, entered, grams, money in [
                (parts, "Parts", None, f"=SUM({mass})", f"=SUM({price})"),
                (hours, "Fitting, hours", labour["hours"], None, None),
                (rate, "Fitting, price of an hour", labour["rate"], None, f'=IFERROR({sheet.ref(hours, 3)}*{sheet.ref(rate, 3)},"")'),
                (before, "Before tax", None, None, f"=SUM({sheet.ref(parts, 7)},{sheet.ref(rate, 7)})"),
                (tax, "Tax, per cent", labour["tax_percent"], None, f'=IFERROR({sheet.ref(before, 7)}*{sheet.ref(tax, 3)}/100,"")'),
                (total, "Total", None, None, f"=SUM({sheet.ref(before, 7)},{sheet.ref(tax, 7)})")]:
            style = "total" if entered is None else "label"
            for column in range(1, 9):
                sheet.put(row, column, None, style)
            sheet.put(row, 1, label, style)
            if entered is not None:
                sheet.put(row, 3, entered, "input_number")
            shown = "total_number" if entered is None else "output_number"
            sheet.put(row, 6, grams, shown, "#,##0")
            sheet.put(row, 7, money, shown, "#,##0.00")
        sheet.put(parts, 8, lacking, "total")
        sheet.put(total, 8, lacking, "total")
        self.total = sheet.ref(total, 7)
        sheet.put(end + 7, 1, "Verdict of the whole system", "label")
        sheet.put(end + 7, 2, f"={self.verdict}", "verdict")
        sheet.put(end + 9, 1, "Cautions", "group")
        sheet.merge(end + 10, 1, end + 10, 8, f"={self.cautions}", "caution")
        sheet.heights[end + 10] = 4.5


HOW_TO = [
    "How to quote",
    "1  Start the service and write its address at the left.",
    "2  Allow the file to update its links when the spreadsheet asks.",
    "3  Describe the vehicle here, in the yellow cells.",
    "4  Parts: the factory's drivers, the new ones and the amplifiers.",
    "5  Channels: a row each, with parts, network and position.",
    "6  Read Results and Comparison; a red verdict must be solved first.",
    "7  Totals: other items, hours and tax make the quote.",
]

# Groups of the comparison's answer, in the order in which they are taken apart.
COMPARED = {"totals": "totals", "before": "positions.before", "after": "positions.after", "change": "positions.change"}

# Key in the answer, heading, calculation, group in it, number format, width.
RESULTS = [
    ("name", "Channel", None, "", "", 3.2),
    ("load_ohm", "Rated load", "wiring-load", "", "0.00", 1.8),
    ("load_with_cable_ohm", "Load with cable", "wiring-load", "", "0.00", 1.8),
    ("clean_power_w", "Clean power", "rail-match", "", "0.0", 1.8),
    ("headroom_db", "Headroom", "rail-match", "", "0.0", 2),
    ("limiter_rms_v", "Limiter, RMS", "rail-match", "", "0.00", 1.9),
    ("limiter_peak_v", "Limiter, peak", "rail-match", "", "0.00", 1.9),
    ("programme_power_w", "Power with music", None, "", "0.0", 1.9),
    ("level_db_spl", "Level", "sound-level", "", "0.0", 1.9),
    ("peak_level_db_spl", "Peak level", "sound-level", "", "0.0", 1.9),
    ("largest_level_db_spl", "Largest level", "sound-level", "limits", "0.0", 1.9),
    ("holds", "held by", "sound-level", "limits", "", 2.5),
    ("distance_m", "Distance", "seat-delays", "channels", "0.00", 1.9),
    ("delay_ms", "Delay", "seat-delays", "channels", "0.00", 1.7),
    ("trim_db", "Trim by distance", "seat-delays", "channels", "0.0", 1.9),
    ("verdict", "Verdict", None, "", "", 2.1),
    ("says", "Faults, stops and warnings", None, "", "", 17),
]

# Heading, field of the factory's and the new side, field of the change, number formats of both.
COMPARISON = [
    ("Sensitivity, 1 W at 1 m", "one_watt_level_db_spl", "sensitivity_at_equal_power_db", "0.0", '0.0" dB"'),
    ("Sensitivity, 2.83 V at 1 m", "two_point_eight_three_volt_level_db_spl", "sensitivity_at_equal_voltage_db", "0.0", '0.0" dB"'),
    ("Power, continuous", "continuous_power_w", "continuous_power_db", "0", '0.0" dB"'),
    ("Amplifier power for each", "amplifier_power_w", "", "0.0", ""),
    ("Largest clean level", "largest_level_db_spl", "largest_level_db", "0.0", '0.0" dB"'),
    ("held by", "limited_by", "", "", ""),
    ("Lowest useful frequency", "lowest_useful_hz", "lower_reach_octaves", "0", '0.0" octaves"'),
    ("Cone area", "cone_area_cm2", "cone_area_cm2", "0", "0"),
    ("Air moved", "displacement_cm3", "displacement_cm3", "0", "0"),
    ("Mass", "mass_g", "mass_g", "#,##0", "#,##0"),
    ("Price", "price", "price", "#,##0.00", "#,##0.00"),
    ("Price for each dB", "", "price_per_db", "", "#,##0.00"),
]
