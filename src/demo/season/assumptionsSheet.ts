import type { Workbook } from "@cj-tech-master/excelts";
import { SEASON_DAY } from "./seasonLog";
import { DAY, PERCENT, putLabel, setWidths, styleInput, worksheetDate } from "./sheetStyle";

/** Adds the few choices that hold for every client, each with a name the formulas use. */
export function addAssumptionsSheet(workbook: Workbook): void {
  const sheet = workbook.addWorksheet("Assumptions");
  setWidths(sheet, [20, 14, 70]);
  const rows: [label: string, name: string, value: string | number | Date, why: string][] = [
    [
      "Aim",
      "Aim",
      "full",
      "full, protect, or a fraction of total tax: what to pay with the request",
    ],
    [
      "Cushion",
      "Cushion",
      0.05,
      "added against an estimate that proves low: a fraction of total tax, or dollars",
    ],
    [
      "Assumed rate",
      "AssumedRate",
      "latest",
      "interest beyond the last published quarter: a rate, or latest",
    ],
  ];
  rows.push([
    "Season on",
    "AsOf",
    worksheetDate(SEASON_DAY),
    "the day the season is looked at; fixed here, so that the sample stays as it is",
  ]);
  for (const [index, [label, name, value, why]] of rows.entries()) {
    const row = index + 1;
    putLabel(sheet, `A${row}`, label);
    const cell = sheet.getCell(`B${row}`);
    cell.value = value;
    if (typeof value === "number") cell.numFmt = PERCENT;
    if (value instanceof Date) cell.numFmt = DAY;
    styleInput(cell);
    sheet.getCell(`C${row}`).value = why;
    workbook.definedNames.add(`Assumptions!$B$${row}`, name);
  }
}
