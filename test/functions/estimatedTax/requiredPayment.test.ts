import { describe, expect, it } from "vitest";
import {
  firstInstallment,
  requiredPayment,
} from "../../../src/functions/estimatedTax/requiredPayment";
import { badInput, inCell } from "../sheet";

const STATUSES = "Enter single, joint, separate, head or survivor, or S, MFJ, MFS, HOH or QSS.";

// 26 U.S.C. 6654(d)(1): 90%, 100%, 110%; the figures are checked in test/calculation/estimatedTax.
describe("REQUIREDPAYMENT", () => {
  it.each([
    [[2026, "joint", 11_000, 10_000, 60_000], 9900],
    [[2026, "MFJ", 30_000, 20_000, 160_000], 22_000],
    [[2026, " mfs ", 30_000, 20_000, "$75,000.01"], 22_000],
    [[2026, "S", 30_000, 0, 60_000], 0],
    [[2026, "S", 30_000, "", ""], 27_000],
    [[2026, "S", 30_000, undefined, 0], 27_000],
    [[2026, "S", 30_000, 0, 0], 27_000],
    [[2026, "S", 30_000, 0], 27_000],
    [[2026, "HOH", "10,000.01", "", 0], 9000.01],
    [[2026, "QSS", 27_000, 20_000, 160_000, "yes"], 18_000],
  ])("of %j is %d", (values, dollars) => {
    expect(inCell(requiredPayment, ...values)).toBe(dollars);
  });

  it("answers a client list in one call, a bad row with its own error", () => {
    const column = (...cells: unknown[]): unknown[][] => cells.map((cell) => [cell]);
    const answers = requiredPayment(
      [[2026]],
      column("S", "widow", "S"),
      column(10_000, 10_000, ""),
      [[""]],
      [[0]]
    );
    expect(answers).toEqual([
      [9000],
      [badInput(`filingStatus: "widow" is not a filing status. ${STATUSES}`)],
      [
        badInput(
          "currentYearTax: The cell is blank. Enter a dollar amount, or 0 if there is none."
        ),
      ],
    ]);
  });

  it.each([
    [[2026, "", 1, 1, 1], `filingStatus: The cell is blank. ${STATUSES}`],
    [
      [2026, "S", -1, 1, 1],
      "currentYearTax: -1 is negative. Enter zero or a positive dollar amount.",
    ],
    [
      [2026, "S", 1, "none", 1],
      'priorYearTax: "none" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.',
    ],
    [
      [2026, "S", 30_000, "", 60_000],
      "priorYearTax: The cell is blank, but priorYearAgi is 60000. Enter the tax on last year's return, or clear both if there was none.",
    ],
    [
      [2026, "S", 1, 1, ""],
      "priorYearAgi: The cell is blank. Enter a dollar amount, or 0 if there is none.",
    ],
    [
      [2026, "S", 1, 1, 1, "maybe"],
      'farmerOrFisherman: "maybe" is not yes or no. Enter yes, no, TRUE, FALSE, x, 1 or 0.',
    ],
  ])("refuses %j", (values, sentence) => {
    expect(inCell(requiredPayment, ...values)).toEqual(badInput(sentence));
  });

  it("does not answer for a year before 2003", () => {
    expect(inCell(requiredPayment, 2002, "S", 1, 1, 1)).toEqual({
      code: "#N/A",
      message:
        "Required annual payment of estimated tax: There is no figure for 12/31/2002. The table begins on 12/31/2003 (rules/required-annual-payment.json). Use the official text of that time.",
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
      badInput(
        'expectedTax: "lots" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.'
      )
    );
    expect(inCell(firstInstallment, 2026, "S", 1, 1, 1, 1, -2)).toEqual(
      badInput("overpaymentApplied: -2 is negative. Enter zero or a positive dollar amount.")
    );
  });
});
