"""The quoting workbook: what a person reads of the answers."""
from contract import unit
from formulas import number, q, word, worst
from layout import AMPLIFIERS, CALCULATIONS, CHANNELS, COMPARISON, FINDINGS, FIRST, ITEMS, RESULTS
from questions import Questions


class Workbook(Questions):
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
