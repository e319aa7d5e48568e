"""Drives a headless LibreOffice: opens a workbook with its links allowed, recalculates, reads and writes cells."""
import os
import socket
import subprocess
import time
from pathlib import Path

import uno
from com.sun.star.beans import PropertyValue

SETTINGS = {
    ("Office.Common/Security/Scripting", "SecureURL"): "<it>{folder}</it>",  # links of files in this folder may be followed
    ("Office.Calc/Content/Update", "Link"): "0",  # always
    ("Setup/L10N", "ooSetupSystemLocale"): "{locale}",
}


def option(name, value):
    property = PropertyValue()
    property.Name, property.Value = name, value
    return property


class Calc:
    """One running LibreOffice in one language; ends with the block."""

    def __init__(self, folder, profile, locale):
        self.profile = Path(profile).resolve()
        (self.profile / "user").mkdir(parents=True, exist_ok=True)
        items = "".join(
            f'<item oor:path="/org.openoffice.{path}"><prop oor:name="{name}" oor:op="fuse"><value>'
            + value.format(folder=uno.systemPathToFileUrl(str(Path(folder).resolve())), locale=locale)
            + "</value></prop></item>" for (path, name), value in SETTINGS.items())
        (self.profile / "user" / "registrymodifications.xcu").write_text(
            '<?xml version="1.0" encoding="UTF-8"?><oor:items xmlns:oor="http://openoffice.org/2001/registry">'
            + items + "</oor:items>", encoding="utf-8")

    def __enter__(self):
        with socket.socket() as free:
            free.bind(("127.0.0.1", 0))
            port = free.getsockname()[1]
        self.process = subprocess.Popen(
            ["soffice", "--headless", "--norestore", "--nologo", "--nodefault",
             "-env:UserInstallation=" + uno.systemPathToFileUrl(str(self.profile)),
             f"--accept=socket,host=127.0.0.1,port={port};urp;"],
            stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, start_new_session=True)
        local = uno.getComponentContext()
        resolver = local.ServiceManager.createInstanceWithContext("com.sun.star.bridge.UnoUrlResolver", local)
        for _ in range(240):
            try:
                context = resolver.resolve(f"uno:socket,host=127.0.0.1,port={port};urp;StarOffice.ComponentContext")
                break
            except Exception:  # not listening yet
                time.sleep(0.25)
        else:
            raise TimeoutError("LibreOffice does not start")
        self.desktop = context.ServiceManager.createInstanceWithContext("com.sun.star.frame.Desktop", context)
        return self

    def __exit__(self, *_):
        try:
            self.desktop.terminate()
            self.process.wait(20)
        except Exception:  # it goes away while answering
            pass
        finally:
            if self.process.poll() is None:
                os.killpg(self.process.pid, 9)
                self.process.wait()

    def open(self, file):
        full_update = option("UpdateDocMode", 3)
        document = self.desktop.loadComponentFromURL(
            uno.systemPathToFileUrl(str(Path(file).resolve())), "_blank", 0, (option("Hidden", True), full_update))
        return Book(document)


class Book:
    def __init__(self, document):
        self.document = document

    def cell(self, ref):
        """A cell by its address, such as Results!$B$6."""
        sheet, _, place = ref.partition("!")
        return self.document.Sheets.getByName(sheet).getCellRangeByName(place.replace("$", ""))

    def read(self, ref):
        """A number, a text, or None when empty; an error of the spreadsheet is an exception."""
        cell = self.cell(ref)
        if cell.getError():
            raise ValueError(f"{ref} shows {cell.String}: {cell.Formula[:300]}")
        kind = cell.FormulaResultType2 if cell.Type.value == "FORMULA" else {"VALUE": 1, "TEXT": 2}.get(cell.Type.value, 0)
        return cell.Value if kind == 1 else cell.String or None

    def table(self, first, last):
        """What stands in an area, row by row."""
        area = f"{first.partition('!')[2]}:{last.partition('!')[2]}".replace("$", "")
        return self.document.Sheets.getByName(first.partition("!")[0]).getCellRangeByName(area).getDataArray()

    def values(self, name):
        """What stands in all cells of a sheet, by row and column; an empty one is an empty text."""
        sheet = self.document.Sheets.getByName(name)
        cursor = sheet.createCursor()
        cursor.gotoEndOfUsedArea(False)
        area = sheet.getCellRangeByPosition(0, 0, cursor.RangeAddress.EndColumn, cursor.RangeAddress.EndRow)
        return {(r, c): value for r, row in enumerate(area.getDataArray(), 1) for c, value in enumerate(row, 1)}

    def write(self, ref, value):
        cell = self.cell(ref)
        if isinstance(value, str):
            cell.String = value
        else:
            cell.Value = value

    def recalculate(self):
        self.document.calculateAll()

    def errors(self):
        """All cells that show an error of the spreadsheet."""
        found = []
        for name in self.document.Sheets.ElementNames:
            sheet = self.document.Sheets.getByName(name)
            for area in sheet.queryFormulaCells(4).RangeAddresses:  # 4 = errors
                for row in range(area.StartRow, area.EndRow + 1):
                    for column in range(area.StartColumn, area.EndColumn + 1):
                        cell = sheet.getCellByPosition(column, row)
                        found.append(f"{cell.AbsoluteName}: {cell.String}")
        return found

    def print(self, file, sheet=None):
        """All sheets that are shown, or one of them, as PDF."""
        for name in self.document.Sheets.ElementNames if sheet else ():
            if name != sheet:
                self.document.Sheets.getByName(name).IsVisible = False
                self.document.Sheets.getByName(name).setPrintAreas(())  # they are printed even of a sheet that is hidden
        self.document.storeToURL(uno.systemPathToFileUrl(str(Path(file).resolve())), (option("FilterName", "calc_pdf_Export"),))

    def close(self):
        self.document.close(True)
