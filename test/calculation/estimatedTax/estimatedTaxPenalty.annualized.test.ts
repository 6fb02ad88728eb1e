import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { annualizedInstallments } from "../../../src/calculation/estimatedTax/annualizedInstallments";
import {
  estimatedTaxPenalty,
  type EstimatedTaxInput,
} from "../../../src/calculation/estimatedTax/estimatedTaxPenalty";
import { installmentPayments } from "../../../src/calculation/estimatedTax/installmentPayments";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { ZERO } from "../../../src/money/dollars";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/annualized-installments.json";
import {
  anyEstimates,
  day,
  dollarsUpTo,
  dueOn,
  lineTexts,
  paid,
  penaltyOf,
  RUNS,
  rulesFrom,
  usd,
} from "./givenEstimates";

const read = (written: readonly { day: string; amount: string }[]) =>
  written.map((payment) => paid(payment.day, payment.amount));

describe("the penalty with annualized installments as published", () => {
  const { ledger } = published;
  it(`${ledger.case}: the underpayment on each due date (${ledger.source.document})`, () => {
    const { dues, installments, withholding, payments } = ledger.inputs;
    const parts = installmentPayments(
      dues.map((due) => dueOn(due)),
      installments.map(usd),
      usd(withholding),
      read(payments)
    );
    const underpayments = dues.map((_, index) =>
      parts
        .filter(({ installment, paidOn, due }) => {
          const isLate = paidOn === undefined || paidOn > due.lastDay;
          return installment === index + 1 && isLate;
        })
        .reduce((sum, { amount }) => sum.plus(amount), ZERO)
        .toString()
    );
    expect(underpayments).toEqual(ledger.expected.underpayments);
  });

  const { penalty } = published;
  it(`${penalty.case}: days, rates and the penalty (${penalty.source.document})`, () => {
    const { taxYear, requiredAnnualPayment, installments, withholding, payments } = penalty.inputs;
    const { lines, amount } = estimatedTaxPenalty(
      {
        taxYear: calendarTaxYear(taxYear),
        requiredAnnualPayment: usd(requiredAnnualPayment),
        installments: installments.map(usd),
        withholding: usd(withholding),
        payments: read(payments),
      },
      rulesFrom("2003-01-01")
    );
    const found = lines.map((line) => ({
      installment: line.installment,
      amount: line.amount.toString(),
      days: line.days,
      rate: line.rate.toString(),
      penalty: line.penalty.toFixed(2),
    }));
    expect(found).toEqual(penalty.expected.lines);
    expect(amount.toFixed(2)).toBe(penalty.expected.total);
  });

  it.each(published.penaltyLines)("$case: a line ($source.document)", ({ inputs, expected }) => {
    const { taxYear, requiredAnnualPayment } = inputs;
    const [first] = penaltyOf(
      { taxYear, requiredAnnualPayment, payments: read([inputs.paid]) },
      rulesFrom("2002-01-01")
    ).lines;
    expect(first?.amount.toString()).toBe(expected.amount);
    expect(first?.days).toBe(expected.days);
    expect(first?.penalty.toFixed(2)).toBe(expected.penalty);
  });
});

describe("the penalty with annualized installments", () => {
  const four = fc.array(dollarsUpTo(40_000), { minLength: 4, maxLength: 4 });
  const of = (input: EstimatedTaxInput) => estimatedTaxPenalty(input, rulebook);

  it("is never more than with the regular ones, but for the half cents of the lines", () => {
    fc.assert(
      fc.property(anyEstimates, four, (given, due) => {
        // Without a date for the balance, which is smaller where the installments are.
        const input = { ...given, paidOn: undefined };
        const quarter = input.requiredAnnualPayment.div(4);
        const installments = annualizedInstallments(due, [quarter, quarter, quarter, quarter]).map(
          ({ required }) => required
        );
        const [annualized, regular] = [of({ ...input, installments }), of(input)];
        const rounding = 0.005 * (annualized.lines.length + regular.lines.length);
        expect(annualized.amount.minus(regular.amount).lessThanOrEqualTo(rounding)).toBe(true);
      }),
      RUNS
    );
  });

  it("is the regular one where each installment is a quarter", () => {
    fc.assert(
      fc.property(anyEstimates, (input) => {
        const quarter = input.requiredAnnualPayment.div(4);
        const installments = [quarter, quarter, quarter, quarter];
        expect(lineTexts(of({ ...input, installments }))).toEqual(lineTexts(of(input)));
      }),
      RUNS
    );
  });
});

// 26 U.S.C. 6654(h), (i)(1)(D). 7% in 2025 and in the first quarter of 2026.
describe("the penalty after an early return", () => {
  const given: EstimatedTaxInput = {
    taxYear: calendarTaxYear(2025),
    requiredAnnualPayment: usd(8_000),
    withholding: usd(0),
    payments: [paid("2025-04-15", 2_000), paid("2025-06-15", 2_000)],
    paidOn: day("2026-01-31"),
  };
  const of = (more: Partial<EstimatedTaxInput>) =>
    estimatedTaxPenalty({ ...given, ...more }, rulebook);
  const THIRD = "3 2000 2025-09-15 2026-01-31 138 0.07 365 52.93";

  it("has no line for the fourth installment, and keeps those before it", () => {
    expect(lineTexts(of({}))).toEqual([THIRD, "4 2000 2026-01-15 2026-01-31 16 0.07 365 6.14"]);
    const early = of({ filedOn: day("2026-02-02") });
    expect(lineTexts(early)).toEqual([THIRD]);
    expect(early.amount.toFixed(2)).toBe("52.93");
    expect(early.earlyReturnBy).toBe(day("2026-02-02"));
  });

  it("is as before where the return came later", () => {
    const late = of({ filedOn: day("2026-02-03") });
    expect(late.earlyReturnBy).toBeUndefined();
    expect(late.lines).toHaveLength(2);
  });

  it("is nothing for farmers and fishermen by March 1", () => {
    const farmer = { farmerOrFisherman: true, payments: [], paidOn: day("2026-03-02") };
    // March 1, 2026 is a Sunday. 8,000 for 46 days
    expect(lineTexts(of({ ...farmer, filedOn: day("2026-03-03") }))).toEqual([
      "4 8000 2026-01-15 2026-03-02 46 0.07 365 70.58",
    ]);
    const early = of({ ...farmer, filedOn: day("2026-03-02") });
    expect(lineTexts(early)).toEqual([]);
    expect(early.earlyReturnBy).toBe(day("2026-03-02"));
  });

  // Form 2210 instructions, line 19, column (d), the last of a nonresident's three columns.
  it("has no line for the last of a nonresident's installments", () => {
    const nonresident = { filerType: "nonresident", filedOn: day("2026-01-31") } as const;
    // The first 4,000 are due in June, 2,000 each in September and January.
    expect(lineTexts(of({ ...nonresident, filedOn: undefined }))).toEqual([
      THIRD.replace("3 ", "2 "),
      "3 2000 2026-01-15 2026-01-31 16 0.07 365 6.14",
    ]);
    expect(lineTexts(of(nonresident))).toEqual([THIRD.replace("3 ", "2 ")]);
  });
});
