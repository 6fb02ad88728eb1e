import { describe, expect, it } from "vitest";
import { firstInstallment, requiredAnnualPayment } from "../../src/functions/estimates";
import { badInput, inCell } from "./sheet";

const STATUSES = "give single, joint, separate, head, survivor, or S, MFJ, MFS, HOH, QSS";

// 26 U.S.C. 6654(d)(1): 90%, 100%, 110%; the figures are checked in test/calculation/estimatedTax.
describe("REQUIREDPAYMENT", () => {
  it.each([
    [[2026, "joint", 11_000, 10_000, 60_000], 9900],
    [[2026, "MFJ", 30_000, 20_000, 160_000], 22_000],
    [[2026, " mfs ", 30_000, 20_000, "$75,000.01"], 22_000],
    [[2026, "S", 30_000, 0, 60_000], 0],
    [[2026, "S", 30_000, "", 60_000], 27_000],
    [[2026, "S", 30_000, undefined, 0], 27_000],
    [[2026, "HOH", "10,000.01", "", 0], 9000.01],
    [[2026, "QSS", 27_000, 20_000, 160_000, "yes"], 18_000],
  ])("of %j is %d", (values, dollars) => {
    expect(inCell(requiredAnnualPayment, ...values)).toBe(dollars);
  });

  it("answers a client list in one call, a bad row with its own error", () => {
    const column = (...cells: unknown[]): unknown[][] => cells.map((cell) => [cell]);
    const answers = requiredAnnualPayment(
      [[2026]],
      column("S", "widow", "S"),
      column(10_000, 10_000, ""),
      [[""]],
      [[0]]
    );
    expect(answers).toEqual([
      [9000],
      [badInput(`status: "widow" is no filing status; ${STATUSES}`)],
      [badInput("currentTax: is empty; give dollars, 0 if there is nothing")],
    ]);
  });

  it.each([
    [[2026, "", 1, 1, 1], `status: is empty; ${STATUSES}`],
    [[2026, "S", -1, 1, 1], "currentTax: -1 is negative; give dollars, zero or more"],
    [[2026, "S", 1, "none", 1], 'priorTax: "none" is not an amount in dollars'],
    [
      [2026, "S", 1, 1, ""],
      "priorAdjustedGrossIncome: is empty; give dollars, 0 if there is nothing",
    ],
    [
      [2026, "S", 1, 1, 1, "maybe"],
      'farmer: "maybe" is neither yes nor no; give yes, no, TRUE, FALSE, x, 1 or 0',
    ],
  ])("refuses %j", (values, sentence) => {
    expect(inCell(requiredAnnualPayment, ...values)).toEqual(badInput(sentence));
  });

  it("does not answer for a year before 2003", () => {
    expect(inCell(requiredAnnualPayment, 2002, "S", 1, 1, 1)).toEqual({
      code: "#N/A",
      message:
        "Required annual payment of estimated tax: no figure for 2002-12-31; held only from 2003-12-31 on (rules/required-annual-payment.json)",
    });
  });
});

describe("FIRSTINSTALLMENT", () => {
  it.each([
    [[2026, "joint", 24_000, 20_000, 120_000, 8_000], 3000],
    [[2026, "joint", 24_000, 20_000, 120_000, 8_000, 1_200], 1800],
    [[2026, "joint", 24_000, 20_000, 120_000], 5000],
    [[2026, "joint", 24_000, "20,000.01", 120_000, 8_000], 3000.01],
    [[2026, "joint", 8_999.99, "", 0, 8_000], 0],
    [[2026, "joint", 9_000, "", 0, 8_000], 25],
    [[2026, "joint", 24_000, 20_000, 120_000, 8_000, "", "x"], 0],
  ])("of %j is %d", (values, dollars) => {
    expect(inCell(firstInstallment, ...values)).toBe(dollars);
  });

  it("names its own arguments when it refuses", () => {
    expect(inCell(firstInstallment, 2026, "S", "lots", 1, 1)).toEqual(
      badInput('expectedTax: "lots" is not an amount in dollars')
    );
    expect(inCell(firstInstallment, 2026, "S", 1, 1, 1, 1, -2)).toEqual(
      badInput("credited: -2 is negative; give dollars, zero or more")
    );
  });
});
