import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { z } from "zod";
import { brackets, byStatus, datedTable, figure, tableRows } from "../../src/rules/schema/parts";
import { schemas, sources } from "../../src/rules/schema/schemas";
import { rulesFiles, writtenTables } from "./rulesFiles";

const complaints = (schema: z.ZodType, content: unknown): string[] =>
  (schema.safeParse(content).error?.issues ?? []).map(
    ({ path, message }) => `${path.join(".")}: ${message}`
  );

const bySchema = new Map<string, z.ZodType>(
  Object.entries({ ...schemas, sources } satisfies Record<string, z.ZodType>)
);

function schemaOf(name: string): z.ZodType {
  const schema = bySchema.get(name);
  if (!schema) throw new RangeError(`There is no schema for ${name}`);
  return schema;
}

describe("the schemas of the rules", () => {
  it.each(rulesFiles)("describe the file $name", ({ name, content }) => {
    expect(complaints(schemaOf(name.replace(".json", "")), content)).toEqual([]);
  });

  it("are one for each file", () => {
    const files = writtenTables.map(({ id }) => id);
    expect(Object.keys(schemas).toSorted()).toEqual(files.toSorted());
  });

  const invented = datedTable({ rate: figure, limit: byStatus.joint(figure), brackets });
  const entry = {
    from: "2026-01-01",
    rate: "0.07",
    limit: { joint: "2000", others: "1000" },
    brackets: [{ upTo: "100", rate: "0.1" }, { upTo: "200", rate: "0.12" }, { rate: "0.2" }],
    source: { document: "usc-26", at: "1" },
    confidence: "official",
  };
  const dated = {
    id: "invented",
    title: "Invented",
    keyedBy: "any date",
    units: { rate: "annual rate", limit: "dollars", brackets: "dollars and rates" },
    knownThrough: "2026-12-31",
    values: [entry],
  };
  const withEntry = (change: object) => ({ ...dated, values: [{ ...entry, ...change }] });

  it("accept a table that is as it should be", () => {
    expect(complaints(invented, dated)).toEqual([]);
  });

  it.each([
    ["a figure that is a JSON number", withEntry({ rate: 0.07 })],
    ["a figure that is not a number", withEntry({ rate: "7%" })],
    ["a figure with a sign", withEntry({ rate: "-0.07" })],
    ["a figure with a needless zero in front", withEntry({ rate: "07" })],
    ["an entry without a figure", withEntry({ rate: undefined })],
    ["a figure that no calculation reads", withEntry({ share: "1" })],
    ["figures by status without those of all others", withEntry({ limit: { joint: "2000" } })],
    [
      "a status that the table does not have",
      withEntry({ limit: { joint: "1", single: "1", others: "1" } }),
    ],
    ["a last bracket with a limit", withEntry({ brackets: entry.brackets.slice(0, 2) })],
    ["brackets that fall", withEntry({ brackets: entry.brackets.toSorted(() => -1) })],
    ["a date that is not written out", withEntry({ from: "2026-1-1" })],
    ["a thirteenth month", withEntry({ from: "2026-13-01" })],
    ["a date that does not exist", withEntry({ from: "2026-02-30" })],
    ["an unknown confidence", withEntry({ confidence: "certain" })],
    ["a source without a place", withEntry({ source: { document: "usc-26" } })],
    ["a source with more than a place", withEntry({ source: { ...entry.source, page: "1" } })],
    ["no entries", { ...dated, values: [] }],
    ["units that leave a figure out", { ...dated, units: { rate: "annual rate" } }],
    ["an unknown key of the head", { ...dated, note: "Check it" }],
    ["an id that is not a file name", { ...dated, id: "Invented Rate" }],
  ])("refuse a dated table with %s", (_what, table) => {
    const written: unknown = JSON.parse(JSON.stringify(table));
    expect(complaints(invented, written)).not.toEqual([]);
  });

  it("refuse rows of a printed table whose limits do not rise", () => {
    const rows = [
      { upTo: "5", width: "5" },
      { upTo: "25", width: "10" },
    ];
    expect(complaints(tableRows, rows)).toEqual([]);
    expect(complaints(tableRows, rows.toReversed())).not.toEqual([]);
  });

  const holidays = rulesFiles.find(({ name }) => name === "legal-holidays.json")?.content as {
    readonly holidays: readonly object[];
  };
  const withHoliday = (change: object) => ({
    ...holidays,
    holidays: [{ ...holidays.holidays[0], ...change }],
  });

  it.each([
    ["an unknown key of a row", withHoliday({ note: "Check it" })],
    ["an unknown observance", withHoliday({ observed: "on the day" })],
    ["a fixed day that is also a weekday", withHoliday({ weekday: 1, occurrence: 3 })],
    ["a row without a source", withHoliday({ source: undefined })],
    ["no rows", { ...holidays, holidays: [] }],
    ["rows of two kinds", { ...holidays, lines: [] }],
    ["an unknown key of the head", { ...holidays, note: "Check it" }],
  ])("refuse a list with %s", (_what, list) => {
    const written: unknown = JSON.parse(JSON.stringify(list));
    expect(complaints(schemas["legal-holidays"], written)).not.toEqual([]);
  });
});

describe("the schema of the state rules", () => {
  const states = rulesFiles.find(({ name }) => name === "state-extensions.json")?.content as {
    readonly states: readonly { readonly terms: readonly object[] }[];
  };
  const withTerm = (change: object) => ({
    ...states,
    states: states.states.map((row) => ({
      ...row,
      terms: row.terms.map((term) => ({ ...term, ...change })),
    })),
  });

  it.each([
    [
      "a term that grants the extension by nothing",
      { effect: "grants the extension", by: undefined },
    ],
    [
      "a term that only avoids a penalty, but grants",
      { effect: "avoids a penalty", by: "automatic" },
    ],
    ["a percent to pay that grants nothing", { effect: "note", by: undefined, percentPaid: "0.9" }],
    ["an unknown effect", { effect: "hint" }],
    ["a term without a source", { source: undefined }],
  ])("refuses %s", (_what, change) => {
    const written: unknown = JSON.parse(JSON.stringify(withTerm(change)));
    expect(complaints(schemas["state-extensions"], written)).not.toEqual([]);
  });
});

describe("the schemas at run time", () => {
  // The add-in takes only types from them, so that the schema library stays out of what Excel loads.
  it("are not loaded by any other file of src", () => {
    const folder = new URL("../../src/", import.meta.url);
    const loading = readdirSync(folder, { recursive: true, encoding: "utf8" })
      .filter((name) => name.endsWith(".ts") && !name.includes("schema"))
      .filter((name) =>
        /^import (?!type )[^;]*(?:\/schema\/|"zod")/m.test(
          readFileSync(new URL(name.replaceAll("\\", "/"), folder), "utf8")
        )
      );
    expect(loading).toEqual([]);
  });
});
