import { calendarDate, type CalendarDate } from "../calendar/calendarDate";
import { Decimal } from "../money/dollars";
import { notCovered } from "./notInTableError";
import { readSource, type Source, type WrittenSource } from "./source";

/** The figures in force from a date. */
export interface DatedEntry<Figures> {
  readonly from: CalendarDate;
  readonly figures: Figures;
  readonly source: Source;
}

/** A subject's figures by effective date, as far as they are known. */
export interface DatedTable<Figures> {
  readonly id: string;
  readonly title: string;
  /** What the date of a look-up means for this table. */
  readonly keyedBy: string;
  readonly knownFrom: CalendarDate;
  readonly knownThrough: CalendarDate;
  /** In the order of `from`. */
  readonly entries: readonly DatedEntry<Figures>[];
}

/** Figures as the calculation takes them: each text of the rules file a decimal number, lists and objects as written. */
export type Figures<Written> = Written extends string
  ? Decimal
  : { readonly [Name in keyof Written]: Figures<Written[Name]> };

/** An entry as its rules file writes it: beside date and source, nothing but figures. */
type WrittenEntry = WrittenSource & { readonly from: string };

interface WrittenTable<Entry extends WrittenEntry> {
  readonly id: string;
  readonly title: string;
  readonly keyedBy: string;
  readonly knownThrough: string;
  readonly values: readonly Entry[];
}

type FiguresOf<Entry> = Figures<Omit<Entry, keyof WrittenEntry>>;

function readFigures(written: unknown): unknown {
  if (typeof written === "string") return new Decimal(written);
  if (Array.isArray(written)) return written.map(readFigures);
  const named = Object.entries(written as object);
  return Object.fromEntries(named.map(([name, figure]) => [name, readFigures(figure)]));
}

/**
 * Reads a dated table from its rules file. The tests check the file against its schema.
 *
 * @param written - The file's content; its figures are texts, so that none passes through binary fractions.
 * @returns The table.
 * @throws RangeError if the table has no entry, or a date or a document of it does not exist: a fault in the rules.
 */
export function readDatedTable<Entry extends WrittenEntry>(
  written: WrittenTable<Entry>
): DatedTable<FiguresOf<Entry>> {
  const { id, title, keyedBy, knownThrough, values } = written;
  const entries = values.map(({ from, source, confidence, ...figures }) => ({
    from: calendarDate(from),
    figures: readFigures(figures) as FiguresOf<Entry>,
    source: readSource({ source, confidence }),
  }));
  const first = entries[0];
  if (!first) throw new RangeError(`${id}: no entries`);
  return {
    id,
    title,
    keyedBy,
    entries,
    knownFrom: first.from,
    knownThrough: calendarDate(knownThrough),
  };
}

/**
 * The entry in force on a date. A year without figures never takes those of the year before.
 *
 * @param table - The table.
 * @param date - The date, in the sense of the table's `keyedBy`.
 * @returns The newest entry that begins on or before the date.
 * @throws NotInTableError before the first entry and after the last date that the table covers.
 */
export function entryOn<Figures>(
  table: DatedTable<Figures>,
  date: CalendarDate
): DatedEntry<Figures> {
  const entry =
    date <= table.knownThrough ? table.entries.findLast(({ from }) => from <= date) : undefined;
  if (!entry) throw notCovered(table, date);
  return entry;
}
