import type { Worksheet } from "@cj-tech-master/excelts";
import { DATE, MONEY, WHOLE_NUMBER } from "../../addin/clientList";
import type { SampleClient } from "./clients";
import { clientBlock } from "./clientsSheet";
import { putFormula, putInput, putLabel } from "./sheetStyle";

const TEXT = "General";

/** Where a sheet shows the facts of the chosen client, by the name of the argument. */
export const CHOICE = {
  taxYear: "$B$2",
  state: "$B$3",
  filerType: "$B$4",
  totalTax: "$B$5",
  payments: "$B$6",
  paidWithRequest: "$B$7",
  validExtension: "$B$8",
  paidOn: "$B$9",
  filedOn: "$B$10",
  balanceDue: "$B$11",
} as const;

/** Heading and cell format of each fact, in the order of `CHOICE`. */
const LOOKED_UP: readonly (readonly [heading: string, format: string])[] = [
  ["Tax year or fiscal year end", WHOLE_NUMBER],
  ["State", TEXT],
  ["Filer type", TEXT],
  ["Estimated total tax", MONEY],
  ["Total payments", MONEY],
  ["Paid with request", MONEY],
  ["Valid extension", TEXT],
  ["Planned payment date", DATE],
  ["Planned filing date", DATE],
  ["Balance due", MONEY],
];

/** Looks up a fact of the chosen client in a row of a sheet, with its heading in the first of two columns. */
export function putLookup(
  sheet: Worksheet,
  clients: readonly SampleClient[],
  [labelColumn, column]: readonly [string, string],
  row: number,
  [heading, format]: readonly [heading: string, format: string]
): void {
  sheet.getCell(`${labelColumn}${row}`).value = heading;
  const block = (name: string): string => clientBlock(clients, name);
  const found = `XLOOKUP($B$1,${block("Client")},${block(heading)})`;
  // XLOOKUP returns 0 for a blank cell, which would be shown as "0" or as a date in 1900.
  const byFormat = new Map([
    [TEXT, `${found}&""`],
    [DATE, `IF(${found}=0,"",${found})`],
  ]);
  putFormula(sheet, `${column}${row}`, byFormat.get(format) ?? found, format);
}

/** Adds a cell in which a client is chosen, and below it the client's facts. */
export function addClientChoice(
  sheet: Worksheet,
  clients: readonly SampleClient[],
  client: string
): void {
  putLabel(sheet, "A1", "Client");
  putInput(sheet, "B1", client);
  sheet.getCell("B1").dataValidation = {
    type: "list",
    allowBlank: false,
    formulae: [clientBlock(clients, "Client")],
  };
  for (const [index, fact] of LOOKED_UP.entries())
    putLookup(sheet, clients, ["A", "B"], index + 2, fact);
}
