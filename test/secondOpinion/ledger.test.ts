import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { calendarDate } from "../../src/calendar/calendarDate";
import { ledger } from "../../src/calculation/account/ledger";
import { clientDates } from "../../src/calculation/dueDate/clientDates";
import { calendarTaxYear } from "../../src/calculation/taxYear";
import { Decimal } from "../../src/money/dollars";
import { rulebook } from "../../src/rules/rulebook";
import { runLength, tell } from "../soak/runLength";
import { dayOf, RETURN_DATES, written } from "./accountDays";
import { keptDayByDay, type Account, type Plan } from "./keptDayByDay";

function byLedger(plan: Plan): Account {
  const day = (number: number): ReturnType<typeof calendarDate> => calendarDate(written(number));
  const usd = (wholeCents: number): Decimal => new Decimal(wholeCents).div(100);
  const input = {
    dates: clientDates(calendarTaxYear(plan.taxYear), plan.filerType, {}, rulebook),
    totalTax: usd(plan.totalTax),
    payments: plan.payments.map((payment) => ({
      date: day(payment.day),
      amount: usd(payment.cents),
    })),
    filedOn: day(plan.filedOn),
    validExtension: plan.extended,
  };
  const last = ledger(input, rulebook).at(-1);
  return {
    failureToFile: last?.failureToFile.toFixed(2) ?? "",
    failureToPay: last?.failureToPay.toFixed(2) ?? "",
    interest: last?.interest.toFixed(2) ?? "",
    taxLeft: last?.unpaidTax.toFixed(2) ?? "",
  };
}

/** Dates from three weeks before the payment due date, many of them near it. In the last year, published rates limit them. */
const daysIn = fc.oneof(fc.integer({ min: 0, max: 30 }), fc.integer({ min: 0, max: 800 }));
const LAST = dayOf("2026-12-31");

const plans: fc.Arbitrary<Plan> = fc
  .record({
    taxYear: fc.integer({ min: 2019, max: 2025 }),
    totalTax: fc.integer({ min: 0, max: 6_000_000 }),
    payments: fc.array(fc.tuple(daysIn, fc.constantFrom(3, 10, 25, 40, 90, 91, 100)), {
      maxLength: 5,
    }),
    filedOn: daysIn,
    extended: fc.boolean(),
    filerType: fc.constantFrom("resident" as const, "out of country" as const),
  })
  .map((plan) => {
    const from = (RETURN_DATES[plan.taxYear]?.payment.counted ?? NaN) - 20;
    const after = (days: number): number => Math.min(from + days, LAST);
    const payments = plan.payments
      .map(([days, share]) => ({
        day: after(days),
        cents: Math.ceil((plan.totalTax * share) / 100),
      }))
      .sort((one, other) => one.day - other.day);
    return { ...plan, payments, filedOn: after(plan.filedOn) };
  });

const ACCOUNTS = runLength(300, 20_000);
const SAME = { numRuns: ACCOUNTS, seed: 4868, endOnFailure: true };

describe("the payment history against a day-by-day calculation", () => {
  it("ends with the same penalties, interest and unpaid tax, to the cent", () => {
    fc.assert(
      fc.property(plans, (plan) => {
        expect(byLedger(plan)).toEqual(keptDayByDay(plan));
      }),
      SAME
    );
    tell(`ledger, its last row: ${String(ACCOUNTS)} accounts the same to the cent`);
  });

  it("is tested with every kind of return", () => {
    const asked = fc.sample(plans, SAME).map(keptDayByDay);
    const some = (test: (account: Account) => boolean): number => asked.filter(test).length;
    expect(some(({ failureToFile }) => failureToFile !== "0.00")).toBeGreaterThan(ACCOUNTS / 5);
    expect(some(({ failureToPay }) => failureToPay !== "0.00")).toBeGreaterThan(ACCOUNTS / 2.5);
    expect(some(({ taxLeft }) => taxLeft !== "0.00")).toBeGreaterThan(ACCOUNTS / 5);
    expect(
      some(({ failureToPay, interest }) => failureToPay === "0.00" && interest !== "0.00")
    ).toBeGreaterThan(ACCOUNTS / 60);
  });
});
