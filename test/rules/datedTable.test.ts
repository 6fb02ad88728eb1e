import { describe, expect, it } from "vitest";
import { calendarDate } from "../../src/calendar/calendarDate";
import { entryOn, readDatedTable } from "../../src/rules/datedTable";
import { NotInTableError } from "../../src/rules/notInTableError";

const source = { document: "usc-26", at: "1" };
const head = {
  id: "invented-rate",
  title: "Invented rate",
  keyedBy: "any date",
  knownThrough: "2026-12-31",
};
const official = { source, confidence: "official" } as const;
const values = [
  { from: "2020-01-01", rate: "0.10", limits: [{ upTo: "5" }, { upTo: "25" }], ...official },
  { from: "2025-07-01", rate: "0.07", limits: [], ...official },
];
const written = { ...head, values };
const withFirst = (change: object) => ({
  ...head,
  values: values.map((entry, index) => (index === 0 ? { ...entry, ...change } : entry)),
});

describe("reading a dated table", () => {
  it("takes figures exactly as written, with the source of each entry", () => {
    const table = readDatedTable(written);
    expect(table).toMatchObject({
      ...head,
      knownFrom: calendarDate("2020-01-01"),
      knownThrough: calendarDate(head.knownThrough),
    });
    expect(table.entries.map(({ figures }) => figures.rate.toString())).toEqual(["0.1", "0.07"]);
    expect(table.entries[1]?.source).toEqual({
      document: "usc-26",
      citation: "IRC section 1",
      confidence: "official",
    });
  });

  it("keeps lists and objects of figures as they are written", () => {
    const [first] = readDatedTable(written).entries;
    expect(first?.figures.limits.map(({ upTo }) => upTo.toNumber())).toEqual([5, 25]);
  });

  it.each([
    [
      "a document is not listed",
      withFirst({ source: { document: "hearsay", at: "1" } }),
      'rules/sources.json does not list "hearsay"',
    ],
    [
      "a date does not exist",
      withFirst({ from: "2020-02-30" }),
      '"2020-02-30" is not a date written YYYY-MM-DD',
    ],
    [
      "the last date covered does not exist",
      { ...written, knownThrough: "2026-12" },
      '"2026-12" is not a date written YYYY-MM-DD',
    ],
    ["there are no entries", { ...head, values: [] }, "invented-rate: no entries"],
  ])("is refused when %s", (_what, faulty, sentence) => {
    expect(() => readDatedTable(faulty)).toThrow(new RangeError(sentence));
  });
});

describe("looking up a date", () => {
  const table = readDatedTable(written);
  const rateOn = (date: string) => entryOn(table, calendarDate(date)).figures.rate.toNumber();

  it.each([
    ["2020-01-01", 0.1],
    ["2025-06-30", 0.1],
    ["2025-07-01", 0.07],
    ["2026-12-31", 0.07],
  ])("finds the entry in force on %s", (date, rate) => {
    expect(rateOn(date)).toBe(rate);
  });

  it.each([
    [
      "2019-12-31",
      "Invented rate: There is no figure for 12/31/2019. The table begins on 1/1/2020 (rules/invented-rate.json). Use the official text of that time.",
    ],
    [
      "2027-01-01",
      "Invented rate: There is no figure for 1/1/2027. The table covers dates through 12/31/2026 (rules/invented-rate.json). Check for a newer version of the add-in.",
    ],
  ])("refuses %s, naming table, date and the dates covered", (date, sentence) => {
    expect(() => rateOn(date)).toThrow(NotInTableError);
    expect(() => rateOn(date)).toThrow(sentence);
  });
});
