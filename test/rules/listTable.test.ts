import { describe, expect, it } from "vitest";
import { calendarDate } from "../../src/calendar/calendarDate";
import { readListTable, requireReach } from "../../src/rules/listTable";
import { NotInTableError } from "../../src/rules/notInTableError";

const source = { document: "usc-26", at: "7503" };
const rows = [
  { color: "red", share: "0.9", source, confidence: "official" },
  {
    color: "blue",
    share: "1",
    source: { document: "usc-26", at: "7508A" },
    confidence: "secondary",
  },
] as const;
const written = {
  id: "invented-list",
  title: "Invented list",
  keyedBy: "any date",
  knownFrom: "2010-01-01",
  knownThrough: "2026-12-31",
  source,
  confidence: "official",
  colors: rows,
} as const;

describe("reading a list", () => {
  it("gives each row its own source", () => {
    const table = readListTable(written, "colors");
    expect(table.source.citation).toBe("IRC section 7503");
    expect(table.rows).toEqual([
      {
        color: "red",
        share: "0.9",
        source: { document: "usc-26", citation: "IRC section 7503", confidence: "official" },
      },
      {
        color: "blue",
        share: "1",
        source: { document: "usc-26", citation: "IRC section 7508A", confidence: "secondary" },
      },
    ]);
  });

  it("reads of a row what JSON cannot express", () => {
    const table = readListTable(written, "colors", ({ share }) => ({ share: Number(share) }));
    expect(table.rows.map(({ share }) => share)).toEqual([0.9, 1]);
  });

  it.each([
    [
      "the list cites an unknown document",
      { ...written, source: { document: "hearsay", at: "1" } },
      'rules/sources.json does not list "hearsay"',
    ],
    [
      "a row cites an unknown document",
      { ...written, colors: [{ ...rows[0], source: { document: "hearsay", at: "1" } }] },
      'rules/sources.json does not list "hearsay"',
    ],
    [
      "a date does not exist",
      { ...written, knownFrom: "2010-02-29" },
      '"2010-02-29" is not a day written YYYY-MM-DD',
    ],
  ])("is refused when %s", (_what, faulty, sentence) => {
    expect(() => readListTable(faulty, "colors")).toThrow(new RangeError(sentence));
  });
});

describe("the dates that a list covers", () => {
  const table = readListTable(written, "colors");
  const reach = (date: string) => () => {
    requireReach(table, calendarDate(date));
  };

  it.each(["2010-01-01", "2026-12-31"])("include %s", (date) => {
    expect(reach(date)).not.toThrow();
  });

  it.each([
    ["2009-12-31", "There is no figure for 12/31/2009. The table begins on 1/1/2010"],
    ["2027-01-01", "There is no figure for 1/1/2027. The table covers dates through 12/31/2026"],
  ])("do not include %s", (date, sentence) => {
    expect(reach(date)).toThrow(NotInTableError);
    expect(reach(date)).toThrow(`Invented list: ${sentence}`);
  });
});
