import { describe, expect, it } from "vitest";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/estimated-tax.json";
import { penaltyOf, paid, rulesFrom, usd, type EstimateRules } from "./givenEstimates";

/** Ordinary dates: the printed factor of 2020 leaves the postponement to July 15 aside (the form was not changed for it). */
const ordinaryDates: EstimateRules = {
  ...rulesFrom("2003-01-01"),
  nationwidePostponements: { ...rulebook.nationwidePostponements, rows: [] },
};

/** So much that the cents to which each line rounds do not show in a factor of five decimals. */
const REQUIRED = "400000000";

/** The penalty on four equal unpaid installments, by the dollar. */
function factor(taxYear: number, rules: EstimateRules, paidOn?: string): string {
  const given = { taxYear, requiredAnnualPayment: REQUIRED };
  const { amount } = penaltyOf(paidOn === undefined ? given : { ...given, paidOn }, rules);
  return amount.div(REQUIRED).toFixed(5);
}

// The short method spreads all payments evenly: its factor is the regular method's penalty on one dollar in four unpaid quarters.
describe("the penalty on equal unpaid installments", () => {
  it.each(published.shortMethodFactors)(
    "is the printed factor of $case ($source.document, $source.mark)",
    ({ inputs, expected }) => {
      expect(factor(inputs.taxYear, ordinaryDates)).toBe(expected);
    }
  );

  it("is less in 2020 where the first two fell on July 15", () => {
    // computed from Notice 2020-23: no published factor
    expect(factor(2020, rulebook)).toBe("0.01744");
  });

  it.each(published.shortMethod)(
    "is the short method's, whole dollars where it prints them: $case ($source.document, $source.mark)",
    ({ inputs, expected }) => {
      const { taxYear, requiredAnnualPayment, withholding, estimates, paidOn } = inputs;
      const dues = [
        `${String(taxYear)}-04-15`,
        `${String(taxYear)}-06-15`,
        `${String(taxYear)}-09-15`,
        `${String(taxYear + 1)}-01-15`,
      ];
      const payments = dues.map((due) => paid(due, usd(estimates).div(4).toString()));
      const underpayment = usd(requiredAnnualPayment).minus(withholding).minus(estimates);
      expect(underpayment.toString()).toBe(expected.underpayment);
      // paid evenly, each installment lacks a quarter of it: as though nothing had been required but that, and nothing paid
      const whole = { taxYear, requiredAnnualPayment, withholding, payments, paidOn };
      const alone = { taxYear, requiredAnnualPayment: underpayment.toString(), paidOn };
      for (const given of [whole, alone]) {
        const { amount } = penaltyOf(given, ordinaryDates);
        const off = amount.minus(expected.addition).abs().toNumber();
        expect(off).toBeLessThanOrEqual(Number(expected.within));
      }
    }
  );
});
