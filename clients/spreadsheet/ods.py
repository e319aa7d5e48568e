"""Writes a workbook as OpenDocument, version 1.2."""
import re
import zipfile
from xml.sax.saxutils import escape, quoteattr

from openpyxl.utils import get_column_letter

from money import formats
from sheets import FONTS, GENERAL, LINE, MONEY, SIGNED, STYLES, VERDICTS, is_day, sections, translate

TYPE = "application/vnd.oasis.opendocument.spreadsheet"
NAMES = " ".join(f'xmlns:{short}="{long}"' for short, long in {
    **{name: f"urn:oasis:names:tc:opendocument:xmlns:{name}:1.0" for name in ("office", "style", "text", "table", "meta", "config")},
    "fo": "urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0",
    "number": "urn:oasis:names:tc:opendocument:xmlns:datastyle:1.0",
    "of": "urn:oasis:names:tc:opendocument:xmlns:of:1.2",
    "dc": "http://purl.org/dc/elements/1.1/",
    "ooo": "http://openoffice.org/2004/office",
    "calcext": "urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0"}.items())
PREFIXED = {"WEBSERVICE", "ENCODEURL"}
ANY_WIDTH = 2.3
LANDSCAPE = 'fo:page-width="29.7cm" fo:page-height="21cm" style:print-orientation="landscape"'
PORTRAIT = 'fo:page-width="21cm" fo:page-height="29.7cm" style:print-orientation="portrait"'
FAMILY = ", ".join(f"'{font}'" for font in FONTS)


def reference(text):
    sheet, _, area = text.rpartition("!")
    first, *last = area.split(":")
    return f"[{'$' + sheet if sheet else ''}.{first}{''.join(':.' + corner for corner in last)}]"


def formula(text):
    return "of:" + translate(text, reference, lambda name: ("COM.MICROSOFT." if name in PREFIXED else "") + name, ";")


def write(sheets, path, author):
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as file:
        # First and not packed, as the format asks for.
        file.writestr(zipfile.ZipInfo("mimetype"), TYPE)
        parts = {"content.xml": content(sheets), "styles.xml": named_styles(sheets), "settings.xml": settings(sheets),
                 "meta.xml": document("meta", f"<office:meta><dc:creator>{escape(author)}</dc:creator></office:meta>")}
        for name, text in parts.items():
            file.writestr(name, text)
        entries = "".join(f'<manifest:file-entry manifest:full-path="{name}" manifest:media-type="text/xml"/>' for name in parts)
        file.writestr("META-INF/manifest.xml", '<?xml version="1.0" encoding="UTF-8"?>\n<manifest:manifest '
                      'xmlns:manifest="urn:oasis:names:tc:opendocument:xmlns:manifest:1.0" manifest:version="1.2">'
                      f'<manifest:file-entry manifest:full-path="/" manifest:version="1.2" manifest:media-type="{TYPE}"/>'
                      f"{entries}</manifest:manifest>")


def document(root, body):
    return f'<?xml version="1.0" encoding="UTF-8"?>\n<office:document-{root} {NAMES} office:version="1.2">{body}</office:document-{root}>'


def number_style(name, pattern):
    """A gain and a loss have styles of their own."""
    if is_day(pattern):
        return day(name, pattern)
    (gain, body), (loss, _), (none, _) = sections(pattern)
    kinds = [("gain", gain, "&gt;"), ("loss", loss, "&lt;")]
    apart = "".join(plain_number(name + kind, body, sign) for kind, sign, _ in kinds)
    maps = "".join(f'<style:map style:condition="value(){side}0" style:apply-style-name="{name}{kind}"/>' for kind, _, side in kinds)
    return apart + plain_number(name, body, none, maps)


def day(name, pattern):
    parts = {"YYYY": '<number:year number:style="long"/>', "MM": '<number:month number:style="long"/>', "DD": '<number:day number:style="long"/>'}
    pieces = "".join(parts.get(piece, f"<number:text>{piece}</number:text>") for piece in re.split("(YYYY|MM|DD)", pattern) if piece)
    return f'<number:date-style style:name="{name}">{pieces}</number:date-style>'


def plain_number(name, pattern, sign="", maps=""):
    pattern, suffix, _ = (pattern + '""').split('"', 2)
    scaled = ' number:display-factor="1000"' if pattern.endswith(",") else ""
    pattern = pattern.rstrip(",")
    if pattern == GENERAL:
        return f'<number:number-style style:name="{name}"><number:text>{sign}</number:text><number:number number:min-integer-digits="1"/>{maps}</number:number-style>'
    decimals = len(pattern.partition(".")[2])
    grouping = ' number:grouping="true"' if "," in pattern else ""
    return (f'<number:number-style style:name="{name}"><number:text>{sign}</number:text><number:number number:min-integer-digits="1" '
            f'number:decimal-places="{decimals}" number:min-decimal-places="{decimals}"{grouping}{scaled}/>'
            f'<number:text>{suffix}</number:text>{maps}</number:number-style>')


def cell_style(name, style, number=""):
    text = f'fo:font-size="{style.size}pt" fo:color="#{style.ink}" fo:font-family="{FAMILY}"'
    text += ' fo:font-weight="bold"' * style.bold + ' fo:font-style="italic"' * style.italic
    cell = f'style:vertical-align="{"middle" if style.down == "center" else style.down}" fo:padding="0.08cm"'
    cell += f' fo:background-color="#{style.fill}"' if style.fill else ""
    cell += f' fo:border="0.5pt solid #{LINE}"' * style.border + ' fo:wrap-option="wrap"' * style.wrap
    cell += ' style:shrink-to-fit="true"' * style.shrink
    across = {"left": "start", "right": "end"}.get(style.across, style.across)
    data = f' style:data-style-name="{number}"' if number else ""
    return (f'<style:style style:name="{name}" style:family="table-cell"{data}>'
            f'<style:table-cell-properties {cell}/><style:paragraph-properties fo:text-align="{across}"/>'
            f"<style:text-properties {text}/></style:style>")


def named_styles(sheets):
    verdicts = "".join(
        f'<style:style style:name="verdict-{verdict}" style:family="table-cell">'
        f'<style:table-cell-properties fo:background-color="#{fill}"/></style:style>' for verdict, fill in VERDICTS.items())
    layouts, masters = "", ""
    for sheet in sheets:
        fit = f'style:scale-to="{sheet.scale()}%"' if sheet.scale() else f'style:scale-to-X="1" style:scale-to-Y="{int(sheet.one_page)}"'
        layouts += (f'<style:page-layout style:name="layout{sheet.name}"><style:page-layout-properties style:print-page-order="ltr" style:table-centering="horizontal" '
                    f'{PORTRAIT if sheet.portrait else LANDSCAPE} fo:margin="1.2cm" '
                    f'{fit}/><style:header-style/><style:footer-style/></style:page-layout>')
        masters += (f'<style:master-page style:name="page{sheet.name}" style:page-layout-name="layout{sheet.name}">'
                    '<style:header style:display="false"/><style:footer style:display="false"/></style:master-page>')
    sums = "".join(number_style(f"n{name}", shown) + f'<style:style style:name="{name}" style:family="table-cell" style:data-style-name="n{name}"/>'
                   for name, _, _, shown in money_styles())
    return document("styles", f"<office:styles>{verdicts}{sums}</office:styles><office:automatic-styles>{layouts}</office:automatic-styles>"
                    f"<office:master-styles>{masters}</office:master-styles>")


def content(sheets):
    cells = [cell for sheet in sheets for cell in sheet.cells.values()]
    numbers = sorted({cell.number for cell in cells if cell.number})
    looks = {(cell.style, cell.number) for cell in cells}
    widths = sorted({width for sheet in sheets for width in sheet.widths} | {ANY_WIDTH})
    heights = sorted({height for sheet in sheets for height in sheet.heights.values()})
    styles = "".join(number_style(f"n{i}", pattern) for i, pattern in enumerate(numbers))
    styles += "".join(cell_style(look(*key), STYLES[key[0]], f"n{numbers.index(key[1])}" if key[1] else "") for key in sorted(looks))
    styles += "".join(f'<style:style style:name="w{width}{page}" style:family="table-column">'
                      f'<style:table-column-properties style:column-width="{width}cm" fo:break-before="{page or "auto"}"/></style:style>'
                      for width in widths for page in ("", "page"))
    for name, height in [("fitting", 'style:use-optimal-row-height="true"')] + [
            (f"h{height}", f'style:row-height="{height}cm" style:use-optimal-row-height="false"') for height in heights]:
        styles += "".join(f'<style:style style:name="{name}{page}" style:family="table-row"><style:table-row-properties {height} '
                          f'fo:break-before="{page or "auto"}"/></style:style>' for page in ("", "page"))
    styles += "".join(f'<style:style style:name="t{sheet.name}" style:family="table" style:master-page-name="page{sheet.name}">'
                      f'<style:table-properties table:display="{str(not sheet.hidden).lower()}"/></style:style>' for sheet in sheets)
    rules = Rules()
    tables = "".join(table(sheet, rules) for sheet in sheets)
    return document("content", f"<office:automatic-styles>{styles}</office:automatic-styles><office:body><office:spreadsheet>"
                    # A name is looked for as it stands and yes may be Yes, as in the other format.
                    '<table:calculation-settings table:case-sensitive="false" table:use-regular-expressions="false" table:use-wildcards="true" '
                    'table:search-criteria-must-apply-to-whole-cell="true"/>'
                    f"<table:content-validations>{rules.xml()}</table:content-validations>{tables}</office:spreadsheet></office:body>")


def look(style, number):
    """The name of a cell's style."""
    return style + "".join(c if c.isalnum() else "_" for c in number)


class Rules:
    """What may be chosen in cells and what is said when one is entered; each once."""

    def __init__(self):
        self.known = {}

    def name(self, cell, place):
        if not cell.help and not cell.choices:
            return ""
        key = cell.help, tuple(cell.choices) if isinstance(cell.choices, list) else cell.choices, cell.refusal
        name, _ = self.known.setdefault(key, (f"rule{len(self.known)}", place))
        return f' table:content-validation-name="{name}"'

    def xml(self):
        return "".join(self.rule(name, place, *key) for key, (name, place) in self.known.items())

    @staticmethod
    def rule(name, place, help, choices, refusal):
        listed = ""
        if choices:
            entries = reference(choices) if isinstance(choices, str) else ";".join(f'"{choice}"' for choice in choices)
            listed = f" table:condition={quoteattr(f'of:cell-content-is-in-list({entries})')} table:display-list=\"unsorted\""
        shown = f'<table:help-message table:display="true"><text:p>{escape(help)}</text:p></table:help-message>' if help else ""
        refused = (f'<table:error-message table:display="true" table:message-type="stop"><text:p>{escape(refusal)}</text:p></table:error-message>'
                   if refusal else '<table:error-message table:display="false"/>')
        return (f'<table:content-validation table:name="{name}"{listed} table:allow-empty-cell="true" '
                f'table:base-cell-address="{place}">{shown}{refused}</table:content-validation>')


def table(sheet, rules):
    rows, columns = sheet.size()
    spans = {(r, c): (last_r - r + 1, last_c - c + 1) for r, c, last_r, last_c in sheet.merged}
    covered = {(r, c) for first_r, first_c, last_r, last_c in sheet.merged
               for r in range(first_r, last_r + 1) for c in range(first_c, last_c + 1)} - set(spans)
    not_printed = "" if sheet.printed else ' table:print="false"'
    out = [f'<table:table table:name="{sheet.name}" table:style-name="t{sheet.name}"{not_printed}>']
    out += column_list(sheet, columns)
    for row in range(1, rows + 1):
        style = (f"h{sheet.heights[row]}" if row in sheet.heights else "fitting") + "page" * (row in sheet.row_breaks)
        out.append(f'<table:table-row table:style-name="{style}">')
        for column in range(1, columns + 1):
            cell = sheet.cells.get((row, column))
            place = f"{sheet.name}.{get_column_letter(column)}{row}"
            out.append(one(cell, rules.name(cell, place) if cell else "", spans.get((row, column)), (row, column) in covered))
        out.append("</table:table-row>")
    return "".join(out) + conditional(sheet) + "</table:table>"


def column_list(sheet, columns):
    kept = sheet.freeze[1] if sheet.breaks else 0
    widths = sheet.widths + [ANY_WIDTH] * (columns - len(sheet.widths))
    out = [f'<table:table-column table:style-name="w{width}{"page" * (column in sheet.breaks)}"/>' for column, width in enumerate(widths, 1)]
    return ["<table:table-header-columns>", *out[:kept], "</table:table-header-columns>", *out[kept:]] if kept else out


def one(cell, rule, span, covered):
    tag = "table:covered-table-cell" if covered else "table:table-cell"
    if cell is None:
        return f"<{tag}/>"
    start = f'<{tag} table:style-name="{look(cell.style, cell.number)}"{rule}'
    if span:
        start += f' table:number-rows-spanned="{span[0]}" table:number-columns-spanned="{span[1]}"'
    value = cell.value
    if value is None:
        return start + "/>"
    if isinstance(value, str) and value.startswith("="):
        return start + f" table:formula={quoteattr(formula(value))}/>"
    if isinstance(value, str):
        lines = "".join(f"<text:p>{escape(line)}</text:p>" for line in value.split("\n"))
        return start + f' office:value-type="string">{lines}</{tag}>'
    return start + f' office:value-type="float" office:value="{value!r}"/>'


def money_styles():
    """Name, format in most currencies, decimals, format with these."""
    return [(f"money{n}", *form) for n, form in enumerate(formats())]


def conditional(sheet):
    """What depends on what stands in a cell, or on the currency."""
    listed = [conditions(sheet, sheet.judged(), [(f"verdict-{verdict}", f'="{sheet.verdicts.get(verdict, verdict)}"') for verdict in VERDICTS])]
    for form in (MONEY, SIGNED):
        listed.append(conditions(sheet, sheet.sums(form), [(name, f"formula-is({reference(sheet.decimals)}={decimals})")
                                                           for name, usual, decimals, _ in money_styles() if usual == form]))
    return f'<calcext:conditional-formats>{"".join(listed)}</calcext:conditional-formats>' if any(listed) else ""


def conditions(sheet, cells, styles):
    """Each style with the condition under which it holds."""
    places = [f"{sheet.name}.{get_column_letter(c)}{r}" for r, c in cells]
    if not places:
        return ""
    each = "".join(f'<calcext:condition calcext:apply-style-name="{style}" calcext:value={quoteattr(condition)} calcext:base-cell-address="{places[0]}"/>'
                   for style, condition in styles)
    return f'<calcext:conditional-format calcext:target-range-address="{" ".join(places)}">{each}</calcext:conditional-format>'


def settings(sheets):
    def item(name, kind, value):
        return f'<config:config-item config:name="{name}" config:type="{kind}">{value}</config:config-item>'

    views = ""
    for sheet in sheets:
        rows, columns = sheet.freeze
        split = "".join(item(f"{way}SplitMode", "short", 2) + item(f"{way}SplitPosition", "int", at)
                        for way, at in (("Horizontal", columns), ("Vertical", rows)) if at)
        pane = 2 if rows else 1 if columns else 0
        pane = 3 if rows and columns else pane
        views += (f'<config:config-item-map-entry config:name="{sheet.name}">{split}{item("ActiveSplitRange", "short", pane)}'
                  f'{item("PositionRight", "int", columns)}{item("PositionBottom", "int", rows)}{item("ShowGrid", "boolean", "false")}'
                  "</config:config-item-map-entry>")
    return document("settings", '<office:settings><config:config-item-set config:name="ooo:view-settings">'
                    '<config:config-item-map-indexed config:name="Views"><config:config-item-map-entry>'
                    f'{item("ViewId", "string", "view1")}<config:config-item-map-named config:name="Tables">{views}'
                    f'</config:config-item-map-named>{item("ActiveTable", "string", sheets[0].name)}'
                    "</config:config-item-map-entry></config:config-item-map-indexed>"
                    "</config:config-item-set></office:settings>")
