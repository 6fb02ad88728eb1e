import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { roster } from "../../../src/functions/season/roster";
import { ROSTER_HEADINGS } from "../../../src/functions/season/rosterColumns";
import { rosterHeadings } from "../../../src/functions/season/rosterHeadings";
import { rosterRows } from "../../../src/functions/season/rosterRows";
import { inventedLists, keptLists } from "../../fixtures/invented/clientLists";
import { answerOf, badInput, inCell } from "../sheet";

const HEADINGS = [["Client", "Total tax", "Payments"]];
const ALL = [[...ROSTER_HEADINGS]];
const AS_OF = "2026-04-20";

// ROSTER is the check: its answers are tested against the single functions and the law beside it.
describe("ROSTERROWS", () => {
  it.each([...inventedLists, ...keptLists])(
    "answers as ROSTER, row by row: $title",
    ({ cells }) => {
      const [headings = [], ...rows] = cells as unknown[][];
      const [, ...whole] = roster([headings, ...rows], 2025, AS_OF, "latest", ALL);
      const single = rows.map(
        (row) => rosterRows([headings], [row], 2025, AS_OF, "latest", ALL)[0]
      );
      expect(single).toEqual(whole);
      expect(rosterRows([headings], rows, 2025, AS_OF, "latest", ALL)).toEqual(whole);
    }
  );

  it("answers one client and one heading in a single cell", () => {
    expect(
      rosterRows(HEADINGS, [["Alder", 20000, 15000]], 2025, AS_OF, null, [["Balance due"]])
    ).toEqual([[5000]]);
  });

  it("leaves a blank row and a row of totals blank", () => {
    const rows = [
      ["", "", ""],
      ["Total", 20000, 15000],
      [null, null, null],
    ];
    expect(rosterRows(HEADINGS, rows, 2025, AS_OF, null, [["Balance due", "Unreadable"]])).toEqual([
      ["", ""],
      ["", "a total, not a client"],
      ["", ""],
    ]);
  });

  it("takes the preparer's own meaning of a heading", () => {
    const rows = [["Alder", 20000, 15000]];
    const own = [["Fed liab", "Total tax"]];
    const headings = [["Client", "Fed liab", "Payments"]];
    expect(rosterRows(headings, rows, 2025, AS_OF, null, [["Balance due"]], own)).toEqual([[5000]]);
  });

  it("refuses a meaning for a heading that the list does not have", () => {
    const own = [
      ["", ""],
      ["Fed liab", "Total tax"],
    ];
    const sentence = badInput(
      'headings row 2: "Fed liab" is not a heading of the list. Enter one of its headings: "Client", "Total tax", "Payments".'
    );
    const rows = [["Alder", 20000, 15000]];
    expect(
      answerOf(() => rosterRows(HEADINGS, rows, 2025, AS_OF, null, [["Balance due"]], own))
    ).toEqual(sentence);
    const list = [...HEADINGS, ...rows];
    expect(answerOf(() => roster(list, 2025, AS_OF, null, [["Balance due"]], own))).toEqual(
      sentence
    );
    expect(answerOf(() => rosterHeadings(list, 2025, own))).toEqual(sentence);
  });

  it("refuses any such meaning, whatever the case and spacing, and takes those of the list", () => {
    const rows = [["Alder", 20000, 15000]];
    const answer = (heading: string): unknown =>
      answerOf(() =>
        rosterRows(HEADINGS, rows, 2025, AS_OF, null, [["Balance due"]], [[heading, "not used"]])
      );
    const present = ["", "client", "total tax", "payments"];
    const absent = fc
      .string({ maxLength: 60 })
      .filter((heading) => !present.includes(heading.trim().toLowerCase()));
    fc.assert(
      fc.property(absent, (heading) => {
        const { code, message } = answer(heading) as { code: string; message: string };
        expect(code).toBe("#VALUE!");
        expect(message).toMatch(/^headings row 1: /);
        expect(message.length).toBeLessThan(250);
      })
    );
    expect(answer(" CLIENT ")).toEqual([[5000]]);
  });

  it("refuses rows of another width, and more than one row of headings", () => {
    expect(inCell(rosterRows, HEADINGS, [["Alder", 1]], 2025, AS_OF)).toEqual(
      badInput(
        "rows: The columns differ in number: 2 here, 3 in listHeadings. Select the same columns."
      )
    );
    const two = [...HEADINGS, ...HEADINGS];
    expect(answerOf(() => rosterRows(two, [["Alder", 1, 2]], 2025, AS_OF))).toEqual(
      badInput("listHeadings: The range has 2 rows. Select only the row of headings.")
    );
  });

  it("names the argument with the headings if one is missing", () => {
    expect(answerOf(() => rosterRows([["Client"]], [["Alder"]], 2025, AS_OF))).toEqual(
      badInput(
        "listHeadings: The first row has no heading for estimated total tax and total payments. Add those columns."
      )
    );
  });
});
