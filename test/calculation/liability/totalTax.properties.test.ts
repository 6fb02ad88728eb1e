import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  MAY_BE_NEGATIVE,
  RETURN_ITEMS,
  type ReturnItem,
  type ReturnItems,
} from "../../../src/calculation/liability/returnItems";
import { totalTax } from "../../../src/calculation/liability/totalTax";
import { toWholeDollars } from "../../../src/money/dollars";
import { rulebook } from "../../../src/rules/rulebook";
import { known, RUNS, statuses, usd, years } from "./givenTax";

const COUNTS: Readonly<Partial<Record<ReturnItem, number>>> = {
  childrenUnder17: 6,
  otherDependents: 4,
  aged: 2,
  blind: 2,
  specifiedService: 1,
  livedApart: 1,
};

function amountOf(name: ReturnItem): fc.Arbitrary<number> {
  const most = COUNTS[name];
  if (most !== undefined) return fc.integer({ min: 0, max: most });
  const min = MAY_BE_NEGATIVE.includes(name) ? -60_000 : 0;
  return fc.oneof(
    fc.integer({ min, max: 90_000 }),
    fc.integer({ min, max: 900_000 }),
    fc.integer({ min: min * 100, max: 9_000_000 }).map((cents) => cents / 100)
  );
}

/** Up to eight items of any kind. */
const anyItems: fc.Arbitrary<ReturnItems> = fc
  .uniqueArray(fc.constantFrom(...RETURN_ITEMS), { minLength: 1, maxLength: 8 })
  .chain((names) =>
    fc.tuple(...names.map((name) => amountOf(name).map((amount) => [name, amount] as const)))
  )
  .map((pairs) => known(Object.fromEntries(pairs)));

describe("any return", () => {
  it("owes whole dollars, zero or more, the sum of its tax lines", () => {
    fc.assert(
      fc.property(years, statuses, anyItems, (taxYear, status, items) => {
        const { lines, amount } = totalTax(taxYear, status, items, rulebook);
        const names = lines.map(({ what }) => what);
        const taxes = lines.slice(names.indexOf("Taxable income") + 1, -1);
        const sum = taxes.reduce((all, line) => all.plus(line.amount), usd(0));
        expect(sum.equals(amount)).toBe(true);
        expect(amount.isNegative() && !amount.isZero()).toBe(false);
        for (const line of lines) expect(line.amount.isInteger()).toBe(true);
      }),
      RUNS
    );
  });

  it("has lines that add up from income to taxable income", () => {
    fc.assert(
      fc.property(years, statuses, anyItems, (taxYear, status, items) => {
        const { lines } = totalTax(taxYear, status, items, rulebook);
        const at = (name: string): number => lines.findIndex(({ what }) => what === name);
        const sum = (from: number, to: number) =>
          lines.slice(from, to).reduce((all, line) => all.plus(line.amount), usd(0));
        const [total, gross, taxable] = [
          at("Total income"),
          at("Adjusted gross income"),
          at("Taxable income"),
        ] as [number, number, number];
        const shown = (line: number) => lines[line]?.amount ?? usd(-1);
        expect(sum(0, total).equals(shown(total))).toBe(true);
        expect(sum(total, gross).equals(shown(gross))).toBe(true);
        const left = sum(gross, taxable);
        expect(shown(taxable).equals(left.isNegative() ? 0 : left)).toBe(true);
      }),
      RUNS
    );
  });

  it("owes no more for a credit, by at most the credit", () => {
    const credit = fc.integer({ min: 1, max: 30_000 }).map(usd);
    fc.assert(
      fc.property(years, statuses, anyItems, credit, (taxYear, status, items, more) => {
        const before = totalTax(taxYear, status, items, rulebook).amount;
        const credits = (items.credits ?? usd(0)).plus(more);
        const after = totalTax(taxYear, status, { ...items, credits }, rulebook).amount;
        expect(after.lessThanOrEqualTo(before)).toBe(true);
        expect(before.minus(after).lessThanOrEqualTo(more.plus(1))).toBe(true);
        expect(after.isNegative() && !after.isZero()).toBe(false);
      }),
      RUNS
    );
  });

  it("owes the same whatever is withheld or paid", () => {
    fc.assert(
      fc.property(years, statuses, anyItems, (taxYear, status, items) => {
        const paid = known({ withholding: 5_000, estimatedPayments: 1, refundableCredits: 900 });
        const before = totalTax(taxYear, status, items, rulebook).amount;
        const after = totalTax(taxYear, status, { ...items, ...paid }, rulebook).amount;
        expect(after.equals(before)).toBe(true);
      }),
      RUNS
    );
  });

  it("owes other taxes to the dollar on top", () => {
    fc.assert(
      fc.property(years, statuses, anyItems, (taxYear, status, items) => {
        const without = { ...items, otherTaxes: usd(0) };
        const before = totalTax(taxYear, status, without, rulebook).amount;
        const otherTaxes = usd("1234.50");
        const after = totalTax(taxYear, status, { ...items, otherTaxes }, rulebook).amount;
        expect(after.minus(before).equals(toWholeDollars(otherTaxes))).toBe(true);
      }),
      RUNS
    );
  });

  // Form 1040 line 3a is part of line 3b: qualified dividends that are not also ordinary dividends do not exist.
  it("owes no less for qualified dividends, even where no ordinary dividends are given", () => {
    const dividends = fc.integer({ min: 1, max: 50_000 }).map(usd);
    const wages = fc.integer({ min: 0, max: 400_000 }).map(usd);
    fc.assert(
      fc.property(years, statuses, wages, dividends, (taxYear, status, earned, qualified) => {
        const before = totalTax(taxYear, status, { wages: earned }, rulebook).amount;
        const items = { wages: earned, qualifiedDividends: qualified };
        const after = totalTax(taxYear, status, items, rulebook).amount;
        expect(after.greaterThanOrEqualTo(before)).toBe(true);
      }),
      RUNS
    );
  });
});
