import { describe, expect, it } from "vitest";
import { combatZone, installment, disasterDate } from "../../../src/functions/dueDate/otherDates";
import { due, extended, payBy } from "../../../src/functions/dueDate/returnDates";
import { afterTable, answerOf, badInput, beforeTable, down, inCell, serial } from "../sheet";

// Days: 26 U.S.C. 6072, 6081, 6151, 7503; Rev. Rul. 2015-13 for Emancipation Day and Patriots' Day (2024-04-15 and -16).
const RELIEF = ["2024-01-21", "2024-06-17"] as const; // IR-2024-146

describe("DUE, EXTENDED and PAYBY", () => {
  it.each([
    ["an ordinary year", [2025], "2026-04-15", "2026-10-15", "2026-04-15"],
    ["a state with a holiday", [2023, "ME"], "2024-04-17", "2024-10-15", "2024-04-17"],
    [
      "out of country",
      [2023, undefined, "out of country"],
      "2024-06-17",
      "2024-10-15",
      "2024-04-15",
    ],
    ["nonresident", [2025, undefined, "nonresident"], "2026-06-15", "2026-12-15", "2026-06-15"],
    ["postponement", [2023, "CA", "", ...RELIEF], "2024-06-17", "2024-10-15", "2024-06-17"],
    ["a fiscal year", ["2026-06-30"], "2026-10-15", "2027-04-15", "2026-10-15"],
    // 26 U.S.C. 441(f)(2)(A): as if it ended on December 31.
    ["a 52/53-week year", ["12/27/2025"], "2026-04-15", "2026-10-15", "2026-04-15"],
    ["a 53-week year", ["1/3/2026"], "2026-04-15", "2026-10-15", "2026-04-15"],
    // 26 CFR 1.441-2(c)(3), Example 2: May 25 to June 3 counts as May 31.
    ["a year to a Saturday in May", ["5/30/2026"], "2026-09-15", "2027-03-15", "2026-09-15"],
    ["everything a date can be", [46022, null, 0, 0, ""], "2026-04-15", "2026-10-15", "2026-04-15"],
  ])("know %s", (_what, values, regular, withExtension, payment) => {
    expect(inCell(due, ...values)).toBe(serial(regular));
    expect(inCell(extended, ...values)).toBe(serial(withExtension));
    expect(inCell(payBy, ...values)).toBe(serial(payment));
  });

  it("answer a client list in one call, a bad row with its own error", () => {
    const years = down(2025, "next year", 2023, null, 2099);
    const states = down("ca", "ME", "ma", null, "");
    expect(due(years, states)).toEqual([
      [serial("2026-04-15")],
      [
        badInput(
          'taxYear: "next year" is not a tax year. Enter a year such as 2025, or the last date of a fiscal year, such as 6/30/2026.'
        ),
      ],
      [serial("2024-04-17")],
      [""],
      [afterTable("return-due-date", "12/31/2099", "12/31/2027")],
    ]);
  });

  const year = "Enter a year such as 2025, or the last date of a fiscal year, such as 6/30/2026.";
  it.each([
    [["next year"], badInput(`taxYear: "next year" is not a tax year. ${year}`)],
    [["4/15"], badInput(`taxYear: "4/15" is not a tax year. ${year}`)],
    [[undefined], badInput(`taxYear: The cell is blank. ${year}`)],
    [[1850], beforeTable("return-due-date", "12/31/1850", "12/31/2009")],
    [[2099], afterTable("return-due-date", "12/31/2099", "12/31/2027")],
    [
      [2025, "ZZ"],
      badInput(
        'state: "ZZ" is not a state. Enter a postal code or a name, such as ME or Maine, or foreign.'
      ),
    ],
    [
      [2025, "", "alien"],
      badInput(
        'filerType: "alien" is not a filer type. Enter resident, out of country or nonresident, or leave it blank.'
      ),
    ],
    [
      [2025, "", "", "2026-01-22"],
      badInput(
        "postponementEnds: The cell is blank, but postponementBegins has a date. Enter both dates, or neither."
      ),
    ],
    [[{ code: "#DIV/0!" }], { code: "#DIV/0!" }],
  ])("refuse %j with a whole sentence", (values, refusal) => {
    expect(inCell(due, ...values)).toEqual(refusal);
    expect(inCell(extended, ...values)).toEqual(refusal);
    expect(inCell(payBy, ...values)).toEqual(refusal);
  });

  it("refuse columns of unequal length", () => {
    const unequal = answerOf(() => due(down(2023, 2024, 2025), down("ME", "CA")));
    expect(unequal).toEqual(
      badInput(
        "state: The range has 2 cells, but taxYear has 3. Ranges used together must have the same number of cells."
      )
    );
  });

  it("refuse an empty range", () => {
    expect(answerOf(() => due([]))).toEqual(
      badInput("taxYear: The range is empty. Select at least one cell.")
    );
  });
});

describe("INSTALLMENT", () => {
  // 26 U.S.C. 6654(c)(2), (k); Patriots' Day moves no installment (Rev. Rul. 2015-13).
  it("answers the four days of a year from a column of numbers", () => {
    expect(installment([[2026]], down(1, 2, "3", 4))).toEqual(
      ["2026-04-15", "2026-06-15", "2026-09-15", "2027-01-15"].map((day) => [serial(day)])
    );
  });

  it("counts from the end of a fiscal year", () => {
    expect(inCell(installment, "2024-02-29", 1)).toBe(serial("2023-06-15"));
  });

  it("moves with disaster relief", () => {
    expect(inCell(installment, 2024, 1, ...RELIEF)).toBe(serial("2024-06-17"));
  });

  it("refuses a fifth installment", () => {
    expect(inCell(installment, 2026, 5)).toEqual(
      badInput("installmentNumber: 5 is not an installment number. Enter 1, 2, 3 or 4.")
    );
  });
});

describe("DISASTERDATE", () => {
  it("moves the days inside the period to its end and no others", () => {
    const days = down("2024-01-20", "2024-01-21", 45397, "2024-06-17", "2024-06-18", null);
    expect(disasterDate(days, [[RELIEF[0]]], [[RELIEF[1]]])).toEqual([
      [serial("2024-01-20")],
      [serial("2024-06-17")],
      [serial("2024-06-17")],
      [serial("2024-06-17")],
      [serial("2024-06-18")],
      [""],
    ]);
  });

  it.each([
    ["4/15", ...RELIEF, 'date: "4/15" is not a date. Enter a date such as 4/15/2026.'],
    [
      "2024-04-15",
      null,
      0,
      "postponementBegins: The cell is blank. Enter a date such as 4/15/2026.",
    ],
    [
      "2024-04-15",
      "2024-06-17",
      "2024-01-21",
      "postponementEnds: 1/21/2024 is before the postponement begins on 6/17/2024. Correct one of the two dates.",
    ],
  ])("refuses %j from %j to %j", (day, begins, until, sentence) => {
    expect(inCell(disasterDate, day, begins, until)).toEqual(badInput(sentence));
  });
});

describe("COMBATZONE", () => {
  // Pub. 3, length of extension: 180 days and what was left of the season: 46 from March 1, 105 from before it.
  it.each([
    ["2026-03-01", "2027-05-14"],
    ["2025-11-20", "2027-07-12"],
  ])("adds 180 days and the days left on entering on %s", (entered, lastDay) => {
    expect(inCell(combatZone, 2025, entered, "2026-09-30")).toBe(serial(lastDay));
  });

  it.each([
    [
      "2026-03-01",
      "2026-02-28",
      "leftZoneOn: 2/28/2026 is before enteredZoneOn, 3/1/2026. Correct one of the two dates.",
    ],
    [
      "2026-04-16",
      "2026-09-30",
      "enteredZoneOn: 4/16/2026 is after the regular due date, 4/15/2026, so service does not move it. Check the date and the year.",
    ],
    ["4/15", "2026-09-30", 'enteredZoneOn: "4/15" is not a date. Enter a date such as 4/15/2026.'],
  ])("refuses service from %s to %s", (entered, left, sentence) => {
    expect(inCell(combatZone, 2025, entered, left)).toEqual(badInput(sentence));
  });
});
