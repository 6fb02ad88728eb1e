import { readFileSync } from "node:fs";
import { Ajv2020, type ValidateFunction } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { rulesFiles, type RulesFile } from "./rulesFiles";

const ajv = new Ajv2020({ allErrors: true, strict: true, strictRequired: false });
for (const kind of ["dated-table", "list-table", "sources"]) {
  const file = new URL(`../../rules/schema/${kind}.schema.json`, import.meta.url);
  ajv.addSchema(JSON.parse(readFileSync(file, "utf8")) as object);
}

function schema(kind: string): ValidateFunction {
  const found = ajv.getSchema(`${kind}.schema.json`);
  if (!found) throw new RangeError(`rules/schema/${kind}.schema.json is missing`);
  return found;
}

function kindOf({ name, content }: RulesFile): string {
  if (name === "sources.json") return "sources";
  return "values" in (content as object) ? "dated-table" : "list-table";
}

function complaints(kind: string, content: unknown): string[] {
  const validate = schema(kind);
  validate(content);
  return (validate.errors ?? []).map(
    ({ instancePath, message }) => `${instancePath} ${message ?? "is refused"}`
  );
}

describe("the schemas of the rules", () => {
  it.each(rulesFiles)("describe the file $name", (file) => {
    expect(complaints(kindOf(file), file.content)).toEqual([]);
  });

  const dated = {
    id: "invented",
    title: "Invented",
    keyedBy: "any day",
    units: { rate: "fraction" },
    knownThrough: "2026-12-31",
    values: [
      {
        from: "2026-01-01",
        rate: "0.07",
        source: { document: "usc-26", at: "1" },
        confidence: "official",
      },
    ],
  };
  const [entry] = dated.values;
  const withEntry = (change: object) => ({ ...dated, values: [{ ...entry, ...change }] });

  it("take a table that is as it should be", () => {
    expect(complaints("dated-table", dated)).toEqual([]);
  });

  it.each([
    ["a figure that is a number", withEntry({ rate: 0.07 })],
    ["a figure that is no number", withEntry({ rate: "7%" })],
    ["a figure with a sign", withEntry({ rate: "-0.07" })],
    ["a figure with a needless zero in front", withEntry({ rate: "07" })],
    ["an entry without a figure", { ...dated, values: [{ ...entry, rate: undefined }] }],
    ["a day that is not written out", withEntry({ from: "2026-1-1" })],
    ["a thirteenth month", withEntry({ from: "2026-13-01" })],
    ["a confidence of its own", withEntry({ confidence: "certain" })],
    ["a source without a place", withEntry({ source: { document: "usc-26" } })],
    ["a source with more than a place", withEntry({ source: { ...entry?.source, page: "1" } })],
    ["no entries", { ...dated, values: [] }],
    ["no units", { ...dated, units: {} }],
    ["an unknown key of the head", { ...dated, note: "to be checked" }],
    ["an id that is not a file name", { ...dated, id: "Invented Rate" }],
  ])("refuse a dated table with %s", (_what, table) => {
    const written: unknown = JSON.parse(JSON.stringify(table));
    expect(complaints("dated-table", written)).not.toEqual([]);
  });

  const holidays = rulesFiles.find(({ name }) => name === "legal-holidays.json")?.content as {
    readonly holidays: readonly object[];
  };
  const withHoliday = (change: object) => ({
    ...holidays,
    holidays: [{ ...holidays.holidays[0], ...change }],
  });

  it.each([
    ["an unknown key of a row", withHoliday({ note: "to be checked" })],
    ["an observance of its own", withHoliday({ observed: "on the day" })],
    ["a fixed day that is also the n-th weekday", withHoliday({ weekday: 1, occurrence: 3 })],
    ["a row without a source", withHoliday({ source: undefined })],
    ["no rows", { ...holidays, holidays: [] }],
    ["rows of two kinds", { ...holidays, lines: [] }],
    ["an unknown key of the head", { ...holidays, note: "to be checked" }],
  ])("refuse a list with %s", (_what, list) => {
    const written: unknown = JSON.parse(JSON.stringify(list));
    expect(complaints("list-table", written)).not.toEqual([]);
  });
});
