import { readFileSync } from "node:fs";
import { calendarDate } from "../../../src/calendar/calendarDate";
import { clientRow, type ClientRow } from "../../../src/addin/list/clientRow";
import type { PaneSettings } from "../../../src/addin/list/rosterAnswers";
import type { SelectedList } from "../../../src/addin/workbook/workbookHost";
import { readClients } from "../../../src/demo/season/clients";

const csv = readFileSync(new URL("../../../src/demo/season/clients.csv", import.meta.url), "utf8");
const DAY = 86_400_000;
/** 1970-01-01 as a worksheet date. */
const FIRST_DAY = 25_569;

/** A worksheet date. */
export const serial = (date: string): number => calendarDate(date);

/** A list as a host gives it, from its headings and rows. */
export function listOf(
  headings: readonly unknown[],
  rows: readonly (readonly unknown[])[],
  others: Partial<SelectedList> = {}
): SelectedList {
  return {
    sheet: "Clients",
    headingRow: 3,
    firstColumn: 1,
    headings,
    rows,
    formulas: rows.map((row) => row.map(() => "")),
    selectedRow: 0,
    ...others,
  };
}

const clients = readClients(csv);
const headings = [...(clients[0]?.keys() ?? [])];

/** The client list of the sample firm, from A3 on. */
export const sampleList = listOf(
  headings,
  clients.map((client) =>
    headings.map((heading) => {
      const value = client.get(heading);
      return value instanceof Date ? value.getTime() / DAY + FIRST_DAY : (value ?? "");
    })
  )
);

/** The settings of the pane on a date of the season for 2025. */
export const settingsOn = (date: string, assumedRate = ""): PaneSettings => ({
  taxYear: 2025,
  asOf: calendarDate(date),
  assumedRate,
});

/** The row of a client of a list, by name. */
export function rowOf(name: string, list: SelectedList = sampleList): ClientRow {
  const index = list.rows.findIndex(([client]) => client === name);
  const client = clientRow(list, index, 2025);
  if (!client) throw new RangeError(`There is no client ${name}.`);
  return client;
}

/** The list with another content of a client's cells, by heading. */
export function changed(
  name: string,
  cells: Readonly<Record<string, unknown>>,
  list: SelectedList = sampleList
): SelectedList {
  const rows = list.rows.map((row) =>
    row[0] === name ? row.map((cell, index) => cells[String(list.headings[index])] ?? cell) : row
  );
  return { ...list, rows };
}
