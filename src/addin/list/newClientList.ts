import { calendarDate, yearOf, type CalendarDate } from "../../calendar/calendarDate";
import { shortDate } from "../../calendar/writtenDate";
import type { RosterHeading } from "../../functions/season/rosterColumns";
import { columnLetters } from "../../host/cellAddress";
import { ENTERED_COLUMNS, type EnteredColumn } from "./clientList";
import { lookOf } from "./listColumns";
import { rosterAnswers, type PaneSettings } from "./rosterAnswers";
import type { NewSheet } from "../workbook/newSheet";

const HEADING_ROW = 3;
/** Rows that are ready to be filled in, where the host does not fill formulas into new rows of a table. */
const ROWS = 25;
const [NAME, ...INPUTS] = ENTERED_COLUMNS;

/** The answers beside the name. */
const RESULTS: readonly RosterHeading[] = [
  "Status",
  "Next deadline",
  "Days left",
  "Balance due",
  "Suggested payment",
  "Penalties and interest (planned)",
  "Regular due date",
  "Extended due date",
  "Issues",
  "Unreadable",
];

/** The settings of the list, in the cells of the first row. */
const SETTINGS = { asOf: "$B$1", taxYear: "$D$1", assumedRate: "$F$1" };
const CAUTION =
  "Enter your clients in the colored cells. Estimates only. Check each figure against the current official text. The licensed tax professional makes the final decision.";

const firstInput = RESULTS.length + 2;
const lastInput = firstInput + INPUTS.length - 1;
const across = (row: number): string =>
  `$${columnLetters(firstInput)}${row}:$${columnLetters(lastInput)}${row}`;

function resultFormula(heading: RosterHeading, row: number): string {
  const [asOf, year, rate] = [SETTINGS.asOf, SETTINGS.taxYear, SETTINGS.assumedRate];
  const headings = across(HEADING_ROW).replaceAll(String(HEADING_ROW), `$${HEADING_ROW}`);
  return `=EXT.ROSTERROWS(${headings},${across(row)},${year},${asOf},${rate},"${heading}")`;
}

/** A month and a day of the year after the tax year, as a worksheet date. */
const inNextYear = (taxYear: number, monthAndDay: string): number =>
  calendarDate(`${taxYear + 1}-${monthAndDay}`);

/** The record of an example client for whom nothing is late on the as-of date. */
function healthyRecord(taxYear: number, asOf: CalendarDate): Readonly<Record<string, unknown>> {
  const settings = { taxYear, asOf, assumedRate: "" };
  const [dates] = rosterAnswers(["Total tax", "Payments"], [[1, 1]], settings, [
    "Regular due date",
    "Extended due date",
  ]);
  const regular = dates?.["Regular due date"].value ?? asOf;
  const extended = dates?.["Extended due date"].value ?? asOf;
  if (asOf <= regular) return {};
  const requested = inNextYear(taxYear, "04-10");
  const record = { "Requested on": requested, "Confirmed on": requested };
  return asOf <= extended ? record : { ...record, "Filed on": inNextYear(taxYear, "10-01") };
}

function exampleOf(
  { heading, example = "" }: EnteredColumn,
  { taxYear, asOf }: PaneSettings
): string | number {
  if (heading === NAME?.heading) return example;
  const own: Readonly<Record<string, unknown>> = {
    "Tax year or fiscal year end": taxYear,
    "Paid with request": 5000,
    "Planned payment date": "",
    "Planned filing date": inNextYear(taxYear, "10-15"),
    "Valid extension": "",
    ...healthyRecord(taxYear, asOf),
  };
  return (own[heading] as string | number | undefined) ?? example;
}

/**
 * A sheet for a client list: in the first row what applies to every client, then the headings, and below them an example and rows that
 * are ready to be filled in. The answers are beside the name; a row without entries has blank answers.
 *
 * @param settings - As-of date, tax year and assumed rate of the list.
 */
export function newClientList(settings: PaneSettings): NewSheet {
  const columns = [NAME, ...RESULTS, ...INPUTS].map((column) =>
    typeof column === "string" ? { heading: column, ...lookOf(column) } : column
  );
  const row = (index: number): (string | number)[] => {
    const entered = (column: EnteredColumn | undefined): string | number =>
      column && index === 0 ? exampleOf(column, settings) : "";
    const results = RESULTS.map((heading) => resultFormula(heading, HEADING_ROW + 1 + index));
    return [entered(NAME), ...results, ...INPUTS.map(entered)];
  };
  const last = HEADING_ROW + ROWS;
  const { asOf, taxYear, assumedRate } = settings;
  return {
    name: "Clients",
    cells: [
      ["As-of date", shortDate(asOf), "Tax year", taxYear, "Assumed rate", assumedRate],
      [CAUTION],
      columns.map((column) => column?.heading ?? ""),
      ...Array.from({ length: ROWS }, (_row, index) => row(index)),
    ],
    widths: columns.map((column) => column?.width ?? 0),
    formats: columns.map((column) => column?.format ?? ""),
    choices: columns.map((column) => (column && "choices" in column ? (column.choices ?? []) : [])),
    headingRow: HEADING_ROW,
    isTable: true,
    inputs: [
      "B1",
      "D1",
      "F1",
      `A${HEADING_ROW + 1}:A${last}`,
      `${columnLetters(firstInput)}${HEADING_ROW + 1}:${columnLetters(lastInput)}${last}`,
    ],
    frozenColumns: 1,
  };
}

/** The tax year whose returns are extended on a date, before the user says otherwise: the year before. */
export function usualTaxYear(date: CalendarDate): number {
  return yearOf(date) - 1;
}
