import type { Workbook } from "@cj-tech-master/excelts";
import { addClientChoice, CHOICE } from "./clientChoice";
import { clientBlock, clientColumn } from "./clientsSheet";
import { DAY, putFormula, putLabel, setWidths } from "./sheetStyle";

/** The sheet's name. */
export const REQUEST_SHEET = "Request";

const LOGGED = ["Asked on", "Confirmed on", "Rejected on", "Filed on", "Still missing"] as const;

/** Adds the sheet of one client's request: its lines, how it goes in and where to, what is wrong, the state, the words for the client. */
export function addRequestSheet(workbook: Workbook): void {
  const sheet = workbook.addWorksheet(REQUEST_SHEET);
  setWidths(sheet, [30, 34, 14, 40, 40, 52, 40]);
  addClientChoice(sheet, "Larch");
  const names = clientBlock(clientColumn("Client"));
  for (const [index, heading] of LOGGED.entries()) {
    sheet.getCell(`D${index + 2}`).value = heading;
    const found = `XLOOKUP($B$1,${names},${clientBlock(clientColumn(heading))})`;
    // A blank day looked up would come as 0, and be shown as a day of 1900.
    const text = heading === "Still missing";
    putFormula(
      sheet,
      `E${index + 2}`,
      text ? `${found}&""` : `IF(${found}=0,"",${found})`,
      text ? "General" : DAY
    );
  }
  const { taxYear, state, filerType, totalTax, payments, paidWithRequest, filedOn } = CHOICE;
  const [asked, confirmed, rejected, filed, missing] = ["$E$2", "$E$3", "$E$4", "$E$5", "$E$6"];
  const record = `${asked},${confirmed},${rejected},${filed}`;
  putLabel(sheet, "D8", "Stage");
  putFormula(sheet, "E8", `EXT.STAGE(${taxYear},AsOf,${record},${state},${filerType})`);
  putLabel(sheet, "D9", "Next");
  putFormula(sheet, "E9", `EXT.NEXTDATE(${taxYear},AsOf,${record},,${state},${filerType})`);
  putLabel(sheet, "D10", "On paper, mail to");
  putFormula(sheet, "E10", `EXT.MAILTO(${taxYear},${state},${paidWithRequest},,${filerType})`);
  putLabel(sheet, "A13", "Lines of the request");
  putFormula(sheet, "A14", `EXT.LINES(${totalTax},${payments},${paidWithRequest},${filerType})`);
  putLabel(sheet, "A22", "Ways to make it, on the day it was made or April 10");
  putFormula(
    sheet,
    "A23",
    `EXT.METHODLINES(${taxYear},${paidWithRequest},IF(${asked}="",DATE(2026,4,10),${asked}),${rejected},${state},${filerType})`
  );
  putLabel(sheet, "A28", "What is wrong or risky");
  putFormula(
    sheet,
    "A29",
    `EXT.ISSUES(${taxYear},${totalTax},${payments},${paidWithRequest},AsOf,${record},${state},${filerType})`
  );
  putLabel(sheet, "A40", "The state return");
  putFormula(sheet, "A41", `EXT.STATERULE(${taxYear},${state},"yes",,,"yes")`);
  putLabel(sheet, "A54", "For the client");
  putFormula(
    sheet,
    "A55",
    `EXT.MEMO(${taxYear},${totalTax},${payments},${paidWithRequest},"full",${asked},${filedOn},${missing},${state},${filerType},AssumedRate)`
  );
  sheet.mergeCells("A55:F58");
  sheet.getCell("A55").alignment = { wrapText: true, vertical: "top" };
}
