"""Prints the cells of a workbook as openpyxl reads them, or why it cannot."""

import json
import sys
import warnings

import openpyxl

warnings.simplefilter("ignore")


def plain(value):
    if isinstance(value, (int, float, bool, str)) or value is None:
        return value
    return getattr(value, "text", None) or str(value)


def cells(path, data_only):
    book = openpyxl.load_workbook(path, data_only=data_only)
    return {
        sheet.title: {
            cell.coordinate: plain(cell.value)
            for row in sheet.iter_rows()
            for cell in row
            if cell.value is not None
        }
        for sheet in book.worksheets
    }


try:
    path = sys.argv[1]
    result = {"error": None, "values": cells(path, True), "contents": cells(path, False)}
except Exception as error:
    result = {"error": repr(error), "values": {}, "contents": {}}
print(json.dumps(result))
