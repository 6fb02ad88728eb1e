import { describe, expect, it } from "vitest";
import { calendarDate } from "../../src/calendar/calendarDate";
import { oneOf, readListTable, requireReach } from "../../src/rules/listTable";
import { NotInTableError } from "../../src/rules/notInTableError";

const source = { document: "usc-26", at: "7503" };
const head = {
  id: "invented-list",
  title: "Invented list",
  keyedBy: "any day",
  knownFrom: "2010-01-01",
  knownThrough: "2026-12-31",
  source,
  confidence: "official",
};
const rows = [
  { colour: "red", source, confidence: "official" },
  { colour: "blue", source: { document: "usc-26", at: "7508A" }, confidence: "secondary" },
];
const COLOURS = ["red", "blue"] as const;
const readColour = ({ colour }: { colour: string }) => ({ colour: oneOf(COLOURS, colour) });
const read = (writtenHead: typeof head, writtenRows: typeof rows) =>
  readListTable(writtenHead, writtenRows, readColour);

describe("reading a list", () => {
  it("gives each row its own source", () => {
    const table = read(head, rows);
    expect(table.source.citation).toBe("26 U.S.C. 7503");
    expect(table.rows).toEqual([
      {
        colour: "red",
        source: { document: "usc-26", citation: "26 U.S.C. 7503", confidence: "official" },
      },
      {
        colour: "blue",
        source: { document: "usc-26", citation: "26 U.S.C. 7508A", confidence: "secondary" },
      },
    ]);
  });

  const withRow = (change: object) => rows.map((row) => ({ ...row, ...change }));

  it.each([
    [
      "a word of a row is not known",
      head,
      withRow({ colour: "green" }),
      '"green" is none of red, blue',
    ],
    [
      "a row has a wrong confidence",
      head,
      withRow({ confidence: "sure" }),
      '"sure" is no confidence',
    ],
    [
      "the list has a wrong confidence",
      { ...head, confidence: "sure" },
      rows,
      '"sure" is no confidence',
    ],
    [
      "the list cites an unknown document",
      { ...head, source: { document: "hearsay", at: "1" } },
      rows,
      'rules/sources.json does not list "hearsay"',
    ],
    [
      "a day does not exist",
      { ...head, knownFrom: "2010-02-29" },
      rows,
      '"2010-02-29" is not a day written YYYY-MM-DD',
    ],
  ])("is refused when %s", (_what, writtenHead, writtenRows, sentence) => {
    expect(() => read(writtenHead, writtenRows)).toThrow(new RangeError(sentence));
  });
});

describe("the reach of a list", () => {
  const table = read(head, rows);
  const reach = (day: string) => () => {
    requireReach(table, calendarDate(day));
  };

  it.each(["2010-01-01", "2026-12-31"])("includes %s", (day) => {
    expect(reach(day)).not.toThrow();
  });

  it.each([
    ["2009-12-31", "Invented list: no figure for 2009-12-31; held only from 2010-01-01 on"],
    ["2027-01-01", "Invented list: no figure for 2027-01-01; known only through 2026-12-31"],
  ])("does not include %s", (day, sentence) => {
    expect(reach(day)).toThrow(NotInTableError);
    expect(reach(day)).toThrow(sentence);
  });
});
