import type { CalendarDate } from "../calendar/calendarDate";
import type { DatedTable } from "./datedTable";
import type { ListTable } from "./listTable";
import { rulebook } from "./rulebook";

/** Any table of the rulebook. */
export type RuleTable = DatedTable<string> | ListTable<object>;

/** One rules table in brief: what a preparer may ask of its reach and standing. */
export interface RuleTableSummary {
  readonly id: string;
  readonly title: string;
  readonly keyedBy: string;
  readonly knownFrom: CalendarDate;
  readonly knownThrough: CalendarDate;
  readonly entries: number;
  /** Entries that stand on memory alone, to be checked before anyone relies on them. */
  readonly fromMemory: number;
}

/** Every rules table, by its id. */
export const ruleTables: ReadonlyMap<string, RuleTable> = new Map(
  Object.values(rulebook).map((table) => [table.id, table])
);

/** What a table is, how far it reaches and how well it is known. */
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
