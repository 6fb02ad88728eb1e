import type { Workbook } from "@cj-tech-master/excelts";
import { MONEY_FORMAT } from "../../functions/cells/answerCell";
import { addClientChoice, BELOW_CHOICE, CHOICE } from "./clientChoice";
import type { SampleClient } from "./clients";
import { CUSHION_HEADING } from "./columnFormulasSheet";
import { setPage } from "./pageSetup";
import { putFormula, putLabel, setWidths, styleHeading, styleTotal } from "./sheetStyle";

/** The sheet's name. */
const SUGGESTED_PAYMENT_SHEET = "Suggested payment";

const TOP = BELOW_CHOICE + 1;

/** Adds what a client is to pay with the request, without and with the cushion, line by line. */
export function addSuggestedPaymentSheet(
  workbook: Workbook,
  clients: readonly SampleClient[]
): void {
  const sheet = workbook.addWorksheet(SUGGESTED_PAYMENT_SHEET);
  setWidths(sheet, [44, 20, 20, 70]);
  addClientChoice(sheet, clients, SUGGESTED_PAYMENT_SHEET, "Bracken");
  const { totalTax, payments, paidWithRequest } = CHOICE;
  const amounts = `${totalTax},${payments}`;
  const lines: readonly (readonly [label: string, own: string, cushioned: string, why: string])[] =
    [
      ["Estimated total tax (line 4)", totalTax, totalTax, ""],
      ["Less total payments (line 5)", `-${payments}`, `-${payments}`, ""],
      [
        "Balance due (line 6)",
        `EXT.SHORTFALL(${amounts})`,
        `EXT.SHORTFALL(${amounts})`,
        "Not less than zero.",
      ],
      [
        "Needed for the 90% test",
        `EXT.SUGGEST(${amounts},"reasonable cause")`,
        `EXT.SUGGEST(${amounts},"reasonable cause")`,
        "With less, the failure-to-pay penalty starts on the payment due date.",
      ],
      [
        "Suggested payment",
        `EXT.SUGGEST(${amounts})`,
        `EXT.SUGGEST(${amounts},Target,Cushion)`,
        "The cushion is in case the tax is higher than the estimate. Set it on Assumptions.",
      ],
      ["Less paid with the request (line 7)", `-${paidWithRequest}`, `-${paidWithRequest}`, ""],
    ];
  putLabel(sheet, `A${TOP - 1}`, "Calculation of the suggested payment");
  sheet.getCell(`A${TOP}`).value = "Line";
  sheet.getCell(`B${TOP}`).value = "Without cushion";
  sheet.getCell(`C${TOP}`).value = { formula: CUSHION_HEADING };
  sheet.getCell(`D${TOP}`).value = "Explanation";
  for (const column of ["A", "B", "C", "D"]) styleHeading(sheet.getCell(`${column}${TOP}`));
  sheet.getRow(TOP).height = 32;
  for (const [index, [label, own, cushioned, why]] of lines.entries()) {
    const row = TOP + 1 + index;
    sheet.getCell(`A${row}`).value = label;
    putFormula(sheet, `B${row}`, own, MONEY_FORMAT);
    putFormula(sheet, `C${row}`, cushioned, MONEY_FORMAT);
    sheet.getCell(`D${row}`).value = why || null;
    sheet.getCell(`D${row}`).alignment = { horizontal: "left", indent: 1 };
  }
  const total = TOP + lines.length + 1;
  sheet.getCell(`A${total}`).value = "Still to pay";
  for (const column of ["B", "C"])
    putFormula(
      sheet,
      `${column}${total}`,
      `MAX(${column}${total - 2}+${column}${total - 1},0)`,
      MONEY_FORMAT
    );
  styleTotal(sheet, total, 4);
  setPage(sheet, { hasClientTitle: true });
}
