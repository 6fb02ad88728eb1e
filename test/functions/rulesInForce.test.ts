import { describe, expect, it } from "vitest";
import { edition, knownThrough, source } from "../../src/functions/rulesInForce";
import { datedTables, entriesOf, writtenTables } from "../rules/rulesFiles";
import { badInput, down, inCell, notHeld, serial } from "./sheet";

describe("SOURCE", () => {
  it("answers a column of figures, each in its own row", () => {
    const figures = down("failure to pay", "Failure-To-File", "failure to pey", "");
    expect(source(figures)).toEqual([
      ["26 U.S.C. 6651(a)(2), (b)(2), (h)"],
      ["26 U.S.C. 6651(a)(1), (b)(1), (c)(1)"],
      [
        badInput(
          'figure: "failure to pey" is no figure of the rules; the nearest is failure-to-pay, EXT.RULETABLES lists them all'
        ),
      ],
      [""],
    ]);
  });

  it("is that of the day asked for, of the newest figure without one", () => {
    expect(inCell(source, "underpayment rate", "2026-02-01")).toBe(
      "Rev. Rul. 2025-22, rates for the quarter"
    );
    expect(inCell(source, "underpayment rate", 0)).toBe(inCell(source, "underpayment rate"));
    expect(inCell(source, "failure to pay", "1999-12-31")).toBe("26 U.S.C. 6651(a)(2), (b)(2)");
  });

  it.each(datedTables.map((table) => [table.id, table] as const))(
    "says of every entry of %s whether it was read in the official text",
    (id, table) => {
      for (const { from, confidence } of entriesOf(table)) {
        const said = String(inCell(source, id, from));
        expect(said.endsWith(" (as reported elsewhere)")).toBe(confidence === "secondary");
        expect(said.endsWith(" (from memory: check)")).toBe(confidence === "memory");
      }
    }
  );

  it("refuses a day beyond what is known, of figures and of lists", () => {
    expect(inCell(source, "underpayment rate", "2027-01-01")).toEqual(
      notHeld(
        "Underpayment rate: no figure for 2027-01-01; known only through 2026-12-31 (rules/underpayment-rate.json)"
      )
    );
    expect(inCell(source, "legal holidays", "2008-12-31")).toEqual(
      notHeld(
        "Legal holidays that move a due date: no figure for 2008-12-31; held only from 2009-01-01 on (rules/legal-holidays.json)"
      )
    );
    expect(inCell(source, "legal holidays", "2026-11-11")).toBe("26 U.S.C. 7503");
  });
});

describe("KNOWNTHROUGH", () => {
  it.each(writtenTables.map(({ id, title, knownThrough: last }) => [id, title, last]))(
    "answers for %s, by id and by title",
    (id, title, last) => {
      expect(knownThrough(down(id, title))).toEqual([[serial(last)], [serial(last)]]);
    }
  );

  it("refuses an empty cell, saying where all are named", () => {
    expect(inCell(knownThrough, "")).toEqual(
      badInput(
        "figure: is empty; give the name of a table such as underpayment rate, EXT.RULETABLES lists them all"
      )
    );
  });
});

describe("RULETABLES", () => {
  it("lists every table with its reach, its entries and those from memory", () => {
    const [headings, version, ...tables] = edition();
    expect(headings).toEqual([
      "Table",
      "Title",
      "Kept by",
      "Known from",
      "Known through",
      "Entries",
      "From memory",
    ]);
    expect(version).toEqual(["add-in", expect.stringMatching(/^version \d/), "", "", "", "", ""]);
    const byId = (one: unknown[], other: unknown[]) =>
      String(one[0]).localeCompare(String(other[0]));
    expect(tables.toSorted(byId)).toEqual(
      writtenTables
        .map((table) => [
          table.id,
          table.title,
          table.keyedBy,
          serial(table.knownFrom ?? entriesOf(table)[0]?.from ?? ""),
          serial(table.knownThrough),
          entriesOf(table).length,
          entriesOf(table).filter(({ confidence }) => confidence === "memory").length,
        ])
        .toSorted(byId)
    );
  });
});
