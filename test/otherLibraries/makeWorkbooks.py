"""Makes workbooks with two libraries. Each has a formula of the fixture add-in in Sheet!B1, which doubles A1, and one in C1 on it."""

import json
import sys
from pathlib import Path

import openpyxl
import xlsxwriter
from openpyxl.chart import BarChart, Reference
from openpyxl.comments import Comment
from openpyxl.formatting.rule import CellIsRule, DataBarRule, IconSetRule
from openpyxl.styles import Font, PatternFill
from openpyxl.worksheet.datavalidation import DataValidation
from openpyxl.worksheet.table import Table

folder = Path(sys.argv[1])
made = []


def with_openpyxl(name, fill):
    book = openpyxl.Workbook()
    sheet = book.active
    sheet.title = "Sheet"
    sheet["A1"], sheet["B1"], sheet["C1"] = 21, "=_xldudf_EXT_DOUBLE(A1)", "=B1+1"
    fill(book, sheet)
    path = folder / f"openpyxl-{name}.xlsx"
    book.save(path)
    made.append(path.name)


def with_xlsxwriter(name, fill, ending="xlsx"):
    path = folder / f"xlsxwriter-{name}.{ending}"
    book = xlsxwriter.Workbook(str(path))
    sheet = book.add_worksheet("Sheet")
    sheet.write("A1", 21)
    sheet.write_formula("B1", "=_xldudf_EXT_DOUBLE(A1)")
    sheet.write_formula("C1", "=B1+1")
    fill(book, sheet)
    book.close()
    made.append(path.name)


def comments(_book, sheet):
    sheet["B2"].comment = Comment("A note on an empty cell", "Preparer")


def rules(_book, sheet):
    red = PatternFill(bgColor="FFFF0000")
    sheet.conditional_formatting.add("A1:A9", CellIsRule(operator="lessThan", formula=["0"], fill=red))
    sheet.conditional_formatting.add("A1:A9", DataBarRule("formula", "$A$1", "max", None, "FF638EC6"))
    sheet.conditional_formatting.add("A1:A9", IconSetRule("3Arrows", "formula", ["$A$1", "$A$2", "$A$3"]))
    limit = DataValidation(type="decimal", operator="between", formula1="A1", formula2="A1*2")
    sheet.add_data_validation(limit)
    limit.add("D1:D9")


def chart(_book, sheet):
    for row in range(2, 6):
        sheet.cell(row, 1, row)
    bars = BarChart()
    bars.add_data(Reference(sheet, min_col=1, min_row=1, max_row=5))
    sheet.add_chart(bars, "E2")


def table(_book, sheet):
    for row in (("Name", "Amount", "Twice"), ("a", 3, "=_xldudf_EXT_DOUBLE(Grid[[#This Row],[Amount]])")):
        sheet.append(row)
    sheet.add_table(Table(displayName="Grid", ref="A2:C3"))


def layout(book, sheet):
    sheet["A1"].font = Font(bold=True, name="Courier New")
    sheet.column_dimensions["B"].width = 30
    sheet.row_dimensions[3].hidden = True
    sheet.merge_cells("D2:E3")
    sheet.freeze_panes = "B2"
    sheet.auto_filter.ref = "A1:C1"
    sheet.protection.set_password("secret")
    sheet.oddHeader.center.text = "&[Page]"
    bars = BarChart()
    bars.add_data(Reference(sheet, min_col=1, min_row=1, max_row=2))
    book.create_chartsheet("Chart", 0).add_chart(bars)


def plain(_book, _sheet):
    pass


def drawings(book, sheet):
    sheet.insert_textbox("E1", "A text box")
    sheet.write_comment("B5", "A note")
    sheet.insert_button("E20", {"caption": "Run"})
    sheet.add_sparkline("F1", {"range": "Sheet!A1:C1"})
    book.add_worksheet("Hidden").hide()


def arrays(_book, sheet):
    sheet.write_dynamic_array_formula("E1", "=_xldudf_EXT_DOUBLE(A1:A2)")
    sheet.write_array_formula("G1:G2", "{=_xldudf_EXT_DOUBLE(A1:A2)}")
    sheet.write("A2", 4)


def formats(book, sheet):
    money = book.add_format({"num_format": "$#,##0.00", "border": 1})
    sheet.write_formula("D1", "=_xldudf_EXT_DAY(A1)", money)
    sheet.write_formula("D2", "=_xldudf_EXT_DAY(A1)")
    sheet.write_rich_string("A3", "plain ", book.add_format({"bold": True}), "bold")
    sheet.write_url("A4", "https://example.invalid/", string="link")
    sheet.conditional_format("A1:A9", {"type": "data_bar", "data_bar_2010": True})
    sheet.autofilter("A1:C5")
    book.define_name("Rate", "=0.07")


def macros(book, _sheet):
    binary = folder / "vbaProject.bin"
    binary.write_bytes(b"not a real macro")
    book.add_vba_project(str(binary))


for fill in (plain, comments, rules, chart, table, layout):
    with_openpyxl(fill.__name__, fill)
for fill in (plain, drawings, arrays, formats):
    with_xlsxwriter(fill.__name__, fill)
with_xlsxwriter("macros", macros, "xlsm")
print(json.dumps(made))
