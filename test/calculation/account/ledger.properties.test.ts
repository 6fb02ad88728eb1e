import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays, compareDates, laterDate } from "../../../src/calendar/calendarDate";
import { ledger, type LedgerInput, type LedgerRow } from "../../../src/calculation/account/ledger";
import { charges } from "../../../src/calculation/penalty/charges";
import { Decimal, ZERO } from "../../../src/money/dollars";
import { rulebook } from "../../../src/rules/rulebook";
import { anyAccount, chargedSoFar, lastOf, RUNS } from "./givenAccount";

const of = (input: LedgerInput): readonly LedgerRow[] => ledger(input, rulebook);
const whole = (input: LedgerInput): Decimal => chargedSoFar(lastOf(of(input)));
const indexed = fc.nat({ max: 3 });

const rising = (payments: LedgerInput["payments"]): LedgerInput["payments"] =>
  [...payments].sort((one, other) => compareDates(one.date, other.date));

describe("the account of a return paid in parts, of any year", () => {
  it("has a row for each payment, and for the tax due, the return due and the return filed", () => {
    fc.assert(
      fc.property(anyAccount, (input) => {
        const rows = of(input);
        expect(rows).toHaveLength(input.payments.length + 3);
        const days = rows.map((row) => row.date);
        expect(days).toEqual([...days].sort(compareDates));
      }),
      RUNS
    );
  });

  it("keeps what is left and paid equal to the tax, the charges and what is overpayment", () => {
    fc.assert(
      fc.property(anyAccount, (input) => {
        let paid = ZERO;
        for (const row of of(input)) {
          if (row.event === "payment") paid = paid.plus(row.amount ?? ZERO);
          const { unpaidTax, unpaidPenaltiesAndInterest, overpayment } = row;
          const charged = row.failureToFile.plus(row.failureToPay).plus(row.interest);
          const owed = input.totalTax.plus(charged);
          expect(unpaidTax.plus(unpaidPenaltiesAndInterest).plus(paid).toFixed()).toBe(
            owed.plus(overpayment).toFixed()
          );
          expect(
            overpayment.isZero() || (unpaidTax.isZero() && unpaidPenaltiesAndInterest.isZero())
          ).toBe(true);
        }
      }),
      RUNS
    );
  });

  it("never takes back what it has charged", () => {
    fc.assert(
      fc.property(anyAccount, (input) => {
        const rows = of(input);
        rows.slice(1).forEach((row, index) => {
          const before = rows[index];
          if (!before) return;
          expect(row.failureToFile.greaterThanOrEqualTo(before.failureToFile)).toBe(true);
          expect(row.failureToPay.greaterThanOrEqualTo(before.failureToPay)).toBe(true);
          expect(row.interest.greaterThanOrEqualTo(before.interest)).toBe(true);
        });
      }),
      { ...RUNS, numRuns: 1000 }
    );
  });

  it("ends with the charges of the whole", () => {
    fc.assert(
      fc.property(anyAccount, (input) => {
        const through = lastOf(of(input)).date;
        const { total } = charges({ ...input, paidOnTime: ZERO, through }, rulebook);
        expect(whole(input).toString()).toBe(total.toString());
      }),
      RUNS
    );
  });

  it("ends, with one late payment, where the charges of that payment end", () => {
    fc.assert(
      fc.property(anyAccount, fc.integer({ min: -20, max: 500 }), (input, delay) => {
        const { dates, totalTax } = input;
        const paidOnTime = Decimal.min(input.payments[0]?.amount ?? ZERO, totalTax);
        const rest = {
          date: addDays(dates.payment.lastDay, delay),
          amount: totalTax.minus(paidOnTime),
        };
        const payments = rising([{ date: dates.payment.countedFrom, amount: paidOnTime }, rest]);
        const through = laterDate(rest.date, input.filedOn);
        const { total } = charges({ ...input, paidOnTime, payments: [rest], through }, rulebook);
        expect(whole({ ...input, payments }).toString()).toBe(total.toString());
      }),
      RUNS
    );
  });

  it("does not change when a payment is split on its day", () => {
    fc.assert(
      fc.property(anyAccount, indexed, fc.integer({ min: 0, max: 100 }), (input, at, percent) => {
        const payments = input.payments.flatMap((payment, index) => {
          if (index !== at) return [payment];
          const part = payment.amount.times(percent).div(100);
          return [
            { ...payment, amount: part },
            { ...payment, amount: payment.amount.minus(part) },
          ];
        });
        const [split, before] = [lastOf(of({ ...input, payments })), lastOf(of(input))];
        expect({ ...split, amount: undefined }).toEqual({ ...before, amount: undefined });
      }),
      RUNS
    );
  });

  // Only where the return is filed on time. Late, failure to file is reduced by the failure to pay of its months, and bears interest
  // itself: paying a day earlier may cost cents more, since the penalty that bears no interest turns into one that does.
  it("never costs more, filed on time, for a payment made earlier", () => {
    fc.assert(
      fc.property(anyAccount, indexed, fc.integer({ min: 1, max: 300 }), (given, at, days) => {
        const { dates, validExtension: extended } = given;
        const last = (extended ? dates.extended : dates.regular).lastDay;
        const input = { ...given, filedOn: given.filedOn < last ? given.filedOn : last };
        const payments = input.payments.map((payment, index) =>
          index === at ? { ...payment, date: addDays(payment.date, -days) } : payment
        );
        const earlier = whole({ ...input, payments: rising(payments) });
        expect(earlier.lessThanOrEqualTo(whole(input))).toBe(true);
      }),
      RUNS
    );
  });
});
