import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  reasonableCauseTest,
  type ReasonableCauseTestInput,
} from "../../../src/calculation/penalty/reasonableCauseTest";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import { RUNS } from "../arbitrary";
import { day, dueOn, usd } from "../given";

/** 90% of $20,000 paid by April 15, 2026, the balance with the extended return on October 15: every condition is met. */
const met: ReasonableCauseTestInput = {
  validExtension: true,
  regular: dueOn("2026-04-15"),
  extendedDue: dueOn("2026-10-15", "2026-10-15", "extended return"),
  totalTax: usd("20000"),
  unpaidTax: usd("2000"),
  paidInFullOn: day("2026-10-15"),
  filedOn: day("2026-10-15"),
};
const presumed = (change: Partial<ReasonableCauseTestInput>): boolean =>
  reasonableCauseTest({ ...met, ...change }, rulebook) !== undefined;

// 26 CFR 301.6651-1(c)(3).
describe("the 90% test of reasonable cause", () => {
  it("holds when every condition is met, by the regulation", () => {
    const source = reasonableCauseTest(met, rulebook);
    expect(source?.citation).toBe("Regulations section 301.6651-1(c)(3)");
    expect(source?.confidence).toBe("official");
  });

  // Pub. L. 91-172, section 943(d): there was no penalty to be spared for returns due before 1970.
  it("is refused for due dates before the law of the penalty began", () => {
    expect(presumed({ regular: dueOn("1970-01-01") })).toBe(true);
    expect(() => presumed({ regular: dueOn("1969-12-31") })).toThrow(NotInTableError);
  });

  it("does not hold without a valid extension", () => {
    expect(presumed({ validExtension: false })).toBe(false);
  });

  // The manual for examiners as reported (secondary); the regulation's own words would protect the extension period.
  it("does not hold for a return filed after the extended date", () => {
    expect(presumed({ filedOn: day("2026-10-16") })).toBe(false);
  });

  it("holds for a return filed on the workday to which a Sunday moved the extended date", () => {
    const moved = {
      regular: dueOn("2023-04-15", "2023-04-18"),
      extendedDue: dueOn("2023-10-15", "2023-10-16", "extended return"),
      paidInFullOn: day("2023-10-16"),
    };
    expect(presumed({ ...moved, filedOn: day("2023-10-16") })).toBe(true);
    expect(presumed({ ...moved, filedOn: day("2023-10-17") })).toBe(false);
  });

  it("does not hold while some of the rest is open or comes after the return", () => {
    expect(presumed({ paidInFullOn: undefined })).toBe(false);
    expect(presumed({ filedOn: day("2026-09-30"), paidInFullOn: day("2026-10-01") })).toBe(false);
    expect(presumed({ filedOn: day("2026-09-30"), paidInFullOn: day("2026-09-30") })).toBe(true);
    expect(presumed({ filedOn: day("2026-09-30"), paidInFullOn: day("2026-07-01") })).toBe(true);
  });

  it.each([
    ["89.99%", "2002.00", false],
    ["a cent short of 90%", "2000.01", false],
    ["90%", "2000.00", true],
    ["90.01%", "1998.00", true],
  ])("with %s paid, %s open of $20,000: %s", (_share, unpaid, holds) => {
    expect(presumed({ unpaidTax: usd(unpaid) })).toBe(holds);
  });

  it("has nothing to excuse where nothing is unpaid", () => {
    expect(presumed({ unpaidTax: usd("0") })).toBe(false);
    expect(presumed({ totalTax: usd("0"), unpaidTax: usd("0") })).toBe(false);
  });

  it("turns exactly at a tenth of the tax", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 10_000_000 }),
        fc.integer({ min: 1, max: 10_000_000 }),
        (taxCents, unpaidCents) => {
          fc.pre(unpaidCents <= taxCents);
          const holds = presumed({
            totalTax: usd(taxCents).div(100),
            unpaidTax: usd(unpaidCents).div(100),
          });
          expect(holds).toBe(unpaidCents * 10 <= taxCents);
        }
      ),
      RUNS
    );
  });
});
