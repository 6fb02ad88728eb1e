import { readdirSync, readFileSync } from "node:fs";

const folder = new URL("../../rules/", import.meta.url);

/** An entry or row as its file writes it. */
export interface WrittenEntry {
  readonly source: { readonly document: string; readonly at: string };
  readonly confidence: string;
  readonly from?: string;
  readonly [key: string]: unknown;
}

/** A table as its file writes it. */
export interface WrittenTable {
  readonly id: string;
  readonly title: string;
  readonly keyedBy: string;
  readonly units: Readonly<Record<string, string>>;
  readonly knownFrom?: string;
  readonly knownThrough: string;
  readonly values?: readonly WrittenEntry[];
  readonly source?: WrittenEntry["source"];
  readonly confidence?: string;
  readonly [rows: string]: unknown;
}

/** A file of rules/ as it lies there. */
export interface RulesFile {
  readonly name: string;
  readonly text: string;
  readonly content: unknown;
}

function read(name: string): RulesFile {
  const text = readFileSync(new URL(name, folder), "utf8");
  return { name, text, content: JSON.parse(text) as unknown };
}

/** Every file of rules/. */
export const rulesFiles: readonly RulesFile[] = readdirSync(folder)
  .filter((name) => name.endsWith(".json"))
  .map(read);

/** The documents of rules/sources.json. */
export const documents = (
  read("sources.json").content as {
    readonly documents: Readonly<Record<string, { readonly cite: string; readonly read: string }>>;
  }
).documents;

/** Every table of rules/: all files but the list of documents. */
export const writtenTables: readonly (WrittenTable & { readonly file: string })[] = rulesFiles
  .filter(({ name }) => name !== "sources.json")
  .map(({ name, content }) => ({ ...(content as WrittenTable), file: name }));

/** Tables of figures by effective day. */
export const datedTables = writtenTables.filter(({ values }) => values !== undefined);

/** Tables that are lists of cases. */
export const listTables = writtenTables.filter(({ values }) => values === undefined);

/** Everything of a table with a source of its own: its entries or rows, and the terms of a row. */
export function sourcedOf(table: WrittenTable): readonly WrittenEntry[] {
  return entriesOf(table).flatMap((entry) => [
    entry,
    ...((entry["terms"] ?? []) as readonly WrittenEntry[]),
  ]);
}

/** The entries of a dated table, or the rows of a list. */
export function entriesOf(table: WrittenTable): readonly WrittenEntry[] {
  const rows = Object.values(table).find((value) => Array.isArray(value));
  return (rows ?? []) as readonly WrittenEntry[];
}
