import { readFileSync } from "node:fs";
import { check, resolveConfig } from "prettier";
import { describe, expect, it } from "vitest";
import {
  calendarDate,
  parseCalendarDate,
  written as isoText,
  type CalendarDate,
} from "../../src/calendar/calendarDate";
import { Decimal } from "../../src/money/dollars";
import { ruleTables, summarize } from "../../src/rules/ruleTables";
import { version } from "../../src/rules/version";
import { datedTables, entriesOf, listTables, rulesFiles, writtenTables } from "./rulesFiles";

const HEAD_OF_ENTRY = ["from", "source", "confidence"];
/** Figures, however deep in lists and objects, as plain texts: 0.10 and 0.1 are the same. */
const asTexts = (figures: unknown): unknown =>
  JSON.parse(
    JSON.stringify(figures, (_name, value: unknown) =>
      typeof value === "string" ? new Decimal(value).toString() : value
    )
  );
/** A row of a list as it was read. */
interface ReadRow {
  readonly source: { readonly document: string };
  readonly terms?: readonly {
    readonly source: { readonly document: string; readonly confidence: string };
    readonly percentPaid?: Decimal | undefined;
  }[];
}
/** A value of a row as its file writes it: a figure or a date that is a text there was read as a number. */
function asWritten(value: unknown, inFile: unknown): unknown {
  if (Decimal.isDecimal(value)) return String(value);
  return typeof value === "number" && typeof inFile === "string"
    ? isoText(value as CalendarDate)
    : value;
}
const days = (content: unknown): string[] =>
  JSON.stringify(content).match(/(?<=")\d{4}-\d{2}-\d{2}(?=")/g) ?? [];

describe("the files of rules/", () => {
  it.each(rulesFiles)("name only dates that exist: $name", ({ content }) => {
    expect(days(content).length).toBeGreaterThan(0);
    expect(days(content).filter((day) => parseCalendarDate(day) === undefined)).toEqual([]);
  });

  it.each(rulesFiles)("are written in one way, no key twice: $name", async ({ name, text }) => {
    const filepath = new URL(`../../rules/${name}`, import.meta.url).pathname;
    expect(await check(text, { ...(await resolveConfig(filepath)), filepath })).toBe(true);
    expect(text.endsWith("}\n")).toBe(true);
    const spaceless = (json: string) => json.replace(/\s/g, "");
    expect(spaceless(text)).toBe(spaceless(JSON.stringify(JSON.parse(text))));
  });

  it.each(writtenTables)("are named for their table: $file", ({ file, id }) => {
    expect(file).toBe(`${id}.json`);
  });

  it("are all read into the rulebook, and nothing else is", () => {
    const ids = writtenTables.map(({ id }) => id);
    expect([...ruleTables().keys()].toSorted()).toEqual(ids.toSorted());
  });
});

describe("a dated table", () => {
  it.each(datedTables)("rises by date and covers more than its last date: $id", (table) => {
    const from = entriesOf(table).map((entry) => entry.from ?? "");
    expect(from).toEqual([...new Set(from)].toSorted());
    expect(table.knownThrough > (from.at(-1) ?? "")).toBe(true);
  });

  it.each(datedTables)("explains each of its figures, and nothing else: $id", (table) => {
    const explained = Object.keys(table.units).toSorted();
    for (const entry of entriesOf(table)) {
      const figures = Object.keys(entry).filter((key) => !HEAD_OF_ENTRY.includes(key));
      expect(figures.toSorted()).toEqual(explained);
    }
  });

  it.each(datedTables)("is read figure for figure: $id", (written) => {
    const table = ruleTables().get(written.id);
    if (!table || !("entries" in table)) throw new RangeError(`${written.id} is no dated table`);
    const read = table.entries.map(({ from, figures, source }) => ({
      from: isoText(from),
      confidence: source.confidence,
      document: source.document,
      figures: asTexts(figures),
    }));
    const wanted = entriesOf(written).map(({ from, confidence, source, ...figures }) => ({
      from,
      confidence,
      document: source.document,
      figures: asTexts(figures),
    }));
    expect(read).toEqual(wanted);
    expect(table).toMatchObject({
      title: written.title,
      keyedBy: written.keyedBy,
      knownFrom: calendarDate(wanted[0]?.from ?? ""),
      knownThrough: calendarDate(written.knownThrough),
    });
  });
});

describe("a list", () => {
  it.each(listTables)("covers dates from a first to a later one: $id", (table) => {
    expect((table.knownFrom ?? "") < table.knownThrough).toBe(true);
  });

  it.each(listTables)("explains each number and switch of its rows: $id", (table) => {
    const keys = [...new Set(entriesOf(table).flatMap((row) => Object.keys(row)))];
    const needed = entriesOf(table).flatMap((row) =>
      Object.keys(row).filter((key) => ["number", "boolean"].includes(typeof row[key]))
    );
    const explained = Object.keys(table.units);
    expect([...new Set(needed)].filter((key) => !explained.includes(key))).toEqual([]);
    expect(explained.filter((key) => !keys.includes(key))).toEqual([]);
  });

  it.each(listTables)("is read row for row: $id", (written) => {
    const table = ruleTables().get(written.id);
    if (!table || !("rows" in table)) throw new RangeError(`${written.id} is no list`);
    expect(table.rows).toHaveLength(entriesOf(written).length);
    table.rows.forEach((row, index) => {
      const { source, terms, ...rest } = row as unknown as ReadRow;
      terms?.forEach((term, place) => {
        const { source: ofTerm, percentPaid, ...figures } = term;
        const own = (entriesOf(written)[index]?.["terms"] as readonly object[])[place];
        expect(own).toMatchObject({
          ...figures,
          ...(percentPaid === undefined ? {} : { percentPaid: percentPaid.toString() }),
          source: { document: ofTerm.document },
          confidence: ofTerm.confidence,
        });
      });
      const own = entriesOf(written)[index];
      expect(own).toMatchObject(
        Object.fromEntries(
          Object.entries(rest)
            .filter(([key, value]) => key !== "confidence" && value !== undefined)
            .map(([key, value]: [string, unknown]) => [key, asWritten(value, own?.[key])])
        )
      );
      expect(source.document).toBe(entriesOf(written)[index]?.source.document);
    });
  });
});

describe("a table in brief", () => {
  it.each(writtenTables)("counts its entries and those known only from memory: $id", (written) => {
    const table = ruleTables().get(written.id);
    if (!table) throw new RangeError(`${written.id} is not read`);
    const entries = entriesOf(written);
    expect(summarize(table)).toMatchObject({
      id: written.id,
      title: written.title,
      entries: entries.length,
      fromMemory: entries.filter((entry) =>
        [entry, ...((entry["terms"] ?? []) as typeof entries)].some(
          ({ confidence }) => confidence === "memory"
        )
      ).length,
    });
  });
});

describe("the version", () => {
  it("is the version of package.json", () => {
    const file = new URL("../../package.json", import.meta.url);
    const { version: written } = JSON.parse(readFileSync(file, "utf8")) as { version: string };
    expect(version).toBe(written);
  });
});
