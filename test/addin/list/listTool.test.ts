import { describe, expect, it } from "vitest";
import {
  ANSWERS,
  answerColumnsOf,
  USUAL_ANSWERS,
  writtenBefore,
} from "../../../src/addin/list/listColumns";
import { listCheck } from "../../../src/addin/list/listFaults";
import { listReading, MEANINGS, withMeaning } from "../../../src/addin/list/listReading";
import { headingsBeyond, usersOwn } from "../../../src/addin/list/ownList";
import { paneList } from "../../../src/addin/list/paneList";
import { roster } from "../../../src/functions/season/roster";
import { inventedLists, keptLists } from "../../fixtures/invented/clientLists";
import { listOf, settingsOn } from "./sampleList";

const settings = settingsOn("2026-04-20");
const FIRST = ["Name", "ST", "Est. total tax", "W/H", "ES paid", "Fee"];
const ABBOTT = ["Abbott", "Maine", "$12,400", 6000, 4000, 450];
const list = listOf(FIRST, [ABBOTT]);

describe("how the headings of a list are read", () => {
  it.each([...inventedLists, ...keptLists])(
    "as ROSTER reads them: $title",
    ({ cells, reading }) => {
      const [headings = [], ...rows] = cells;
      const { headings: read, problem } = listReading(listOf(headings, rows), 2025, []);
      expect(problem).toBe("");
      expect(read.map(({ readAs }) => readAs !== "not used")).toEqual(
        reading.map((field) => field !== undefined)
      );
      for (const { readAs } of read) expect(MEANINGS).toContain(readAs);
    }
  );

  it("names those that are not used, and says which look like money or dates", () => {
    const { headings } = listReading(list, 2025, []);
    expect(headings.map(({ heading, readAs, remark }) => [heading, readAs, remark])).toEqual([
      ["Name", "Client", ""],
      ["ST", "State", ""],
      ["Est. total tax", "Estimated total tax", ""],
      ["W/H", "Other payments", "added to the others"],
      ["ES paid", "Other payments", "added to the others"],
      ["Fee", "not used", "Check: it looks like money"],
    ]);
  });

  it("says what is missing or twice, and takes the user's own meaning", () => {
    const mine = listOf(["Client", "Fed liab", "Payments"], [["Alder", 20000, 15000]]);
    const first = listReading(mine, 2025, []);
    expect(first.problem).toMatch(/^The first row has no heading for estimated total tax\./);
    expect(first.headings.map(({ readAs }) => readAs)).toEqual([
      "Client",
      "not used",
      "Total payments",
    ]);
    const own = withMeaning(
      withMeaning([], "Fed liab", "not used"),
      "Fed  liab",
      "Estimated total tax"
    );
    expect(own).toEqual([["Fed  liab", "Estimated total tax"]]);
    expect(listReading(mine, 2025, own).problem).toBe("");
    const twice = listOf(["Client", "Total tax", "Line 4", "Payments"], [["Alder", 1, 1, 1]]);
    expect(listReading(twice, 2025, []).problem).toMatch(/mean the same column/);
  });
});

describe("the columns of answers", () => {
  it("have one formula for each row, with its own cells", () => {
    const [balance] = answerColumnsOf(list, settings, ["Balance due"], []);
    expect(balance).toMatchObject({
      heading: "Balance due",
      formulas: ['=EXT.ROSTERROWS($A$3:$F$3,$A4:$F4,2025,"4/20/2026",,"Balance due")'],
      format: "#,##0.00",
    });
  });

  it("have a date or an amount wherever the answer is one", () => {
    const formats = answerColumnsOf(list, settings, ANSWERS, []).map(({ heading, format }) => [
      heading,
      format,
    ]);
    const withFormat = formats.filter(([, format]) => format !== "");
    expect(withFormat.map(([heading]) => heading)).toEqual(
      ANSWERS.filter((one) =>
        /due date|^Balance|payment$|^Pay|^Remaining|^Percent|^Penalties|installment/.test(one)
      )
    );
  });

  it("say why a suggested payment is not the balance due", () => {
    const mine = listOf([...FIRST, "Cushion"], [[...ABBOTT, "5%"]]);
    const [suggested] = answerColumnsOf(mine, settings, ["Suggested payment"], []);
    expect(suggested?.heading).toBe("Suggested payment (with 5% cushion)");
  });

  it("tell settings, answers and meanings when the list is used again", () => {
    const rated = settingsOn("2026-04-20", "7%");
    const own = [['The "prior" tax', "Prior year tax"]] as const;
    const headings = [...FIRST, own[0][0]];
    const mine = listOf(headings, [[...ABBOTT, 1]]);
    const columns = answerColumnsOf(mine, rated, USUAL_ANSWERS, own);
    const written = {
      ...mine,
      headings: [...headings, ...columns.map(({ heading }) => heading), "Remarks"],
      rows: [[...ABBOTT, 1, ...columns.map(() => 1), "late"]],
      formulas: [
        [...headings.map(() => ""), ...columns.map(({ formulas }) => formulas[0] ?? ""), ""],
      ],
    };
    expect(writtenBefore(written)).toEqual({ settings: rated, answers: USUAL_ANSWERS, own });
    expect(usersOwn(written).headings).toEqual(headings);
    expect(headingsBeyond(written)).toEqual(["Remarks"]);
    expect(answerColumnsOf(written, rated, USUAL_ANSWERS, own)).toEqual(columns);
    expect(writtenBefore(mine)).toBeUndefined();
    // The user has changed the heading since: the pane no longer uses its meaning, which the functions would refuse.
    const renamed = { ...written, headings: written.headings.with(FIRST.length, "Other") };
    expect(paneList(written).own).toEqual(own);
    expect(paneList(renamed).own).toEqual([]);
    const edited = written.formulas.map((row) =>
      row.map((one) => one.replace('"4/20/2026"', "$Z$1"))
    );
    expect(writtenBefore({ ...written, formulas: edited })).toBeUndefined();
  });
});

describe("the check of a list", () => {
  it("names each cell that cannot be read, and leaves its row out of the totals", () => {
    const rows = [
      ABBOTT,
      ["Chavez", "Texass", 60000, "n/a", "", 900],
      ["", "", "", "", "", ""],
      ["Duarte", "TX", "#REF!", 1, "", ""],
      ["Egan", "TX", "", 1, "", ""],
      ["Total", "", 72400, 6001, 4000, ""],
    ];
    const { faults, totals } = listCheck(usersOwn(listOf(FIRST, rows)), settings, []);
    expect(faults.map(({ address, client, heading }) => [address, client, heading])).toEqual([
      ["B5", "Chavez", "ST"],
      ["D5", "Chavez", "W/H"],
      ["C7", "Duarte", "Est. total tax"],
      ["C8", "Egan", "Est. total tax"],
    ]);
    expect(faults.map(({ sentence }) => sentence)).toEqual([
      expect.stringMatching(/^"Texass" is not a state/),
      expect.stringMatching(/^"n\/a" is not a dollar amount\. Enter/),
      "The cell has the error #REF!. Correct it.",
      expect.stringMatching(/^The cell is blank\. Enter/),
    ]);
    expect(totals).toEqual({
      clients: 4,
      balanceDue: 2400,
      suggestedPayment: 2400,
      leftOut: 3,
      totalRows: 1,
    });
  });

  it("takes a list that is longer than ROSTER takes at once", () => {
    const rows = Array.from({ length: 20_001 }, (_row, index) => [`Client ${index}`, 2, 1]);
    const long = listOf(["Client", "Total tax", "Payments"], rows);
    expect(listCheck(long, settings, []).totals).toMatchObject({
      clients: 20_001,
      balanceDue: 20_001,
    });
  });

  it.each([...inventedLists, ...keptLists])("adds up what ROSTER answers: $title", ({ cells }) => {
    const [headings = [], ...rows] = cells;
    const answers = roster(cells as unknown[][], 2025, "4/20/2026", "", [["Balance due"]])
      .slice(1)
      .flat();
    const amounts = answers.filter((answer) => typeof answer === "number");
    const { totals } = listCheck(usersOwn(listOf(headings, rows)), settings, []);
    expect(totals.balanceDue).toBe(amounts.reduce((sum, amount) => sum + amount, 0));
    expect(totals.leftOut).toBe(rows.length - amounts.length);
  });
});
