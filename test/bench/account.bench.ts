import { bench, describe } from "vitest";
import { whatIf } from "../../src/functions/account/comparison";
import { ledger } from "../../src/functions/account/ledger";
import { estPenaltyLines } from "../../src/functions/estimatedTax/estimatedTaxPenalty";
import { payments } from "./columns";

const DUE = 46_127; // 2026-04-15
const extras = Array.from({ length: 100 }, (_, row) => [row * 50]);
const dates = [Array.from({ length: 60 }, (_, column) => DUE + 1 + column * 4)];

describe("WHATIF", () => {
  bench("100 extra payments by 60 dates", () => {
    whatIf(2025, 20_000, 12_000, extras, dates, "yes", "CA");
  });
});

describe("LEDGER, by the number of payments", () => {
  for (const count of [5, 50, 200, 400]) {
    const rows = payments(count);
    bench(`${String(count)} payments`, () => {
      ledger(2025, 40_000, rows, "2026-11-20", "yes", "CA");
    });
  }
});

describe("ESTPENALTYLINES, by the number of payments", () => {
  for (const count of [4, 200]) {
    const rows = Array.from({ length: count }, (_, row) => [45_662 + row, 40]);
    bench(`${String(count)} payments`, () => {
      estPenaltyLines(2025, 20_000, 4_000, rows);
    });
  }
});
