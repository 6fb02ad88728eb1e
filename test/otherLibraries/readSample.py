"""Prints how openpyxl reads the charts, the conditional formats and the page of each sheet of a workbook."""

import json
import sys
import warnings

import openpyxl

warnings.simplefilter("ignore")


def references(chart):
    found = []
    for series in chart.series:
        found.append(series.val.numRef.f)
        source = series.cat
        found.append((source.strRef or source.numRef).f)
    return found


def sheet(one):
    formats = one.conditional_formatting
    return {
        "charts": [{"kind": type(chart).__name__, "references": references(chart)} for chart in one._charts],
        "conditionalFormats": sum(len(found.rules) for found in formats),
        "frozen": one.freeze_panes,
        "orientation": one.page_setup.orientation,
        "fitsWidth": bool(one.sheet_properties.pageSetUpPr.fitToPage) and one.page_setup.fitToWidth in (None, 1),
        # The file leaves out a number that is 1.
        "pagesTall": 1 if one.page_setup.fitToHeight is None else one.page_setup.fitToHeight,
        "headingRows": one.print_title_rows,
        "header": one.oddHeader.right.text,
        "footer": one.oddFooter.right.text,
    }


book = openpyxl.load_workbook(sys.argv[1])
print(json.dumps({one.title: sheet(one) for one in book.worksheets}))
