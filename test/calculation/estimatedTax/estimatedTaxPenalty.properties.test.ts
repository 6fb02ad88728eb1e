import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays, written } from "../../../src/calendar/calendarDate";
import {
  estimatedTaxPenalty,
  type EstimatedTaxPenalty,
  type EstimatedTaxInput,
} from "../../../src/calculation/estimatedTax/estimatedTaxPenalty";
import { ZERO, type Decimal } from "../../../src/money/dollars";
import { rulebook } from "../../../src/rules/rulebook";
import { anyEstimates, dollarsUpTo, lineTexts, RUNS } from "./givenEstimates";

const of = (input: EstimatedTaxInput): EstimatedTaxPenalty => estimatedTaxPenalty(input, rulebook);

/** Whether one penalty is no more than another but for the half cents to which the lines of both round. */
function noMoreThan(one: EstimatedTaxPenalty, other: EstimatedTaxPenalty): boolean {
  const rounding = 0.005 * (one.lines.length + other.lines.length);
  return one.amount.minus(other.amount).lessThanOrEqualTo(rounding);
}

const indexed = fc.nat({ max: 5 });

describe("the estimated tax penalty of any year", () => {
  it("adds up from its lines, each in cents and of days that count", () => {
    fc.assert(
      fc.property(anyEstimates, (input) => {
        const { lines, amount } = of(input);
        const sum = lines.reduce(
          (total: Decimal, { penalty: addition }) => total.plus(addition),
          ZERO
        );
        expect(amount.toString()).toBe(sum.toString());
        for (const line of lines) {
          expect(line.from < line.to).toBe(true);
          expect(line.amount.greaterThan(0)).toBe(true);
          expect(line.amount.times(4).lessThanOrEqualTo(input.requiredAnnualPayment)).toBe(true);
        }
      }),
      RUNS
    );
  });

  it("comes installment by installment, day by day, as payments are applied to the earliest first", () => {
    fc.assert(
      fc.property(anyEstimates, (input) => {
        const keys = of(input).lines.map(({ installment, from, to }) =>
          [String(installment), written(from), written(to)].join(" ")
        );
        expect(keys).toEqual(keys.toSorted());
      }),
      RUNS
    );
  });

  it("does not change when a payment is split on its day", () => {
    fc.assert(
      fc.property(anyEstimates, indexed, fc.integer({ min: 0, max: 100 }), (input, at, percent) => {
        const split = input.payments.flatMap((payment, index) => {
          if (index !== at) return [payment];
          const part = payment.amount.times(percent).div(100);
          return [
            { ...payment, amount: part },
            { ...payment, amount: payment.amount.minus(part) },
          ];
        });
        expect(lineTexts(of({ ...input, payments: split }))).toEqual(lineTexts(of(input)));
      }),
      RUNS
    );
  });

  it("does not depend on the order of the payments", () => {
    fc.assert(
      fc.property(anyEstimates, (input) => {
        const turned = [...input.payments].reverse();
        expect(lineTexts(of({ ...input, payments: turned }))).toEqual(lineTexts(of(input)));
      }),
      RUNS
    );
  });

  it("is never more for a payment made earlier", () => {
    fc.assert(
      fc.property(anyEstimates, indexed, fc.integer({ min: 1, max: 400 }), (input, at, days) => {
        const earlier = input.payments.map((payment, index) =>
          index === at ? { ...payment, date: addDays(payment.date, -days) } : payment
        );
        expect(noMoreThan(of({ ...input, payments: earlier }), of(input))).toBe(true);
      }),
      RUNS
    );
  });

  it("is never more where the balance is paid earlier", () => {
    fc.assert(
      fc.property(anyEstimates, fc.integer({ min: 0, max: 400 }), (input, days) => {
        const { paidOn } = input;
        const sooner = paidOn && addDays(paidOn, -days);
        const whole = of({ ...input, paidOn: undefined });
        expect(noMoreThan(of(input), whole)).toBe(true);
        expect(noMoreThan(of({ ...input, paidOn: sooner }), of(input))).toBe(true);
      }),
      RUNS
    );
  });

  it("is never more for more withholding, and never less for a larger requirement", () => {
    fc.assert(
      fc.property(anyEstimates, dollarsUpTo(5000), (given, more) => {
        // without a day for the rest: withholding that comes after it would take the place of an earlier payment
        const input = { ...given, paidOn: undefined };
        const withheld = of({ ...input, withholding: input.withholding.plus(more) });
        expect(noMoreThan(withheld, of(input))).toBe(true);
        const requiredAnnualPayment = input.requiredAnnualPayment.plus(more);
        expect(noMoreThan(of(input), of({ ...input, requiredAnnualPayment }))).toBe(true);
      }),
      RUNS
    );
  });
});
