import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { written, addDays } from "../../../src/calendar/calendarDate";
import { shortDate } from "../../../src/calendar/writtenDate";
import { underpaymentRate } from "../../../src/calculation/penalty/underpaymentRate";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import { daysFrom, RUNS } from "../arbitrary";
import { day, usd } from "../given";

const table = rulebook.underpaymentRate;
const rateOn = (on: string): string => underpaymentRate(day(on), { table }).rate.toString();
const { knownThrough } = table;
const beyond = addDays(knownThrough, 1);

describe("the underpayment rate", () => {
  // Official text: irs.gov statement of June 24, 2020 (5%, then 3%); Rev. Rul. 2022-5; 2023-17; 2025-11; 2025-22.
  it.each([
    ["2020-04-01", "0.05"],
    ["2020-06-30", "0.05"],
    ["2020-07-01", "0.03"],
    ["2022-03-31", "0.03"],
    ["2022-04-01", "0.04"],
    ["2023-09-30", "0.07"],
    ["2023-10-01", "0.08"],
    ["2025-07-01", "0.07"],
    ["2026-01-01", "0.07"],
  ])("on %s is %s", (on, rate) => {
    expect(rateOn(on)).toBe(rate);
  });

  // Secondary: two tables copied from irs.gov give 7% for the first quarter of 2026 and 6% for the second.
  it.each([
    ["2026-03-31", "0.07"],
    ["2026-04-01", "0.06"],
    ["2026-06-30", "0.06"],
    ["2026-07-01", "0.07"],
  ])("on %s is %s at the end of a quarter", (on, rate) => {
    expect(rateOn(on)).toBe(rate);
  });

  it("has a source if published, and none if assumed", () => {
    expect(underpaymentRate(knownThrough, { table }).source?.citation).toMatch(/^Rev\. Rul\./);
    const assumed = underpaymentRate(beyond, { table, assumedRate: usd("0.065") });
    expect(assumed.rate.toString()).toBe("0.065");
    expect(assumed.source).toBeUndefined();
  });

  it("does not cover a date after the last published quarter unless a rate is assumed", () => {
    expect(() => underpaymentRate(beyond, { table })).toThrow(NotInTableError);
    expect(() => underpaymentRate(beyond, { table })).toThrow(
      `The table covers dates through ${shortDate(knownThrough)}`
    );
    const latest = underpaymentRate(beyond, { table, assumedRate: "latest" });
    expect(latest.rate.equals(underpaymentRate(knownThrough, { table }).rate)).toBe(true);
    expect(latest.source).toBeUndefined();
  });

  it("does not cover a date before the first rate in the table, assumed or not", () => {
    const before = addDays(table.knownFrom, -1);
    expect(() => underpaymentRate(before, { table })).toThrow(NotInTableError);
    expect(() => underpaymentRate(before, { table, assumedRate: "latest" })).toThrow(
      NotInTableError
    );
  });

  it("is never replaced by the assumed one if published", () => {
    fc.assert(
      fc.property(daysFrom("1995-01-01", written(knownThrough)), (on) => {
        const published = underpaymentRate(on, { table });
        const assumed = underpaymentRate(on, { table, assumedRate: usd("0.99") });
        expect(assumed).toEqual(published);
      }),
      RUNS
    );
  });

  // 26 U.S.C. 6621(b): set for each quarter, a whole percent.
  it("is one whole percent for every day of a quarter", () => {
    fc.assert(
      fc.property(daysFrom("1995-01-01", written(knownThrough)), (on) => {
        const { rate } = underpaymentRate(on, { table });
        expect(rate.times(100).isInteger()).toBe(true);
        const firstMonth = Math.floor((Number(written(on).slice(5, 7)) - 1) / 3) * 3 + 1;
        const first = day(`${written(on).slice(0, 4)}-${String(firstMonth).padStart(2, "0")}-01`);
        expect(underpaymentRate(first, { table }).rate.equals(rate)).toBe(true);
      }),
      RUNS
    );
  });
});
