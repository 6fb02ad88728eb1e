import type { CalendarDate } from "../../calendar/calendarDate";
import { shortDate } from "../../calendar/writtenDate";
import { readDate } from "../../functions/arguments/date";
import { CLIENT_LIST_HEADINGS } from "../../functions/arguments/clientListHeadings";
import { clientFacts, type ClientFacts } from "./clientFacts";
import { ifReadable } from "../list/clientReading";
import { addressIn, clientRow, columnOf, type ClientRow } from "../list/clientRow";
import type { PaneSettings } from "../list/rosterAnswers";
import { cellValue, isBlankOrZero, shown } from "../../functions/cells/cellValue";
import { DATE_FORMAT } from "../../functions/cells/answerCell";
import { NotDone } from "../workbook/workbookHost";

/** What can be recorded of a client, in the order in which it happens. */
export const EVENTS = [
  { id: "requested", label: "Request made", field: "requestedOn" },
  { id: "proof", label: "Proof received", field: "confirmedOn" },
  { id: "rejected", label: "Request rejected", field: "rejectedOn" },
  { id: "filed", label: "Return filed", field: "filedOn" },
  { id: "paid", label: "Balance paid", field: "paidOn" },
] as const;

/** An event that can be recorded. */
export type ClientEvent = (typeof EVENTS)[number];

/** What is entered to record an event, and where. */
export interface EventEntry {
  readonly cell: { readonly sheet: string; readonly address: string; readonly was: unknown };
  /** The worksheet date. */
  readonly value: number;
  readonly format: string;
  /** What was done and what comes next, in sentences. */
  readonly sentence: string;
}

/** What the list has for an event now, such as 4/15/2026; empty if nothing. */
export function recordedText({ row }: ClientRow, { field }: ClientEvent): string {
  const value = ifReadable(() => cellValue(row.cell(field)));
  if (value === undefined) return "cannot be read";
  if (isBlankOrZero(value)) return "";
  const date = readDate(value);
  return date === undefined ? shown(value) : shortDate(date);
}

/** A cell as the host gave it, with an error as its code. */
function asRead(cell: unknown): unknown {
  return typeof cell === "object" && cell !== null && "basicValue" in cell ? cell.basicValue : cell;
}

function nextSentences(facts: ClientFacts, date: CalendarDate, asOf: CalendarDate): string {
  if (date > asOf)
    return `The as-of date is ${shortDate(asOf)}, so this does not count yet. Change the as-of date to see what comes next.`;
  if (facts.stage === "filed") return "The return is filed. No deadline is left.";
  const next = facts.answers["Next deadline"].text;
  const method = facts.answers.Method.text;
  const how = method === "" || method === "too late" ? "" : ` Best method: ${method}.`;
  return next === "" ? "" : `Next: ${next}.${how}`;
}

/**
 * What to enter in the list to record an event.
 *
 * @param client - The client's row.
 * @param event - The event.
 * @param date - When it happened, as the user confirmed.
 * @param settings - Default tax year, as-of date, assumed rate.
 * @returns The cell and its value, and what comes next.
 * @throws NotDone when the list has no column for it, the cell has a formula, or the record would contradict itself.
 */
export function eventEntry(
  client: ClientRow,
  event: ClientEvent,
  date: CalendarDate,
  settings: PaneSettings
): EventEntry {
  const { list, index, reading } = client;
  const column = columnOf(reading, event.field);
  if (!column)
    throw new NotDone(
      `The list has no column for "${event.label.toLowerCase()}". Add a column with the heading "${CLIENT_LIST_HEADINGS[event.field][0]}".`
    );
  const address = addressIn(list, index, column.index);
  if ((list.formulas[index]?.[column.index] ?? "") !== "")
    throw new NotDone(
      `Cell ${address} (${column.heading.trim()}) has a formula. Change the date where the formula takes it from.`
    );
  const rows = list.rows.map((row, at) =>
    at === index ? row.map((cell, place) => (place === column.index ? date : cell)) : row
  );
  const changed = clientRow({ ...list, rows }, index, settings.taxYear) ?? client;
  const after = clientFacts(changed, settings);
  const contradiction = after.answers.Status.problem;
  if (contradiction !== "" && clientFacts(client, settings).answers.Status.problem === "")
    throw new NotDone(`The date was not entered. ${contradiction}`);
  return {
    cell: { sheet: list.sheet, address, was: asRead(list.rows[index]?.[column.index]) },
    value: date,
    format: DATE_FORMAT,
    sentence:
      `Entered ${shortDate(date)} in cell ${address} (${column.heading.trim()}) for ${after.name}. ${nextSentences(after, date, settings.asOf)}`.trim(),
  };
}
