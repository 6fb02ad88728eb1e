import type { Worksheet } from "@cj-tech-master/excelts";
import { WHOLE_NUMBER } from "../../addin/list/clientList";
import { DATE_FORMAT, MONEY_FORMAT } from "../../functions/cells/answerCell";
import type { SampleClient } from "./clients";
import { clientBlock } from "./columnFormulasSheet";
import { putFormula, putInput, putLabel, putTitle } from "./sheetStyle";

const TEXT = "General";

/** Heading and cell format of each fact of a client, in the order of `clientFacts`. */
const LOOKED_UP: readonly (readonly [heading: string, format: string])[] = [
  ["Tax year or fiscal year end", WHOLE_NUMBER],
  ["State", TEXT],
  ["Filer type", TEXT],
  ["Estimated total tax", MONEY_FORMAT],
  ["Total payments", MONEY_FORMAT],
  ["Paid with request", MONEY_FORMAT],
  ["Balance due", MONEY_FORMAT],
  ["Extension counts", TEXT],
  ["Paid by the due date", MONEY_FORMAT],
  ["Payment date used", DATE_FORMAT],
  ["Filing date used", DATE_FORMAT],
  ["Postponement begins", DATE_FORMAT],
  ["Postponement ends", DATE_FORMAT],
];

/** Rows of the client and the facts. */
export const CHOICE_ROWS = 1 + LOOKED_UP.length;

/** The cell with the chosen client and the cells with the client's facts, as formulas of the same sheet spell them. */
export function clientFacts(column: string, row: number) {
  const cell = (index: number): string => `$${column}$${row + index}`;
  return {
    client: cell(0),
    taxYear: cell(1),
    state: cell(2),
    filerType: cell(3),
    totalTax: cell(4),
    payments: cell(5),
    paidWithRequest: cell(6),
    balanceDue: cell(7),
    validExtension: cell(8),
    paidOnTime: cell(9),
    paidOn: cell(10),
    filedOn: cell(11),
    postponement: `${cell(12)},${cell(13)}`,
    filer: `${cell(2)},${cell(3)}`,
  };
}

/** Where most sheets have the chosen client: below the title. */
export const CHOICE = clientFacts("B", 3);
/** The first free row below the facts. */
export const BELOW_CHOICE = 3 + CHOICE_ROWS + 1;

/** Looks up a fact of a client in a row of a sheet, with its heading in the first of two columns. */
export function putLookup(
  sheet: Worksheet,
  clients: readonly SampleClient[],
  [labelColumn, column]: readonly [string, string],
  row: number,
  [heading, format]: readonly [heading: string, format: string],
  client: string
): void {
  sheet.getCell(`${labelColumn}${row}`).value = heading;
  const block = (name: string): string => clientBlock(clients, name);
  const found = `XLOOKUP(${client},${block("Client")},${block(heading)})`;
  // XLOOKUP returns 0 for a blank cell, which would be shown as "0" or as a date in 1900.
  const byFormat = new Map([
    [TEXT, `${found}&""`],
    [DATE_FORMAT, `IF(${found}=0,"",${found})`],
  ]);
  putFormula(sheet, `${column}${row}`, byFormat.get(format) ?? found, format);
  // A year that ends in another month is a date.
  if (heading.startsWith("Tax year")) {
    putFormula(
      sheet,
      `${column}${row}`,
      `IF(${found}>9999,TEXT(${found},"${DATE_FORMAT}"),${found})`
    );
  }
  sheet.getCell(`${column}${row}`).alignment = { horizontal: "right" };
}

/** Adds a cell with the client, chosen from a list or, with a formula, from another sheet, and below it the client's facts. */
export function addFacts(
  sheet: Worksheet,
  clients: readonly SampleClient[],
  [labelColumn, column]: readonly [string, string],
  row: number,
  client: string
): void {
  const address = `${column}${row}`;
  putLabel(sheet, `${labelColumn}${row}`, "Client");
  if (client.startsWith("=")) putFormula(sheet, address, client.slice(1));
  else putClientInput(sheet, clients, address, client);
  sheet.getCell(address).alignment = { horizontal: "right" };
  for (const [index, fact] of LOOKED_UP.entries())
    putLookup(sheet, clients, [labelColumn, column], row + 1 + index, fact, `$${column}$${row}`);
}

/** Adds a cell in which a client is chosen from the list. */
export function putClientInput(
  sheet: Worksheet,
  clients: readonly SampleClient[],
  address: string,
  client: string
): void {
  putInput(sheet, address, client);
  sheet.getCell(address).dataValidation = {
    type: "list",
    allowBlank: false,
    formulae: [clientBlock(clients, "Client")],
  };
}

/** Adds the title of a sheet about one client, with the client and the as-of date, and below it the client's facts. */
export function addClientChoice(
  sheet: Worksheet,
  clients: readonly SampleClient[],
  subject: string,
  client: string
): void {
  putTitle(sheet, titleWith(subject, CHOICE.client));
  addFacts(sheet, clients, ["A", "B"], 3, client);
}

/** A title with the client and the as-of date, as a formula. */
export function titleWith(subject: string, client: string): string {
  return `="${subject}: "&${client}&", as of "&TEXT(AsOf,"${DATE_FORMAT}")`;
}
