import type { CalendarDate } from "../calendar/calendarDate";
import type { DatedTable } from "./datedTable";
import type { ListTable } from "./listTable";
import { rulebook } from "./rulebook";

/** Any table of the rulebook. */
export type RuleTable = DatedTable<object> | ListTable<object>;

/** A rule table in brief: which dates it covers and how well its entries are known. */
export interface RuleTableSummary {
  readonly id: string;
  readonly title: string;
  readonly keyedBy: string;
  readonly knownFrom: CalendarDate;
  readonly knownThrough: CalendarDate;
  readonly entries: number;
  /** Entries known only from memory. */
  readonly fromMemory: number;
}

/** Every rule table, by its id. */
export const ruleTables: ReadonlyMap<string, RuleTable> = new Map(
  Object.values(rulebook).map((table) => [table.id, table])
);

/** A table in brief. */
export function summarize(table: RuleTable): RuleTableSummary {
  const rows = "entries" in table ? table.entries : table.rows;
  return {
    id: table.id,
    title: table.title,
    keyedBy: table.keyedBy,
    knownFrom: table.knownFrom,
    knownThrough: table.knownThrough,
    entries: rows.length,
    fromMemory: rows.filter((row) => row.source.confidence === "memory").length,
  };
}
