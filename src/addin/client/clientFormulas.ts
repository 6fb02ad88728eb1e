import type { ClientListField } from "../../functions/arguments/clientListHeadings";
import { cellValue, isBlankOrZero } from "../../functions/cells/cellValue";
import { shortDate } from "../../calendar/writtenDate";
import { calculationSheet } from "../calculationSheet/calculationSheet";
import type { ClientFacts } from "./clientFacts";
import { ifReadable, rosterClientOf } from "../list/clientReading";
import { addressIn, columnOf, type ClientRow } from "../list/clientRow";
import type { PaneSettings } from "../list/rosterAnswers";
import type { NewSheet } from "../workbook/newSheet";
import { sheetName } from "../workbook/sheetName";
import { withPlan } from "./waitingCost";
import { NotDone } from "../workbook/workbookHost";

type Reference = (field: ClientListField) => string;

/** References to the cells of a client's row, with the sheet; empty where the list has no column or the cell is blank. */
function referencesTo(client: ClientRow): Reference {
  const { list, index, reading, row } = client;
  const at = (column: number): string =>
    `'${list.sheet.replaceAll("'", "''")}'!${addressIn(list, index, column)}`;
  return (field) => {
    const parts = reading.filter((one) => one.field === field);
    if (parts.length > 1) {
      const cells = parts.map((part) => list.rows[index]?.[part.index]);
      const areNumbers = cells.every((cell) => typeof cell === "number" || cell === "");
      return areNumbers
        ? parts.map((part) => at(part.index)).join("+")
        : String(cellValue(row.cell(field)));
    }
    const column = columnOf(reading, field);
    return column && !isBlankOrZero(cellValue(row.cell(field))) ? at(column.index) : "";
  };
}

/** The arguments of the single functions for a client: references to the cells of the row, and the values of the pane. */
function argumentsOf(client: ClientRow, settings: PaneSettings) {
  const to = referencesTo(client);
  const sum = (...parts: readonly string[]): string =>
    parts.filter((part) => part !== "").join("+") || "0";
  const payments = sum(to("payments"));
  const rate = settings.assumedRate.trim();
  return {
    year: to("taxYear") || String(settings.taxYear),
    tax: sum(to("totalTax")),
    payments,
    withRequest: sum(payments, to("paidWithRequest")),
    filer: `${to("state")},${to("filerType")}`,
    moved: `${to("postponementBegins")},${to("postponementEnds")}`,
    record: `${to("requestedOn")},${to("confirmedOn")},${to("rejectedOn")},${to("filedOn")}`,
    paidOn: to("paidOn"),
    rate: rate === "" ? "" : `"${rate.replaceAll('"', '""')}"`,
  };
}

/** The formula of the penalties and interest to the dates that the cost of waiting is shown for. */
function chargesFormula(
  client: ClientRow,
  { answers }: ClientFacts,
  settings: PaneSettings,
  extension?: boolean
): string {
  const planned = withPlan(client, answers["Extended due date"].value);
  const plan = ifReadable(() => rosterClientOf(planned, settings).plan());
  if (!plan)
    throw new NotDone(
      "A cell of this row cannot be read, so there is no calculation to show. Correct the cell that is named above."
    );
  if (plan.withRequestOn)
    throw new NotDone(
      "The payment with the late request and the balance are paid on two dates. Use LEDGER for the calculation."
    );
  const { year, tax, payments, withRequest, filer, moved, rate } = argumentsOf(client, settings);
  const paid = plan.withRequest.isZero() ? payments : withRequest;
  const dates = `"${shortDate(plan.paidOn)}","${shortDate(plan.filedOn)}"`;
  const isExtended = (extension ?? plan.validExtension) ? "yes" : "no";
  return `=EXT.CHARGES(${year},${tax},${paid},${dates},"${isExtended}",${filer},${rate},,${moved})`;
}

/**
 * The sheet with the calculation of a client's penalties and interest, line by line.
 *
 * @param client - The client's row.
 * @param facts - What the pane shows of the client.
 * @param settings - Default tax year, as-of date, assumed rate.
 * @throws NotDone when a cell that it needs cannot be read.
 */
export function clientCalculation(
  client: ClientRow,
  facts: ClientFacts,
  settings: PaneSettings
): NewSheet {
  const { name, waiting } = facts;
  const sheet = calculationSheet({
    sheet: client.list.sheet,
    address: addressIn(client.list, client.index, 0),
    formula: chargesFormula(client, facts, settings),
    isEmpty: false,
    rowsBelow: 0,
  });
  const asOf = shortDate(settings.asOf);
  const [, ...rest] = sheet.cells;
  return {
    ...sheet,
    name: sheetName(`Calculation ${name}`),
    cells: [[`Penalties and interest of ${name} as of ${asOf}. ${waiting.when}.`], ...rest],
    page: { footer: `${name}, ${asOf}`, isLandscape: true, wrapsText: false },
  };
}

/**
 * The sheet with what the pane shows of a client, as formulas that refer to the row of the list.
 *
 * @param client - The client's row.
 * @param facts - What the pane shows of the client.
 * @param settings - Default tax year, as-of date, assumed rate.
 * @throws NotDone when a cell that it needs cannot be read.
 */
export function clientSheet(
  client: ClientRow,
  facts: ClientFacts,
  settings: PaneSettings
): NewSheet {
  const { name } = facts;
  const { year, tax, payments, withRequest, filer, moved, record, paidOn } = argumentsOf(
    client,
    settings
  );
  const asOf = shortDate(settings.asOf);
  const isRequested =
    ifReadable(() => rosterClientOf(client, settings).record().requestedOn) !== undefined;
  const request = `${year},$B$3,${record}`;
  return {
    name: sheetName(name),
    cells: [
      [`Extension request of ${name}`],
      ["An estimate, not tax advice. It changes with the cells it refers to."],
      ["As-of date", asOf],
      ["Regular due date", `=EXT.DUE(${year},${filer},${moved})`],
      ["Extended due date", `=EXT.EXTENDED(${year},${filer},${moved})`],
      ["Payment due date", `=EXT.PAYBY(${year},${filer},${moved})`],
      ["Balance due", `=EXT.SHORTFALL(${tax},${payments})`],
      ["Pay now", `=EXT.SUGGEST(${tax},${isRequested ? withRequest : payments},"full",0)`],
      ["Penalties and interest with extension", chargesFormula(client, facts, settings, true)],
      ["Penalties and interest without extension", chargesFormula(client, facts, settings, false)],
      ["Status", `=EXT.STAGE(${request},${filer},${moved})`],
      ["Next deadline", `=EXT.NEXTDATE(${request},${paidOn},${filer},${moved})`],
    ],
    widths: [40, 44],
    formats: [],
    choices: [],
    headingRow: 1,
    isTable: false,
    page: { footer: `${name}, ${asOf}`, isLandscape: false, wrapsText: false },
  };
}
