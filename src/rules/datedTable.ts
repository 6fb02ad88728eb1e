import { calendarDate, type CalendarDate } from "../calendar/calendarDate";
import { Decimal } from "../money/dollars";
import { notCovered } from "./notInTableError";
import { readSource, type Source, type WrittenSource } from "./source";

/** The figures in force from a day on. */
export interface DatedEntry<Figure extends string> {
  readonly from: CalendarDate;
  readonly figures: Readonly<Record<Figure, Decimal>>;
  readonly source: Source;
}

/** A subject's figures by effective day, as far as they are known. */
export interface DatedTable<Figure extends string> {
  readonly id: string;
  readonly title: string;
  /** What the day of a lookup means for this table. */
  readonly keyedBy: string;
  readonly knownFrom: CalendarDate;
  readonly knownThrough: CalendarDate;
  /** Rising by `from`. */
  readonly entries: readonly DatedEntry<Figure>[];
}

interface WrittenTable {
  readonly id: string;
  readonly title: string;
  readonly keyedBy: string;
  readonly knownThrough: string;
  readonly values: readonly (WrittenSource & { readonly from: string })[];
}

/**
 * Reads a dated table from its rules file.
 *
 * @param written - The file's content.
 * @param figures - Names of the figures that every entry must hold, written as text so that none passes through binary fractions.
 * @returns The table.
 * @throws RangeError when an entry lacks a figure, a source or a true day: a fault in the rules.
 */
export function readDatedTable<Figure extends string>(
  written: WrittenTable,
  figures: readonly Figure[]
): DatedTable<Figure> {
  const entries = written.values.map((entry) => {
    const texts = entry as unknown as Readonly<Record<string, unknown>>;
    const read = figures.map((figure) => {
      const text = texts[figure];
      if (typeof text !== "string")
        throw new RangeError(`${written.id} ${entry.from}: no text "${figure}"`);
      return [figure, new Decimal(text)] as const;
    });
    return {
      from: calendarDate(entry.from),
      figures: Object.fromEntries(read) as Record<Figure, Decimal>,
      source: readSource(entry),
    };
  });
  const first = entries[0];
  if (!first) throw new RangeError(`${written.id}: no entries`);
  return {
    id: written.id,
    title: written.title,
    keyedBy: written.keyedBy,
    knownFrom: first.from,
    knownThrough: calendarDate(written.knownThrough),
    entries,
  };
}

/**
 * The entry in force on a day. Never last year's figure for a year that has none.
 *
 * @param table - The table.
 * @param day - The day, in the sense of the table's `keyedBy`.
 * @returns The newest entry not after the day.
 * @throws NotInTableError before the first entry and after the day through which the table is known.
 */
export function entryOn<Figure extends string>(
  table: DatedTable<Figure>,
  day: CalendarDate
): DatedEntry<Figure> {
  if (day <= table.knownThrough) {
    for (let index = table.entries.length - 1; index >= 0; index--) {
      const entry = table.entries[index];
      if (entry && entry.from <= day) return entry;
    }
  }
  throw notCovered(table, day);
}
