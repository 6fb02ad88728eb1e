import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays } from "../../../src/calendar/calendarDate";
import { failureToFileMinimum } from "../../../src/calculation/penalty/failureToFileMinimum";
import { Decimal } from "../../../src/money/dollars";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/failure-to-file-minimum.json";
import { dollarsUpTo, RUNS } from "../arbitrary";
import { day, dueOn, usd } from "../given";

/** The minimum for a return due on a day and filed on another; `undefined` where there is none. */
function minimum(
  due: string,
  filedOn: string,
  netTax = "9000",
  unextended = due
): string | undefined {
  return failureToFileMinimum(
    dueOn(due),
    dueOn(unextended),
    day(filedOn),
    usd(netTax),
    rulebook
  )?.amount.toString();
}

describe("the minimum penalty", () => {
  it.each(published.amounts)("is $expected: $case ($source.document)", ({ inputs, expected }) => {
    const year = String(inputs.dueYear);
    const ofYear = ["01-01", "04-15", "12-31"].map((due) => `${year}-${due}`);
    const filedOn = `${String(inputs.dueYear + 1)}-06-30`;
    expect(ofYear.map((due) => minimum(due, filedOn))).toEqual([expected, expected, expected]);
  });

  it.each(published.examples)("is $expected: $case ($source.document)", ({ inputs, expected }) => {
    const year = String(inputs.dueYear);
    expect(minimum(`${year}-04-15`, `${year}-12-31`, inputs.netTax)).toBe(expected);
  });

  // 26 U.S.C. 6651(a): not within 60 days of the date prescribed for filing, extensions included.
  it.each([
    ["2026-04-15", "2026-06-14", undefined],
    ["2026-04-15", "2026-06-15", "525"],
    ["2026-10-15", "2026-12-14", undefined],
    ["2026-10-15", "2026-12-15", "525"],
  ])("due %s, filed %s: %s", (due, filedOn, amount) => {
    expect(minimum(due, filedOn, "9000", "2026-04-15")).toBe(amount);
  });

  it("is counted from the date the law names, not from the workday after it", () => {
    // TY2022: due Saturday April 15, 2023, timely through Tuesday April 18; 60 days from the 15th end June 14.
    const due = dueOn("2023-04-15", "2023-04-18");
    const filedOn = (on: string): boolean =>
      failureToFileMinimum(due, due, day(on), usd("9000"), rulebook) !== undefined;
    expect([filedOn("2023-06-14"), filedOn("2023-06-15")]).toEqual([false, true]);
  });

  it("is that of the year of the due date without extension", () => {
    expect(minimum("2026-01-15", "2026-06-30", "9000", "2025-07-15")).toBe("510");
  });

  // 26 U.S.C. 6651(j): the calendar year in which the return is required to be filed. 26 CFR 301.7508A-1(b)(4): a postponement does
  // not move the due date. The first is the Texas flood postponement of July 2, 2025 to February 2, 2026, the second is made up.
  it.each([
    ["2025-10-15", "2026-02-02", "2026-06-30", "510"],
    ["2015-04-15", "2016-02-01", "2016-06-30", "135"],
  ])("of a return due %s, postponed to %s, filed %s: %s", (due, ends, filedOn, amount) => {
    const postponed = { ...dueOn(ends), statutory: day(due) };
    const found = failureToFileMinimum(postponed, postponed, day(filedOn), usd("600"), rulebook);
    expect(found?.amount.toString()).toBe(amount);
  });

  it("is counted in days from the end of a postponement", () => {
    const postponed = { ...dueOn("2026-02-02"), statutory: day("2025-10-15") };
    const isOn = (filedOn: string): boolean =>
      failureToFileMinimum(postponed, postponed, day(filedOn), usd("600"), rulebook) !== undefined;
    expect([isOn("2026-04-03"), isOn("2026-04-04")]).toEqual([false, true]);
  });

  // 100 T.C. 374: the hundred percent is of the net tax; nothing where no tax is unpaid.
  it.each([
    ["0", undefined],
    ["0.01", "0.01"],
    ["524.99", "524.99"],
    ["525", "525"],
    ["525.01", "525"],
  ])("on a net tax of %s is %s", (netTax, amount) => {
    expect(minimum("2026-04-15", "2026-12-31", netTax)).toBe(amount);
  });

  // Pub. L. 97-248, section 318(b): returns due after December 31, 1982 (the section of the act from memory).
  it("began with the returns due in 1983", () => {
    expect(minimum("1983-01-01", "1983-12-31")).toBe("100");
    expect(() => minimum("1982-12-31", "1983-12-31")).toThrow(NotInTableError);
  });

  it("is refused for a year whose amount is not published, only where it would apply", () => {
    expect(() => minimum("2028-01-01", "2028-12-31")).toThrow(NotInTableError);
    expect(minimum("2028-04-18", "2028-06-17")).toBeUndefined();
    expect(minimum("2028-04-18", "2028-12-31", "0")).toBeUndefined();
  });

  it("never exceeds the net tax nor the year's amount, and is one of the two", () => {
    fc.assert(
      fc.property(dollarsUpTo(2000), fc.integer({ min: 61, max: 900 }), (netTax, daysLate) => {
        fc.pre(netTax.greaterThan(0));
        const due = dueOn("2026-04-15");
        const filedOn = addDays(due.countedFrom, daysLate);
        const found = failureToFileMinimum(due, due, filedOn, netTax, rulebook)?.amount;
        expect(found?.equals(Decimal.min(netTax, 525))).toBe(true);
      }),
      RUNS
    );
  });
});
