import { describe, expect, it } from "vitest";
import { roster } from "../../../src/functions/season/roster";
import { rosterHeadings } from "../../../src/functions/season/rosterHeadings";
import { answerOf, badInput } from "../sheet";

const AS_OF = "2026-04-10";
const CHOSEN = [["Client"], ["Balance due"], ["Regular due date"], ["Unreadable"]];
const HEADINGS = ["Client", "Total tax", "Total payments"];

const answer = (list: unknown[][]): unknown =>
  answerOf(() => roster(list, 2025, AS_OF, "", CHOSEN));
const rowsOf = (list: unknown[][]): unknown[][] => (answer(list) as unknown[][]).slice(1);
const refuses = (list: unknown[][], sentence: string): void => {
  expect(answer(list)).toEqual(badInput(`clientList: ${sentence}`));
  expect(answerOf(() => rosterHeadings(list, 2025))).toEqual(badInput(`clientList: ${sentence}`));
};

describe("a client list that is not in order", () => {
  it("is refused without headings", () => {
    refuses(
      [
        ["Alder", 20_000, 15_000],
        ["Cress", 9_000, 6_000],
      ],
      "The first row looks like a client, not like headings. Add a row of headings above the clients, and select it with them."
    );
  });

  it("is refused with two headings for one column, and with one heading twice", () => {
    refuses(
      [
        ["Client", "Total tax", "Est. tax", "Total payments"],
        ["Alder", 20_000, 20_000, 15_000],
      ],
      'The headings "Total tax" and "Est. tax" mean the same column. Keep one of them.'
    );
    refuses(
      [
        ["Client", "Total tax", "Total tax", "Total payments"],
        ["Alder", 20_000, 20_000, 15_000],
      ],
      'The headings "Total tax" and "Total tax" mean the same column. Keep one of them.'
    );
  });

  it("is refused with a title over its columns, as a merged cell has it", () => {
    for (const blank of ["", null, 0])
      refuses(
        [["Clients on extension, 2025", blank, blank], HEADINGS, ["Alder", 20_000, 15_000]],
        'The first row has only "Clients on extension, 2025", and the cells beside it are blank. Select the list from the row of its headings.'
      );
  });

  it("shows the columns below a merged heading as columns without a heading", () => {
    const list = [
      ["Client", "Total tax", "Total payments", "", ""],
      ["Alder", 20_000, 15_000, 4_000, ""],
    ];
    expect(rosterHeadings(list, 2025).slice(1)).toEqual([
      ["Client", "Client", ""],
      ["Total tax", "Estimated total tax", ""],
      ["Total payments", "Total payments", ""],
      ["(blank heading in column 4)", "not used", "Check: it looks like money"],
    ]);
  });

  it("leaves blank rows blank, and keeps the place of each row", () => {
    const blank = ["", "", "", ""];
    expect(
      rowsOf([HEADINGS, ["", null, ""], ["Alder", 20_000, 15_000], [0, 0, 0], [" ", "", null]])
    ).toEqual([blank, ["Alder", 5_000, 46_127, ""], blank, blank]);
  });

  it("leaves out rows with totals and repeated headings, and says so", () => {
    const totals = ["Total", "TOTALS:", "Total (3)", "Grand total", "Subtotal", "sub-total"];
    const rows = rowsOf([
      HEADINGS,
      ["Alder", 20_000, 15_000],
      HEADINGS,
      ...totals.map((name) => [name, 20_000, 15_000]),
      ["Totaro", 20_000, 15_000],
    ]);
    expect(rows[1]).toEqual(["", "", "", "headings, not a client"]);
    for (const row of rows.slice(2, -1)) expect(row).toEqual(["", "", "", "a total, not a client"]);
    expect(rows.at(-1)).toEqual(["Totaro", 5_000, 46_127, ""]);
  });

  it("leaves out a row with totals whose first cell says so, where the list has no names", () => {
    const list = [
      ["No.", "Total tax", "Total payments"],
      ["TOTAL", 20_000, 15_000],
    ];
    expect(rowsOf(list)[0]).toEqual(["", "", "", "a total, not a client"]);
  });

  it("reads numbers that are stored as text", () => {
    expect(rowsOf([HEADINGS, ["Alder", " 20000 ", "$15,000.00"]])).toEqual([
      ["Alder", 5_000, 46_127, ""],
    ]);
  });

  it("answers with the error of a cell what depends on it, in its row only", () => {
    const broken = { code: "#DIV/0!" };
    const rows = rowsOf([HEADINGS, ["Alder", broken, 15_000], ["Cress", 9_000, 6_000]]);
    expect(rows).toEqual([
      ["Alder", { code: "#DIV/0!" }, 46_127, "Total tax: #DIV/0!"],
      ["Cress", 3_000, 46_127, ""],
    ]);
  });

  it("takes no and FALSE in the record as not yet, and yes as unreadable", () => {
    const list = (cell: unknown) => [
      [...HEADINGS, "Ext. filed", "Ext. accepted"],
      ["Alder", 20_000, 15_000, "4/1/2026", cell],
    ];
    const of = (cell: unknown) =>
      roster(list(cell), 2025, AS_OF, "", [["Status"], ["Unreadable"]])[1];
    for (const no of ["no", false, "N", ""]) expect(of(no)).toEqual(["unconfirmed", ""]);
    expect(of("yes")).toEqual([
      badInput('confirmedOn: "yes" is not a date. Enter a date such as 4/15/2026.'),
      'Ext. accepted: "yes"',
    ]);
  });

  it("is refused with 50,000 rows, and says how to split it", () => {
    const rows = Array.from({ length: 50_000 }, () => ["Alder", 20_000, 15_000]);
    refuses(
      [HEADINGS, ...rows],
      "The list has 50,000 rows. Use one formula for each 20,000 rows or fewer."
    );
  });
});
