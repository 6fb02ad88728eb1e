import type { CalendarDate } from "../calendar/calendarDate";
import { once } from "../calendar/once";
import type { DatedTable } from "./datedTable";
import type { ListTable, Sourced } from "./listTable";
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
  /** Entries known only from memory, in whole or in part. */
  readonly fromMemory: number;
}

/** Every rule table, by its id. */
export const ruleTables = once<ReadonlyMap<string, RuleTable>>(
  () => new Map(Object.values(rulebook).map((table) => [table.id, table]))
);

type Known = Sourced<{ readonly terms?: readonly Sourced<object>[] }>;

/** Whether an entry, or a term of it, is known only from memory. */
function isFromMemory({ source, terms = [] }: Known): boolean {
  return [source, ...terms.map((term) => term.source)].some(
    ({ confidence }) => confidence === "memory"
  );
}

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
    fromMemory: rows.filter(isFromMemory).length,
  };
}
