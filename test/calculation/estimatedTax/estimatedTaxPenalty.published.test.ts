import { describe, expect, it } from "vitest";
import type { Payment } from "../../../src/calculation/penalty/underpaymentInterest";
import { ZERO } from "../../../src/money/dollars";
import published from "../../fixtures/published/estimated-tax.json";
import { penaltyOf, day, MADE_UP, paid, rulesFrom, usd } from "./givenEstimates";

const FROM_2003 = rulesFrom("2003-01-01");

const read = (written: readonly { day: string; amount: string }[]): readonly Payment[] =>
  written.map((payment) => paid(payment.day, payment.amount));

describe("the estimated tax penalty as published", () => {
  it.each(published.regularMethod)(
    "$case: every printed line ($source.document)",
    ({ inputs, expected }) => {
      const { taxYear, requiredAnnualPayment, withholding } = inputs;
      const { lines, amount } = penaltyOf(
        { taxYear, requiredAnnualPayment, withholding, payments: read(inputs.payments) },
        FROM_2003
      );
      expect(
        lines.map((line) => ({
          installment: line.installment,
          amount: line.amount.toString(),
          days: line.days,
          rate: line.rate.toString(),
          addition: line.penalty.toFixed(2),
        }))
      ).toEqual(expected.lines);
      expect(amount.toFixed(2)).toBe(expected.total);
    }
  );

  it.each(published.days)("$case: days of each part ($source.document)", ({ inputs, expected }) => {
    const { taxYear, requiredAnnualPayment } = inputs;
    const payments = read(inputs.payments);
    const { lines } = penaltyOf({ taxYear, requiredAnnualPayment, payments }, FROM_2003);
    const first = lines.filter(({ installment }) => installment === 1);
    expect(first.map((line) => [line.amount.toString(), line.days])).toEqual(
      expected.firstInstallment
    );
    // "2,000 still unpaid at the end of the first rate period": only the first payment made
    const open = penaltyOf(
      { taxYear, requiredAnnualPayment, payments: payments.slice(0, 1) },
      FROM_2003
    ).lines.find(({ amount, to }) => amount.equals(2000) && to === day("2008-06-30"));
    expect(open?.days).toBe(expected.daysIfUnpaidToJune30);
  });

  const { paidEarly } = published;
  it(`${paidEarly.case}: 15 days fewer (${paidEarly.source.document})`, () => {
    const { taxYear, paidOn } = paidEarly.inputs;
    const days = (given: { paidOn?: string }): readonly number[] => {
      const { lines } = penaltyOf({ taxYear, requiredAnnualPayment: 4000, ...given });
      return [1, 2, 3, 4].map((installment) =>
        lines
          .filter((line) => line.installment === installment)
          .reduce((sum, line) => sum + line.days, 0)
      );
    };
    const toApril = days({});
    expect(days({ paidOn })).toEqual(toApril.map((count) => count - paidEarly.expected.daysSaved));
    // April 15, June 15, September 15, January 15 to April 15 of a leap year
    expect(toApril).toEqual([366, 305, 213, 91]);
  });
});

describe("26 CFR 1.6654-1(c), Example 1, by days instead of whole months", () => {
  const { inputs, expected } = published.wholeMonths;
  const from = day("1972-01-01");
  const at6 = {
    ...rulesFrom("1972-01-01"),
    underpaymentRate: {
      ...FROM_2003.underpaymentRate,
      knownFrom: from,
      entries: [{ from, figures: { rate: usd(inputs.rate) }, source: MADE_UP }],
    },
  };
  const dues = ["1972-04-15", "1972-06-15", "1972-09-15", "1973-01-15"];
  const required = usd(inputs.installment).times(4).toString();
  const short = usd(inputs.installment).minus(inputs.underpayment).toString();

  // A later payment goes to the earliest installment open today, so that what one installment lacks is carried to the next: the
  // example's 1,000 from an installment's due date to April 15 is what that installment alone paid short costs in all.
  it.each(dues.map((due, index) => ({ due, index })))(
    "1,000 short on $due costs the example's dollars",
    ({ due, index }) => {
      const payments = dues.map((on) => paid(on, on === due ? short : inputs.installment));
      const { amount } = penaltyOf(
        { taxYear: 1972, requiredAnnualPayment: required, payments },
        at6
      );
      expect(amount.toFixed(0)).toBe(expected.byInstallment[index]);
    }
  );

  it("all four paid short cost the sum of these, 64 cents from the example's 160 by whole months", () => {
    const payments = dues.map((on) => paid(on, short));
    const { amount } = penaltyOf({ taxYear: 1972, requiredAnnualPayment: required, payments }, at6);
    const alone = dues.map((due) =>
      penaltyOf(
        {
          taxYear: 1972,
          requiredAnnualPayment: required,
          payments: dues.map((on) => paid(on, on === due ? short : inputs.installment)),
        },
        at6
      )
    );
    const sum = alone.reduce((total, one) => total.plus(one.amount), ZERO);
    const lines = alone.reduce((count, one) => count + one.lines.length, 0);
    expect(amount.minus(sum).abs().toNumber()).toBeLessThanOrEqual(0.01 * lines);
    expect(amount.minus(expected.total).toFixed(2)).toBe("-0.64");
  });
});
