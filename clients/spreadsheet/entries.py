"""What a person enters, and what is looked up for each channel. Every name of a field is looked up in the contract."""
from contract import unit
from formulas import Query, q
from layout import AMPLIFIERS, CHANNELS, DRIVERS, FIRST, HOW_TO, RESULTS
from sheets import Sheet


class Entries:
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

    def entries(self, sheet, top, columns, values, count):
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

    def answer_number(self, i, name):
        """Where the number of a channel stands on the sheet of results."""
        return self.results.ref(FIRST + i, self.result_column[name])

    def fill_lookup(self):
        sheet = self.lookup
        sheet.put(1, 1, "Lookup", "title")
        sheet.put(2, 1, "What the parts of each channel say. Nothing to enter here.", "plain")
        drivers = [key for key, *_ in self.driver_columns]
        amplifiers = [key for key, *_ in self.amplifier_columns if key not in ("mass_g", "price")]
        keys = ["name", "index", "factory row", "new row", "amplifier row", "distance_m", "power at the drivers",
                "programme power", "continuous power of all", "clean power for each"]
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
        if key == "power at the drivers":
            # What the amplifier gives, less the cable's part.
            power, load, with_cable = (self.answer_number(i, name) for name in ("clean_power_w", "load_ohm", "load_with_cable_ohm"))
            return f'=IFERROR({power}*{load}/{with_cable},"")'
        if key == "programme power":
            # A sine at full power has a crest factor of 2 in power; the programme's is larger by its own.
            return f'=IFERROR(2*{self.of(i, "power at the drivers")}/10^({self.cell["crest_factor_db"]}/10),"")'
        if key == "continuous power of all":
            return f'=IFERROR({self.of_channel(i, "count")}*{self.of(i, "new continuous_power_w")},"")'
        if key == "clean power for each":
            return f'=IFERROR({self.of(i, "power at the drivers")}/{self.of_channel(i, "count")},"")'
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
