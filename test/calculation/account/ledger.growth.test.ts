import { expect, it, vi } from "vitest";
import { addDays } from "../../../src/calendar/calendarDate";
import { Decimal } from "../../../src/money/dollars";
import { day, ledgerOf, usd } from "./givenAccount";

type Method = (this: unknown, ...given: unknown[]) => unknown;

/** How many decimal operations some work asks for: sums, products, comparisons, roundings. */
function operationsOf(work: () => void): number {
  const methods = Decimal.prototype as unknown as Record<string, Method>;
  const names = Object.keys(methods).filter(
    (name) => name !== "constructor" && typeof methods[name] === "function"
  );
  const spies = names.map((name) => vi.spyOn(methods, name));
  try {
    work();
    return spies.reduce((sum, { mock }) => sum + mock.calls.length, 0);
  } finally {
    for (const spy of spies) spy.mockRestore();
  }
}

/** The payment history of a return paid in equal parts, one on each date from the due date on. */
function partsOf(count: number): void {
  ledgerOf({
    totalTax: 40_000,
    payments: Array.from({ length: count }, (_, index) => ({
      date: addDays(day("2026-04-15"), index),
      amount: usd(50),
    })),
    filedOn: "2026-10-15",
    validExtension: true,
    assumedRate: "latest",
  });
}

// No clock: it counts what is asked, so that it holds on any machine.
it("a payment history asks for at most 2.5 times the work for twice the payments", () => {
  partsOf(1);
  const ofTwoHundred = operationsOf(() => {
    partsOf(200);
  });
  const ofFourHundred = operationsOf(() => {
    partsOf(400);
  });
  expect(ofTwoHundred).toBeGreaterThan(200);
  expect(ofFourHundred / ofTwoHundred).toBeLessThanOrEqual(2.5);
});
