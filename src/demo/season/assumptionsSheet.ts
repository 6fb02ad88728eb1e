import type { Workbook } from "@cj-tech-master/excelts";
import { PERCENT_FORMAT } from "../../functions/cells/answerCell";
import { setPage } from "./pageSetup";
import { putInput, putLabel, putNote, putTitle, setWidths } from "./sheetStyle";

/** The as-of date of the sample: fixed, so that the sample shows the same results whenever it is opened. */
export const SAMPLE_DATE = "2026-06-01";
interface Assumption {
  readonly label: string;
  /** The defined name that the formulas use. */
  readonly name: string;
  readonly value: string | number;
  readonly format?: string;
  readonly explanation: string;
}

const ASSUMPTIONS: readonly Assumption[] = [
  {
    label: "Target",
    name: "Target",
    value: "full",
    explanation:
      "For the suggested payment with cushion: full, reasonable cause, or a percent of total tax.",
  },
  {
    label: "Cushion",
    name: "Cushion",
    value: 0.05,
    format: PERCENT_FORMAT,
    explanation: "Added in case the tax is higher: a percent of total tax, or dollars.",
  },
  {
    label: "Assumed rate",
    name: "AssumedRate",
    value: "latest",
    explanation: "Annual interest rate after the last published quarter: a percent, or latest.",
  },
];

/** Adds what applies to every client, each cell with a defined name that the formulas use. */
export function addAssumptionsSheet(workbook: Workbook): void {
  const sheet = workbook.addWorksheet("Assumptions");
  setWidths(sheet, [20, 14, 78]);
  putTitle(sheet, "Assumptions for every client");
  putNote(sheet, "A2", "The as-of date is on the first sheet.");
  for (const [index, { label, name, value, format, explanation }] of ASSUMPTIONS.entries()) {
    const row = index + 4;
    putLabel(sheet, `A${row}`, label);
    putInput(sheet, `B${row}`, value, format);
    sheet.getCell(`C${row}`).value = explanation;
    workbook.definedNames.add(`Assumptions!$B$${row}`, name);
  }
  setPage(sheet);
}
