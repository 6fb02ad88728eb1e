"""Prints for each workbook whether openpyxl opens it: null, or the reason why not."""

import json
import sys
import warnings

import openpyxl

warnings.simplefilter("ignore")


def reason(path):
    try:
        openpyxl.load_workbook(path, keep_vba=path.endswith("m"))
    except Exception as error:
        return repr(error)
    return None


with open(sys.argv[1], encoding="utf-8") as listed:
    print(json.dumps([reason(path) for path in json.load(listed)]))
