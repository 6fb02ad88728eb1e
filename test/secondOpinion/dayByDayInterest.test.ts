/**
 * Compares interest with a loop over days in whole numbers (dayByDayInterest.ts), with rates copied by hand (quarterlyRates.ts) and
 * dates as whole numbers (civilDays.ts), without code, tables or a date library from src.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { underpaymentInterest } from "../../src/calculation/penalty/underpaymentInterest";
import { rulebook } from "../../src/rules/rulebook";
import { day, usd } from "../calculation/given";
import { runLength, tell } from "../soak/runLength";
import { dayNumber, written } from "./civilDays";
import { dayByDayInterest, type Payment } from "./dayByDayInterest";

const SPANS = runLength(300, 20_000);
const rates = { table: rulebook.underpaymentRate };
const FIRST = dayNumber(1995, 1, 1);
const LAST = dayNumber(2026, 12, 31);

function cents(amount: number, due: number, payments: readonly Payment[], through: number): number {
  const found = underpaymentInterest(
    usd(amount).div(100),
    day(written(due)),
    payments.map((payment) => ({
      date: day(written(payment.day)),
      amount: usd(payment.cents).div(100),
    })),
    day(written(through)),
    rates
  );
  return Number(found.amount.times(100).toFixed(0));
}

const anyDay = fc.integer({ min: FIRST, max: LAST });
const anySpan = fc
  .tuple(anyDay, anyDay)
  .map(([one, other]) => [Math.min(one, other), Math.max(one, other)] as const);
const anyCents = fc.integer({ min: 1, max: 100_000_000 });

describe("interest day by day", () => {
  it("is the same to the cent over any span of 1995 to 2026", () => {
    fc.assert(
      fc.property(anyCents, anySpan, (amount, [due, through]) => {
        expect(cents(amount, due, [], through)).toBe(dayByDayInterest(amount, due, [], through));
      }),
      { numRuns: SPANS, seed: 4868 }
    );
  });

  it("is the same to the cent around every end of a quarter and of February", () => {
    for (let year = 1996; year <= 2026; year++) {
      for (const [month, date] of [
        [3, 1],
        [4, 1],
        [7, 1],
        [10, 1],
        [12, 31],
      ] as const) {
        const turn = dayNumber(year, month, date);
        for (const due of [turn - 2, turn - 1, turn]) {
          const through = Math.min(turn + 2, LAST);
          expect(cents(123_456_789, due, [], through)).toBe(
            dayByDayInterest(123_456_789, due, [], through)
          );
        }
      }
    }
  });

  it("is the same to the cent with up to three partial payments", () => {
    const anyPayment = fc.record({ day: anyDay, cents: fc.integer({ min: 1, max: 4_000_000 }) });
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 10_000_000 }),
        anySpan,
        fc.array(anyPayment, { maxLength: 3 }),
        (amount, [due, through], given) => {
          const payments = given
            .filter((payment) => payment.day > due)
            .sort((one, other) => one.day - other.day);
          expect(cents(amount, due, payments, through)).toBe(
            dayByDayInterest(amount, due, payments, through)
          );
        }
      ),
      { numRuns: SPANS, seed: 4868 }
    );
    tell(`interest: ${String(2 * SPANS)} spans of 1995 to 2026 the same to the cent`);
  });
});
