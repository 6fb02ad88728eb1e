import { describe, expect, it } from "vitest";
import { written } from "../../../src/calendar/calendarDate";
import { estimatedTaxPenalty } from "../../../src/calculation/estimatedTax/estimatedTaxPenalty";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { rulebook } from "../../../src/rules/rulebook";
import { day, paid, usd } from "../given";

const lines = (payments: readonly ReturnType<typeof paid>[], withholding = 0, paidOn?: string) =>
  estimatedTaxPenalty(
    {
      taxYear: calendarTaxYear(2024),
      requiredAnnualPayment: usd(6_000),
      withholding: usd(withholding),
      payments,
      paidOn: paidOn === undefined ? undefined : day(paidOn),
      farmerOrFisherman: true,
    },
    rulebook
  ).lines.map(({ installment, amount, from, to, days, penalty: addition }) =>
    [installment, amount.toFixed(), written(from), written(to), days, addition.toFixed(2)].join(" ")
  );

// 26 U.S.C. 6654(i)(1): one installment, due January 15; Form 2210-F counts from January 15 to the payment or April 15.
describe("farmers and fishers", () => {
  it("have one installment in January of the whole required payment", () => {
    // 6,000 x 90/365 x 7%
    expect(lines([])).toEqual(["4 6000 2025-01-15 2025-04-15 90 103.56"]);
  });

  it("owe nothing where it is paid by then, in whatever parts", () => {
    expect(lines([paid("2024-06-01", 2_500), paid("2025-01-15", 3_500)])).toEqual([]);
  });

  it("have withholding counted whole on its one due date", () => {
    // 2,000 x 90/365 x 7%
    expect(lines([], 4_000)).toEqual(["4 2000 2025-01-15 2025-04-15 90 34.52"]);
  });

  it("stop it by paying, as in the form's own case of March", () => {
    // 6,000 x 45/365 x 7%
    expect(lines([], 0, "2025-03-01")).toEqual(["4 6000 2025-01-15 2025-03-01 45 51.78"]);
  });
});
