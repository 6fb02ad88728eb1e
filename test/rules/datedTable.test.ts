import { describe, expect, it } from "vitest";
import { calendarDate } from "../../src/calendar/calendarDate";
import { entryOn, readDatedTable } from "../../src/rules/datedTable";
import { NotInTableError } from "../../src/rules/notInTableError";

const source = { document: "usc-26", at: "1" };
const head = {
  id: "invented-rate",
  title: "Invented rate",
  keyedBy: "any day",
  knownThrough: "2026-12-31",
};
const values = [
  { from: "2020-01-01", rate: "0.10", source, confidence: "official" },
  { from: "2025-07-01", rate: "0.07", source, confidence: "secondary" },
];
const written = { ...head, values };
const withFirst = (change: object) => ({
  ...head,
  values: values.map((entry, index) => (index === 0 ? { ...entry, ...change } : entry)),
});

describe("reading a dated table", () => {
  it("takes figures exactly as written, with the source of each entry", () => {
    const table = readDatedTable(written, ["rate"]);
    expect(table).toMatchObject({ ...head, knownFrom: "2020-01-01" });
    expect(table.entries.map(({ figures }) => figures.rate.toString())).toEqual(["0.1", "0.07"]);
    expect(table.entries[1]?.source).toEqual({
      document: "usc-26",
      citation: "26 U.S.C. 1",
      confidence: "secondary",
    });
  });

  it.each([
    [
      "a figure is missing",
      withFirst({ rate: undefined }),
      'invented-rate 2020-01-01: no text "rate"',
    ],
    ["a figure is a number", withFirst({ rate: 0.1 }), 'invented-rate 2020-01-01: no text "rate"'],
    [
      "a confidence is no known word",
      withFirst({ confidence: "certain" }),
      '"certain" is no confidence',
    ],
    [
      "a document is not listed",
      withFirst({ source: { document: "hearsay", at: "1" } }),
      'rules/sources.json does not list "hearsay"',
    ],
    [
      "a day does not exist",
      withFirst({ from: "2020-02-30" }),
      '"2020-02-30" is not a day written YYYY-MM-DD',
    ],
    [
      "the last day known does not exist",
      { ...written, knownThrough: "2026-12" },
      '"2026-12" is not a day written YYYY-MM-DD',
    ],
    ["there are no entries", { ...head, values: [] }, "invented-rate: no entries"],
  ])("is refused when %s", (_what, faulty, sentence) => {
    expect(() => readDatedTable(faulty, ["rate"])).toThrow(new RangeError(sentence));
  });
});

describe("looking up a day", () => {
  const table = readDatedTable(written, ["rate"]);
  const rateOn = (day: string) => entryOn(table, calendarDate(day)).figures.rate.toNumber();

  it.each([
    ["2020-01-01", 0.1],
    ["2025-06-30", 0.1],
    ["2025-07-01", 0.07],
    ["2026-12-31", 0.07],
  ])("finds the entry in force on %s", (day, rate) => {
    expect(rateOn(day)).toBe(rate);
  });

  it.each([
    [
      "2019-12-31",
      "Invented rate: no figure for 2019-12-31; held only from 2020-01-01 on (rules/invented-rate.json)",
    ],
    [
      "2027-01-01",
      "Invented rate: no figure for 2027-01-01; known only through 2026-12-31 (rules/invented-rate.json)",
    ],
  ])("refuses %s, naming table, day and reach", (day, sentence) => {
    expect(() => rateOn(day)).toThrow(NotInTableError);
    expect(() => rateOn(day)).toThrow(sentence);
  });
});
