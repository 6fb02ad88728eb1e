import type { Workbook } from "@cj-tech-master/excelts";
import { DATE } from "../../addin/clientList";
import { addClientChoice, CHOICE, putLookup } from "./clientChoice";
import type { SampleClient } from "./clients";
import { putFormula, putLabel, setWidths } from "./sheetStyle";

/** What is recorded of the request, in the cells E2 to E8. */
const RECORDED = [
  ["Requested on", DATE],
  ["Confirmed on", DATE],
  ["Rejected on", DATE],
  ["Filed on", DATE],
  ["Still needed", "General"],
  ["Postponement begins", DATE],
  ["Postponement ends", DATE],
] as const;
const REQUESTED = "$E$2";
const REJECTED = "$E$4";
const STILL_NEEDED = "$E$6";
const RECORD = `${REQUESTED},$E$3,${REJECTED},$E$5`;
const POSTPONEMENT = "$E$7,$E$8";

/** Adds the sheet of one client's request: lines, methods, mailing address, issues, state return and letter. */
export function addRequestSheet(workbook: Workbook, clients: readonly SampleClient[]): void {
  const sheet = workbook.addWorksheet("Extension request");
  setWidths(sheet, [30, 34, 14, 40, 40, 52, 40]);
  addClientChoice(sheet, clients, "Larch");
  for (const [index, fact] of RECORDED.entries())
    putLookup(sheet, clients, ["D", "E"], index + 2, fact);
  const { taxYear, totalTax, payments, paidWithRequest, paidOn, filedOn, filerType } = CHOICE;
  const filer = `${CHOICE.state},${filerType}`;
  const amounts = `${totalTax},${payments},${paidWithRequest}`;
  const labeled: readonly (readonly [label: string, cell: string, at: string, formula: string])[] =
    [
      ["Status", "D10", "E10", `EXT.STAGE(${taxYear},AsOf,${RECORD},${filer},${POSTPONEMENT})`],
      [
        "Next deadline",
        "D11",
        "E11",
        `EXT.NEXTDATE(${taxYear},AsOf,${RECORD},,${filer},${POSTPONEMENT})`,
      ],
      [
        "Mailing address (paper)",
        "D12",
        "E12",
        `EXT.MAILTO(${taxYear},${CHOICE.state},${paidWithRequest},,${filerType})`,
      ],
      ["Form 4868, lines 4 to 9", "A13", "A14", `EXT.LINES(${taxYear},${amounts},${filerType})`],
      [
        "Ways to request the extension (on the request date, or April 10)",
        "A22",
        "A23",
        `EXT.METHODLINES(${taxYear},${paidWithRequest},IF(${REQUESTED}="",DATE(2026,4,10),${REQUESTED}),${REJECTED},${filer},${POSTPONEMENT})`,
      ],
      [
        "Issues with this request",
        "A28",
        "A29",
        `EXT.ISSUES(${taxYear},${amounts},AsOf,${RECORD},${filer},,,,,,${POSTPONEMENT})`,
      ],
      ["State return", "A40", "A41", `EXT.STATERULE(${taxYear},${CHOICE.state},"yes",,,"yes")`],
      [
        "Letter to client",
        "A60",
        "A61",
        `EXT.MEMO(${taxYear},${amounts},AsOf,${RECORD},,${filedOn},${paidOn},"full",${STILL_NEEDED},${filer},AssumedRate,${POSTPONEMENT})`,
      ],
    ];
  for (const [label, cell, at, formula] of labeled) {
    putLabel(sheet, cell, label);
    putFormula(sheet, at, formula);
  }
  sheet.mergeCells("A61:F66");
  sheet.getCell("A61").alignment = { wrapText: true, vertical: "top" };
}
