import { describe, expect, it } from "vitest";
import { calendarDate } from "../../../src/calendar/calendarDate";
import { penaltyOf, lineTexts, paid, usd } from "./givenEstimates";

/** Four installments of 1,000. */
const REQUIRED = 4000;

/** Lines where each installment is paid on the day given for it. */
function linesPaidOn(taxYear: number, ...days: readonly string[]): readonly string[] {
  const payments = days.map((on) => paid(on, 1000));
  return lineTexts(penaltyOf({ taxYear, requiredAnnualPayment: REQUIRED, payments }));
}

describe("the estimated tax penalty", () => {
  it("is nothing where each installment is paid on its due date or before", () => {
    const due = ["2025-04-15", "2025-06-16", "2025-09-15", "2026-01-15"];
    expect(linesPaidOn(2025, ...due)).toEqual([]);
    expect(linesPaidOn(2025, "2025-01-02", "2025-01-02", "2025-01-02", "2025-01-02")).toEqual([]);
  });

  it("is one day's rate, not compounded, for a payment one day late", () => {
    const late = ["2025-04-16", "2025-06-15", "2025-09-15", "2026-01-15"];
    // 1,000 × 1/365 × 7%
    expect(linesPaidOn(2025, ...late)).toEqual(["1 1000 2025-04-15 2025-04-16 1 0.07 365 0.19"]);
  });

  // 26 U.S.C. 7503: the next day that is no Saturday, Sunday or legal holiday; else it counts from the 15th.
  it.each([
    // June 15, 2024 was a Saturday
    [2024, 2, "2024-06-17", "2024-06-18", "2 1000 2024-06-15 2024-06-18 3 0.08 366 0.66"],
    // April 15, 2023 was a Saturday, Emancipation Day observed on Monday: April 18 in Form 1040-ES (2023)
    [2023, 1, "2023-04-18", "2023-04-19", "1 1000 2023-04-15 2023-04-19 4 0.07 365 0.77"],
    // January 15, 2024 was Martin Luther King Jr. Day: January 16 in Form 1040-ES (2023)
    [2023, 4, "2024-01-16", "2024-01-17", "4 1000 2024-01-15 2024-01-17 2 0.08 366 0.44"],
    // the systems were down on April 17, 2018: a day more (IR-2018-100, as reported elsewhere)
    [2018, 1, "2018-04-18", "2018-04-19", "1 1000 2018-04-15 2018-04-19 4 0.05 365 0.55"],
    // Notice 2020-23: installments of April and June 2020 by July 15, the time before disregarded
    [2020, 2, "2020-07-15", "2020-07-16", "2 1000 2020-07-15 2020-07-16 1 0.03 366 0.08"],
  ])(
    "of %i: installment %i paid on %s is in time, on %s late",
    (year, number, timely, late, line) => {
      const due = [
        `${String(year)}-04-15`,
        `${String(year)}-06-15`,
        `${String(year)}-09-15`,
        `${String(year + 1)}-01-15`,
      ];
      const withOn = (on: string): readonly string[] =>
        linesPaidOn(year, ...due.map((other, at) => (at === number - 1 ? on : other)));
      expect(withOn(timely)).toEqual([]);
      expect(withOn(late)).toEqual([line]);
    }
  );

  it("ends on April 15 with or without an extension and whenever the balance is paid", () => {
    // 6654(b)(2): the 15th day of the fourth month after the year
    const never = penaltyOf({ taxYear: 2025, requiredAnnualPayment: REQUIRED });
    expect(lineTexts(never)).toEqual([
      "1 1000 2025-04-15 2026-04-15 365 0.07 365 70.00",
      "2 1000 2025-06-15 2026-04-15 304 0.07 365 58.30",
      "3 1000 2025-09-15 2026-04-15 212 0.07 365 40.66",
      "4 1000 2026-01-15 2026-04-15 90 0.07 365 17.26",
    ]);
    for (const paidOn of ["2026-04-15", "2026-04-16", "2026-10-15"]) {
      const later = penaltyOf({ taxYear: 2025, requiredAnnualPayment: REQUIRED, paidOn });
      expect(lineTexts(later)).toEqual(lineTexts(never));
    }
    const afterwards = [paid("2026-06-01", 4000)];
    const given = { taxYear: 2025, requiredAnnualPayment: REQUIRED, payments: afterwards };
    expect(lineTexts(penaltyOf(given))).toEqual(lineTexts(never));
  });

  it("is stopped by what is paid with the request before that", () => {
    const early = penaltyOf({
      taxYear: 2025,
      requiredAnnualPayment: REQUIRED,
      paidOn: "2026-04-14",
    });
    expect(early.lines.map(({ days }) => days)).toEqual([364, 303, 211, 89]);
    // before the fourth installment is due: nothing on it
    const paidOn = "2026-01-15";
    const three = penaltyOf({ taxYear: 2025, requiredAnnualPayment: REQUIRED, paidOn });
    expect(three.lines.map(({ installment, days }) => [installment, days])).toEqual([
      [1, 275],
      [2, 214],
      [3, 122],
    ]);
  });

  // 6621(b)(2)(B). Second-quarter rates 5%, 4% and 6% do not show: rulings for 2018, 2022 and 2026.
  it.each([
    [2017, "4 1000 2018-01-15 2018-04-15 90 0.04 365 9.86"],
    [2021, "4 1000 2022-01-15 2022-04-15 90 0.03 365 7.40"],
    [2025, "4 1000 2026-01-15 2026-04-15 90 0.07 365 17.26"],
    // 3% in the first quarter of 2016 and 4% in the second; by 366
    [2015, "4 1000 2016-01-15 2016-04-15 91 0.03 366 7.46"],
  ])("of %i takes the first quarter's rate through April 15", (taxYear, fourth) => {
    expect(lineTexts(penaltyOf({ taxYear, requiredAnnualPayment: REQUIRED })).at(-1)).toBe(fourth);
  });

  it("divides by 366 the days of a leap year, and only these", () => {
    // 8% on both sides of December 31, 2023
    const of2023 = lineTexts(penaltyOf({ taxYear: 2023, requiredAnnualPayment: REQUIRED }));
    expect(of2023.slice(-3)).toEqual([
      "3 1000 2023-09-30 2023-12-31 92 0.08 365 20.16",
      "3 1000 2023-12-31 2024-04-15 106 0.08 366 23.17",
      "4 1000 2024-01-15 2024-04-15 91 0.08 366 19.89",
    ]);
    expect(lineTexts(penaltyOf({ taxYear: 2024, requiredAnnualPayment: REQUIRED }))[0]).toBe(
      "1 1000 2024-04-15 2024-12-31 260 0.08 366 56.83"
    );
  });

  it("lays the rest, too, against the earliest installments open on its day", () => {
    // 6654(b)(3): 3,000 paid on December 20 leave nothing of the first three open for the withholding of January 15
    const given = { taxYear: 2025, requiredAnnualPayment: REQUIRED, withholding: 1000 };
    const asTheRest = penaltyOf({ ...given, paidOn: "2025-12-20" });
    const asAPayment = penaltyOf({ ...given, payments: [paid("2025-12-20", 3000)] });
    expect(lineTexts(asAPayment)).toEqual([
      "1 250 2025-04-15 2025-06-15 61 0.07 365 2.92",
      "1 250 2025-04-15 2025-09-15 153 0.07 365 7.34",
      "1 250 2025-04-15 2025-12-20 249 0.07 365 11.94",
      "2 1000 2025-06-15 2025-12-20 188 0.07 365 36.05",
      "3 1000 2025-09-15 2025-12-20 96 0.07 365 18.41",
    ]);
    expect(lineTexts(asTheRest)).toEqual(lineTexts(asAPayment));
  });

  it("is nothing where withholding covers the required annual payment", () => {
    const covered = { taxYear: 2025, requiredAnnualPayment: REQUIRED, withholding: REQUIRED };
    expect(lineTexts(penaltyOf(covered))).toEqual([]);
    expect(lineTexts(penaltyOf({ ...covered, withholding: "3999.96" }))).toEqual([
      "1 0.01 2025-04-15 2025-06-15 61 0.07 365 0.00",
      "2 0.02 2025-06-15 2025-09-15 92 0.07 365 0.00",
      "3 0.03 2025-09-15 2026-01-15 122 0.07 365 0.00",
      "4 0.04 2026-01-15 2026-04-15 90 0.07 365 0.00",
    ]);
    expect(lineTexts(penaltyOf({ taxYear: 2025, requiredAnnualPayment: 0 }))).toEqual([]);
  });

  it("is nothing after a payment larger than all installments", () => {
    const payments = [paid("2025-06-20", 50_000)];
    const { lines } = penaltyOf({ taxYear: 2025, requiredAnnualPayment: REQUIRED, payments });
    expect(lines.map(({ installment, to }) => [installment, to])).toEqual([
      [1, calendarDate("2025-06-20")],
      [2, calendarDate("2025-06-20")],
    ]);
  });

  it("adds up what its lines round", () => {
    const { lines, amount } = penaltyOf({ taxYear: 2025, requiredAnnualPayment: "1234.56" });
    const sum = lines.reduce((total, { penalty: addition }) => total.plus(addition), usd(0));
    expect(amount.toString()).toBe(sum.toString());
    expect(lines.every(({ penalty: addition }) => addition.decimalPlaces() <= 2)).toBe(true);
  });
});
