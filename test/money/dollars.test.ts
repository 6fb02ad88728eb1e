import { Decimal as SharedDecimal } from "decimal.js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  atLeastZero,
  Decimal,
  isMoreThanZero,
  toCents,
  toWholeDollars,
  upToCents,
  ZERO,
} from "../../src/money/dollars";
import { RUNS } from "../calculation/arbitrary";

const usd = (text: string): Decimal => new Decimal(text);
const thousandths = fc
  .integer({ min: 0, max: 10_000_000 })
  .map((count) => new Decimal(count).div(1000));

describe("dollars", () => {
  it.each([
    ["1.005", "1.01"],
    ["1.00499999999999999999", "1"],
    ["2.675", "2.68"],
    ["0.125", "0.13"],
    ["0", "0"],
    ["-1.005", "-1.01"],
  ])("round %s to %s, half a cent up", (exact, cents) => {
    expect(toCents(usd(exact)).toString()).toBe(cents);
  });

  it.each([
    ["18000.000000001", "18000.01"],
    ["18000.01", "18000.01"],
    ["0", "0"],
  ])("that must be paid rise from %s to %s", (exact, cents) => {
    expect(upToCents(usd(exact)).toString()).toBe(cents);
  });

  // 26 U.S.C. 6102(a); 26 CFR 301.6102-1(a): under 50 cents dropped, 50 cents and more to the next dollar.
  it.each([
    ["1234.49", "1234"],
    ["1234.50", "1235"],
    ["1234.99", "1235"],
    ["0.49", "0"],
  ])("of a form round %s to %s", (exact, whole) => {
    expect(toWholeDollars(usd(exact)).toString()).toBe(whole);
  });

  it.each([
    ["-0.01", "0"],
    ["0", "0"],
    ["0.01", "0.01"],
  ])("%s at least zero is %s", (amount, kept) => {
    expect(atLeastZero(usd(amount)).toString()).toBe(kept);
  });

  it("keep what binary fractions lose", () => {
    expect(usd("0.1").plus("0.2").toString()).toBe("0.3");
    expect(usd("1.005").times(100).toString()).toBe("100.5");
  });

  it("are not changed by another user of the shared decimal class", () => {
    const before = SharedDecimal.precision;
    SharedDecimal.set({ precision: 3 });
    try {
      expect(usd("1").div(3).toString()).toBe("0.3333333333333333333333333333");
    } finally {
      SharedDecimal.set({ precision: before });
    }
  });

  it.each(["0.005", "1e-20", "1", "9e12"])(
    "of %s are more than zero, and negated are not",
    (text) => {
      expect(isMoreThanZero(usd(text))).toBe(true);
      expect(isMoreThanZero(usd(text).negated())).toBe(false);
    }
  );

  it.each(["0", "-0"])("of %s are not more than zero", (text) => {
    expect(isMoreThanZero(usd(text))).toBe(false);
  });

  it("never move by more than half a cent, and up never by a whole one", () => {
    fc.assert(
      fc.property(thousandths, (exact) => {
        expect(toCents(exact).minus(exact).abs().lessThanOrEqualTo("0.005")).toBe(true);
        const rise = upToCents(exact).minus(exact);
        expect(rise.greaterThanOrEqualTo(ZERO) && rise.lessThan("0.01")).toBe(true);
        expect(toCents(toCents(exact)).equals(toCents(exact))).toBe(true);
      }),
      RUNS
    );
  });
});
