import type { Workbook } from "@cj-tech-master/excelts";
import { DATE } from "../../addin/clientList";
import { PERCENT, putInput, putLabel, setWidths, worksheetDate } from "./sheetStyle";

/** The as-of date of the sample: fixed, so that the sample shows the same results whenever it is opened. */
export const SAMPLE_DATE = "2026-06-01";

interface Assumption {
  readonly label: string;
  /** The defined name that the formulas use. */
  readonly name: string;
  readonly value: string | number | Date;
  readonly format?: string;
  readonly explanation: string;
}

const ASSUMPTIONS: readonly Assumption[] = [
  {
    label: "Target",
    name: "Target",
    value: "full",
    explanation: "What to pay with the request: full, reasonable cause, or a percent of total tax.",
  },
  {
    label: "Cushion",
    name: "Cushion",
    value: 0.05,
    format: PERCENT,
    explanation: "Added in case the tax is higher: a percent of total tax, or dollars.",
  },
  {
    label: "Assumed rate",
    name: "AssumedRate",
    value: "latest",
    explanation: "Annual interest rate after the last published quarter: a percent, or latest.",
  },
  {
    label: "As-of date",
    name: "AsOf",
    value: worksheetDate(SAMPLE_DATE),
    format: DATE,
    explanation: "Fixed in this sample, so that it always shows the same results.",
  },
];

/** Adds what applies to every client, each cell with a defined name that the formulas use. */
export function addAssumptionsSheet(workbook: Workbook): void {
  const sheet = workbook.addWorksheet("Assumptions");
  setWidths(sheet, [20, 14, 78]);
  for (const [index, { label, name, value, format, explanation }] of ASSUMPTIONS.entries()) {
    const row = index + 1;
    putLabel(sheet, `A${row}`, label);
    putInput(sheet, `B${row}`, value, format);
    sheet.getCell(`C${row}`).value = explanation;
    workbook.definedNames.add(`Assumptions!$B$${row}`, name);
  }
}
