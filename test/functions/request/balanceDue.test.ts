import { describe, expect, it } from "vitest";
import { lines, shortfall, suggest } from "../../../src/functions/request/balanceDue";
import { afterTable, answerOf, badInput, beforeTable, down, inCell } from "../sheet";

describe("SHORTFALL", () => {
  // Form 4868, line 6: line 4 less line 5, not below zero.
  it.each([
    [18250, 15000, 3250],
    ["$18,250.00", 15000, 3250],
    [15000, 18250, 0],
    [0, 0, 0],
    [0.3, 0.1, 0.2],
    [1.005, 0, 1.01],
  ])("of tax %j and payments %j is %d", (totalTax, payments, due) => {
    expect(inCell(shortfall, totalTax, payments)).toBe(due);
  });

  it.each([
    [-5, 0, "totalTax: -5 is negative. Enter zero or a positive dollar amount."],
    ["(200)", 0, 'totalTax: "(200)" is negative. Enter zero or a positive dollar amount.'],
    [null, 0, "totalTax: The cell is blank. Enter a dollar amount, or 0 if there is none."],
    [100, "", "payments: The cell is blank. Enter a dollar amount, or 0 if there is none."],
    [
      100,
      "unknown",
      'payments: "unknown" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.',
    ],
  ])("of tax %j and payments %j is refused", (totalTax, payments, sentence) => {
    expect(inCell(shortfall, totalTax, payments)).toEqual(badInput(sentence));
  });

  it("answers a client list, an error cell in its own row", () => {
    const tax = down(100, { code: "#DIV/0!" }, 300, "");
    expect(shortfall(tax, down(40, 40, "x", ""))).toEqual([
      [60],
      [{ code: "#DIV/0!" }],
      [
        badInput(
          'payments: "x" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.'
        ),
      ],
      [""],
    ]);
  });
});

describe("SUGGEST", () => {
  // 90% of 20,000 is 18,000 (26 CFR 301.6651-1(c)(3)); the rest is arithmetic.
  it.each([
    [[20000, 15000], 5000],
    [[20000, 15000, "full"], 5000],
    [[20000, 15000, "reasonable cause"], 3000],
    [[20000, 15000, 0.95], 4000],
    [[20000, 15000, "95%"], 4000],
    [[20000, 15000, undefined, 0.05], 6000],
    [[20000, 15000, undefined, "5%"], 6000],
    [[20000, 15000, undefined, 250], 5250],
    [[20000, 15000, undefined, undefined, 2500], 7500],
    [[20000, 15000, "full", 0.05, 2500], 8500],
    [[20000, 15000, 0, 0, 0], 5000],
    [[20000, 15000, "", "", ""], 5000],
    [[20000, 25000], 0],
    [[100.01, 0, "reasonable cause"], 90.01],
  ])("%j is %d", (values, pay) => {
    expect(inCell(suggest, ...values)).toBe(pay);
  });

  it.each([
    [
      [20000, 15000, "most"],
      'target: "most" is not a target. Enter full, reasonable cause, or a percent of total tax such as 95%.',
    ],
    [
      [20000, 15000, 95],
      "target: 95 is not a target. Enter full, reasonable cause, or a percent of total tax such as 95%.",
    ],
    [
      [20000, 15000, "full", "100%"],
      'cushion: "100%" is not a cushion. Enter a percent of total tax such as 5%, or dollars.',
    ],
    [
      [20000, 15000, "full", 0, -1],
      "firstInstallment: -1 is negative. Enter zero or a positive dollar amount.",
    ],
  ])("%j is refused", (values, sentence) => {
    expect(inCell(suggest, ...values)).toEqual(badInput(sentence));
  });
});

describe("LINES", () => {
  const amountsAndMarks = (filerType: unknown) =>
    lines(2025, 18249.5, 15000.49, [[3000]], filerType).map((row) => [row[0], row[2], row[3]]);

  it("is a table of one width, headings first, with the law behind each line", () => {
    const table = lines(2025, 18249.5, 15000.49, 3000);
    expect(table[0]).toEqual(["Line", "Description", "Amount", "Checked", "Source"]);
    expect(new Set(table.map((row) => row.length))).toEqual(new Set([5]));
    for (const row of table.slice(1)) {
      expect(row[1]).not.toBe("");
      expect(row[4]).toMatch(/Form 4868/);
    }
  });

  // 26 CFR 301.6102-1: 50 cents and more go to the next dollar.
  it("rounds to whole dollars and adds up as rounded", () => {
    expect(amountsAndMarks(null)).toEqual([
      ["Line", "Amount", "Checked"],
      ["4", 18250, ""],
      ["5", 15000, ""],
      ["6", 3250, ""],
      ["7", 3000, ""],
      ["8", "", ""],
      ["9", "", ""],
    ]);
  });

  it.each([
    ["out of country", ["X", ""]],
    ["nonresident", ["", "X"]],
    ["resident", ["", ""]],
  ])("checks lines 8 and 9 for %s", (filerType, marks) => {
    expect(
      amountsAndMarks(filerType)
        .slice(-2)
        .map((row) => row[2])
    ).toEqual(marks);
  });

  it.each([
    [-1, 0, 0, "totalTax: -1 is negative. Enter zero or a positive dollar amount."],
    [
      0,
      "x",
      0,
      'payments: "x" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.',
    ],
    [
      0,
      0,
      null,
      "paidWithRequest: The cell is blank. Enter a dollar amount, or 0 if there is none.",
    ],
    [down(1, 2), 0, 0, "totalTax: The range has 2 cells. Select one cell."],
  ])("refuses %j, %j, %j", (totalTax, payments, paidWithRequest, sentence) => {
    expect(answerOf(() => lines(2025, totalTax, payments, paidWithRequest))).toEqual(
      badInput(sentence)
    );
  });

  it.each([
    [2016, 6],
    ["6/30/2026", 6],
  ])("takes the form of %j", (taxYear, count) => {
    expect(lines(taxYear, 1, 0, 0)).toHaveLength(count + 1);
  });

  it.each([
    [2015, beforeTable("request-lines", "12/31/2015", "12/31/2016")],
    [2026, afterTable("request-lines", "12/31/2026", "12/31/2025")],
    ["6/30/2027", afterTable("request-lines", "12/31/2026", "12/31/2025")],
    [
      "",
      badInput(
        "taxYear: The cell is blank. Enter a year such as 2025, or the last date of a fiscal year, such as 6/30/2026."
      ),
    ],
    [
      18249.5,
      badInput(
        "taxYear: 12/17/1949 is not within six days before or three days after the end of a month, so no tax year ends on it. Enter a year such as 2025, or the last date of a fiscal year, such as 6/30/2026."
      ),
    ],
  ])("refuses the tax year %j", (taxYear, refusal) => {
    expect(answerOf(() => lines(taxYear, 1, 0, 0))).toEqual(refusal);
  });
});
