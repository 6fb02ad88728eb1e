import { describe, expect, it } from "vitest";
import { ruleTableList, knownThrough, source } from "../../../src/functions/rules/ruleTables";
import { datedTables, entriesOf, writtenTables } from "../../rules/rulesFiles";
import { afterTable, badInput, beforeTable, down, inCell, serial } from "../sheet";

describe("SOURCE", () => {
  it("answers a column of tables, each in its own row", () => {
    const figures = down("failure to pay", "Failure-To-File", "failure to pey", "");
    expect(source(figures)).toEqual([
      ["IRC section 6651(a)(2), (b)(2), (h)"],
      ["IRC section 6651(a)(1), (b)(1), (c)(1)"],
      [
        badInput(
          'table: "failure to pey" is not a rule table. The closest name is failure-to-pay. EXT.RULETABLES lists them all.'
        ),
      ],
      [""],
    ]);
  });

  it("is that of the date, or of the newest figure without a date", () => {
    expect(inCell(source, "underpayment rate", "2026-02-01")).toBe(
      "Rev. Rul. 2025-22, rates for the quarter"
    );
    expect(inCell(source, "underpayment rate", 0)).toBe(inCell(source, "underpayment rate"));
    expect(inCell(source, "failure to pay", "1999-12-31")).toBe("IRC section 6651(a)(2), (b)(2)");
  });

  it.each(datedTables.map((table) => [table.id, table] as const))(
    "says whether every entry of %s was read in the official text",
    (id, table) => {
      for (const { from, confidence } of entriesOf(table)) {
        const said = String(inCell(source, id, from));
        expect(said.endsWith(" (secondary source)")).toBe(confidence === "secondary");
        expect(said.endsWith(" (unverified: check the official text)")).toBe(
          confidence === "memory"
        );
      }
    }
  );

  it("refuses a date that the table does not cover, for figures and for lists", () => {
    expect(inCell(source, "underpayment rate", "2027-01-01")).toEqual(
      afterTable("underpayment-rate", "1/1/2027", "12/31/2026")
    );
    expect(inCell(source, "legal holidays", "2008-12-31")).toEqual(
      beforeTable("legal-holidays", "12/31/2008", "1/1/2009")
    );
    expect(inCell(source, "legal holidays", "2026-11-11")).toBe("IRC section 7503");
  });
});

describe("KNOWNTHROUGH", () => {
  it.each(writtenTables.map(({ id, title, knownThrough: last }) => [id, title, last]))(
    "answers for %s, by id and by title",
    (id, title, last) => {
      expect(knownThrough(down(id, title))).toEqual([[serial(last)], [serial(last)]]);
    }
  );

  it("refuses a blank cell, and says where all names are listed", () => {
    expect(inCell(knownThrough, "")).toEqual(
      badInput(
        "table: The cell is blank. Enter the name of a rule table, such as underpayment rate. EXT.RULETABLES lists them."
      )
    );
  });
});

describe("RULETABLES", () => {
  it("lists every table with the dates it covers, its entries and the unverified ones", () => {
    const [headings, version, ...tables] = ruleTableList();
    expect(headings).toEqual([
      "Table",
      "Title",
      "Looked up by",
      "Covers from",
      "Covers through",
      "Entries",
      "Unverified entries",
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
          // A state's rule has terms, each with a confidence of its own.
          entriesOf(table).filter((entry) =>
            JSON.stringify(entry).includes('"confidence":"memory"')
          ).length,
        ])
        .toSorted(byId)
    );
  });
});
