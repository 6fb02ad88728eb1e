import { describe, expect, it } from "vitest";
import { interest, underpayRate } from "../../../src/functions/penalty/interest";
import { afterTable, badInput, beforeTable, down, inCell } from "../sheet";

const AFTER_THE_LAST = afterTable("underpayment-rate", "1/1/2027", "12/31/2026");

describe("UNDERPAYRATE", () => {
  // Rev. Rul. 2025-22 and the later rulings: 7% from 2026-01-01, 6% from 2026-04-01, 7% from 2026-07-01.
  it("answers the rate of each day, the last day of a quarter with that quarter", () => {
    const days = down("2026-03-31", 46113, "2026-06-30", "2026-07-01");
    expect(underpayRate(days)).toEqual([[0.07], [0.06], [0.06], [0.07]]);
  });

  it.each([
    ["2027-01-01", "latest", 0.07],
    ["2027-01-01", 0.05, 0.05],
    ["2027-01-01", "5%", 0.05],
    ["2026-12-31", 0.05, 0.07],
  ])("on %s with %j assumed is %d", (day, assumed, rate) => {
    expect(inCell(underpayRate, day, assumed)).toBe(rate);
  });

  it.each([
    [["2027-01-01"], AFTER_THE_LAST],
    [["2027-01-01", 0], AFTER_THE_LAST],
    [["1994-12-31", "latest"], beforeTable("underpayment-rate", "12/31/1994", "1/1/1995")],
    [
      ["2026-04-16", 7],
      badInput(
        "assumedRate: 7 is not an annual rate. Enter a percent such as 7%, or the word latest."
      ),
    ],
    [["4/15"], badInput('date: "4/15" is not a date. Enter a date such as 4/15/2026.')],
  ])("refuses %j", (values, refusal) => {
    expect(inCell(underpayRate, ...values)).toEqual(refusal);
  });
});

describe("INTEREST", () => {
  // 10,000 x ((1 + 0.06/365)^76 - 1), 26 U.S.C. 6622: the day due bears none, the day paid does.
  it.each([
    [[10000, "2026-04-15", "2026-06-30"], 125.7],
    [["$10,000.00", 46127, 46203.9], 125.7],
    [[10000, "2026-04-15", "2026-04-15"], 0],
    [[10000, "2026-04-15", "2026-04-16"], 1.64],
    [[0, "2026-04-15", "2026-06-30"], 0],
  ])("of %j is %d", (values, dollars) => {
    expect(inCell(interest, ...values)).toBe(dollars);
  });

  it("takes the assumed rate only beyond the published ones", () => {
    const published = inCell(interest, 10000, "2026-04-15", "2026-12-31");
    expect(inCell(interest, 10000, "2026-04-15", "2026-12-31", 0.2)).toBe(published);
    expect(inCell(interest, 10000, "2026-04-15", "2027-01-01", "7%")).toBe(
      inCell(interest, 10000, "2026-04-15", "2027-01-01", "latest")
    );
    expect(inCell(interest, 10000, "2026-12-31", "2027-01-01", 0.365)).toBe(10);
  });

  it.each([
    [[10000, "2026-04-15", "2027-01-01"], AFTER_THE_LAST],
    [
      [10000, "2026-04-16", "2026-04-15"],
      badInput("paidOn: 4/15/2026 is before dueOn, 4/16/2026. Correct one of the two dates."),
    ],
    [
      [-1, "2026-04-15", "2026-04-16"],
      badInput("amount: -1 is negative. Enter zero or a positive dollar amount."),
    ],
    [
      [100, "2026-02-30", "2026-04-16"],
      badInput('dueOn: "2026-02-30" is not a date. Enter a date such as 4/15/2026.'),
    ],
    [
      [100, "2026-04-15", null],
      badInput("paidOn: The cell is blank. Enter a date such as 4/15/2026."),
    ],
  ])("refuses %j", (values, refusal) => {
    expect(inCell(interest, ...values)).toEqual(refusal);
  });
});
