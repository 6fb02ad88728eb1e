import { once } from "../calendar/once";

type Readers = Readonly<Record<string, () => object>>;

/** The tables of some readers, by the same names. */
export type TablesOf<Each extends Readers> = {
  readonly [Name in keyof Each]: ReturnType<Each[Name]>;
};

/**
 * Tables that are read from their rules files when they are first asked for: a worksheet needs few of them, and waits for them all
 * when the add-in loads otherwise.
 *
 * @param readers - What reads each table.
 * @returns The tables, each a property of its own, so that a spread copies them.
 */
export function readOnDemand<Each extends Readers>(readers: Each): TablesOf<Each> {
  const tables = {};
  for (const [name, read] of Object.entries(readers))
    Object.defineProperty(tables, name, { enumerable: true, get: once(read) });
  return tables as TablesOf<Each>;
}
