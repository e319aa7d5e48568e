"""Every question to the service, and its answer taken apart."""
from entries import Entries
from formulas import FINDING, LINE, Query, between, q
from layout import CALCULATIONS, CAUTIONS, CHANNELS, COMPARED, FINDINGS, FIRST, LONGEST_URL


class Questions(Entries):
    def call_row(self, i, calculation):
        return FIRST + i * len(CALCULATIONS) + CALCULATIONS.index(calculation)

    def answer(self, i, calculation):
        return self.calls.ref(self.call_row(i, calculation), 6)

    def part(self, row, n):
        return self.split.ref(row, 2 + FINDINGS + 1 + CAUTIONS * 2 + n)

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
                length = 2000 if n < CAUTIONS else 32000  # the last place takes all that is left
                line = sheet.put(row, safety + n, f'=TRIM(MID(SUBSTITUTE({cautions},""",""",REPT(" ",2000)),{(n - 1) * 2000 + 1},{length}))', "machine")
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
