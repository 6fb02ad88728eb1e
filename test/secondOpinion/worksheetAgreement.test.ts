/** Compares the monthly payments of AGREEMENT, called as a sheet calls it, with a calculation day by day (agreementByDay.ts). */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { runLength } from "../soak/runLength";
import { agreementByDay, type PaidMonthly } from "./agreementByDay";
import { answerOfCall } from "./answerOfCall";
import { dayNumber } from "./civilDays";

/** Rates are published through this day, so that every later day has the assumed rate. */
const FROM = dayNumber(2026, 12, 31);

const drawn = fc.record({
  owed: fc.integer({ min: 1, max: 5_000_000 }),
  taxShare: fc.integer({ min: 1, max: 100 }),
  months: fc.oneof(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 7, max: 60 })),
  halved: fc.boolean(),
  points: fc.integer({ min: 1, max: 12 }),
  taxYear: fc.integer({ min: 2020, max: 2025 }),
});

describe("AGREEMENT against a calculation day by day", () => {
  it("has the same cost, and the smallest payment that pays everything", () => {
    fc.assert(
      fc.property(drawn, ({ owed, taxShare, months, halved, points, taxYear }) => {
        const tax = Math.ceil((owed * taxShare) / 100) / 100;
        const values = [owed / 100, halved ? "yes" : "no", { day: FROM }, tax, taxYear, months];
        const rows = answerOfCall({ name: "AGREEMENT", values: [...values, points / 100] });
        const row = (rows as unknown[][]).find(([what]) => what === "Simple payment plan") ?? [];
        const [count, payment, cost] = row.slice(5, 8).map(Number) as [number, number, number];
        // Notice 2021-21 for 2020; otherwise April 15, which weekends do not move for counting.
        const due = taxYear === 2020 ? dayNumber(2021, 5, 17) : dayNumber(taxYear + 1, 4, 15);
        const plan: PaidMonthly = {
          owed: owed / 100,
          tax,
          from: FROM,
          months,
          payment,
          due,
          halved,
          rate: points / 100,
        };
        const total = (amount: number): number =>
          owed / 100 + agreementByDay({ ...plan, payment: amount });
        expect(count).toBe(months);
        expect(Math.abs(total(payment) - owed / 100 - cost)).toBeLessThan(0.011);
        expect(payment * months).toBeGreaterThan(total(payment) - 0.011);
        expect((payment - 0.01) * months).toBeLessThan(total(payment - 0.01) + 0.011);
      }),
      { numRuns: runLength(60, 3_000), seed: 6159 }
    );
  });
});
