import { bench, describe } from "vitest";
import { ledger, whatIf } from "../../src/functions/account";
import { estimateLines } from "../../src/functions/estimates";

const DUE = 46_127; // 2026-04-15
const extras = Array.from({ length: 100 }, (_, row) => [row * 50]);
const days = [Array.from({ length: 60 }, (_, column) => DUE + 1 + column * 4)];

/** Payments in invented amounts, a day apart, the last ones leaving some tax open. */
const payments = (count: number): unknown[][] =>
  Array.from({ length: count }, (_, row) => [DUE - 20 + row, 90 + (row % 7)]);

describe("WHATIF", () => {
  bench("100 extra payments by 60 days", () => {
    whatIf(2025, 20_000, 12_000, extras, days, "yes", "CA");
  });
});

describe("LEDGER, by the count of payments", () => {
  for (const count of [5, 50, 200]) {
    const rows = payments(count);
    bench(`${String(count)} payments`, () => {
      ledger(2025, 20_000, rows, "2026-11-20", "yes", "CA");
    });
  }
});

describe("ESTPENALTYLINES, by the count of payments", () => {
  for (const count of [4, 200]) {
    const rows = Array.from({ length: count }, (_, row) => [45_662 + row, 40]);
    bench(`${String(count)} payments`, () => {
      estimateLines(2025, 20_000, 4_000, rows);
    });
  }
});
