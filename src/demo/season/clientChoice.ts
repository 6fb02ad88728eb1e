import type { Worksheet } from "@cj-tech-master/excelts";
import { clientBlock, clientColumn } from "./clientsSheet";
import { DAY, MONEY, putFormula, putLabel, styleInput, YEAR } from "./sheetStyle";

const LOOKED_UP: readonly [label: string, heading: string, format: string, asText: boolean][] = [
  ["Tax year", "Tax year (or its last day)", YEAR, false],
  ["State", "State", "General", true],
  ["FilerType", "FilerType", "General", true],
  ["Total tax", "Total tax (estimate)", MONEY, false],
  ["Payments so far", "Payments so far", MONEY, false],
  ["Paid with request", "Paid with request", MONEY, false],
  ["Extended", "Extended", "General", true],
  ["Planned paid on", "Planned paid on", DAY, false],
  ["Planned filed on", "Planned filed on", DAY, false],
  ["Shortfall", "Shortfall", MONEY, false],
];

/** The arguments EXT.CHARGES takes from a sheet laid out by `addClientChoice`, in its order. */
export interface ChoiceCells {
  readonly taxYear: string;
  readonly state: string;
  readonly filerType: string;
  readonly totalTax: string;
  readonly payments: string;
  readonly paidWithRequest: string;
  readonly extended: string;
  readonly paidOn: string;
  readonly filedOn: string;
  readonly shortfall: string;
}

/** Where the looked-up facts of the chosen client stand. */
export const CHOICE: ChoiceCells = {
  taxYear: "$B$2",
  state: "$B$3",
  filerType: "$B$4",
  totalTax: "$B$5",
  payments: "$B$6",
  paidWithRequest: "$B$7",
  extended: "$B$8",
  paidOn: "$B$9",
  filedOn: "$B$10",
  shortfall: "$B$11",
};

/** Lays out a cell to choose a client in, and below it the client's facts. */
export function addClientChoice(sheet: Worksheet, client: string): void {
  putLabel(sheet, "A1", "Client");
  const chosen = sheet.getCell("B1");
  chosen.value = client;
  styleInput(chosen);
  const names = clientBlock(clientColumn("Client"));
  chosen.dataValidation = { type: "list", allowBlank: false, formulae: [names] };
  for (const [index, [label, heading, format, asText]] of LOOKED_UP.entries()) {
    const row = index + 2;
    sheet.getCell(`A${row}`).value = label;
    const found = `XLOOKUP($B$1,${names},${clientBlock(clientColumn(heading))})`;
    // A blank looked up would come as 0; joined to nothing it stays blank.
    putFormula(sheet, `B${row}`, asText ? `${found}&""` : found, format);
  }
}
