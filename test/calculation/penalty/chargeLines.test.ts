import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chargeLines, type ChargeLine } from "../../../src/calculation/penalty/chargeLines";
import { charges } from "../../../src/calculation/penalty/charges";
import { ZERO } from "../../../src/money/dollars";
import { rulebook } from "../../../src/rules/rulebook";
import { RUNS } from "../arbitrary";
import { paid, usd } from "../given";
import { calendarDate } from "../../../src/calendar/calendarDate";
import { anyReturn, chargesOf, type GivenReturn } from "./givenReturn";

const linesOf = (given: GivenReturn): readonly ChargeLine[] => chargeLines(chargesOf(given));
const written = (lines: readonly ChargeLine[]): readonly string[] =>
  lines.map(({ kind, amount }) => `${kind} ${amount.toFixed(2)}`);

describe("the working of the charges", () => {
  it("is empty where nothing is charged", () => {
    const given = { taxYear: 2025, totalTax: "9000", paidOnTime: "9000", filedOn: "2026-12-31" };
    expect(linesOf(given)).toEqual([]);
  });

  it("goes from filing over paying to interest, a line for each rate", () => {
    const payments = [paid("2026-05-01", "1000"), paid("2026-07-20", "3000")];
    const given = { taxYear: 2025, totalTax: "20000", paidOnTime: "16000", payments };
    const lines = linesOf({ ...given, filedOn: "2026-05-20" });
    expect(lines.map((line) => line.kind)).toEqual([
      "failure-to-file penalty",
      "less failure-to-pay penalty",
      "failure-to-pay penalty",
      "failure-to-pay penalty",
      "interest on tax",
      "interest on tax",
      "interest on tax",
      "interest on failure-to-file penalty",
      "interest on failure-to-file penalty",
    ]);
    // two months at 5% of 4,000; a month of 4,000 and one of 3,000 at 0.5%; three months of 3,000
    expect(written(lines).slice(0, 4)).toEqual([
      "failure-to-file penalty 400.00",
      "less failure-to-pay penalty -35.00",
      "failure-to-pay penalty 20.00",
      "failure-to-pay penalty 45.00",
    ]);
    expect(lines[3]).toMatchObject({
      from: calendarDate("2026-05-16"),
      to: calendarDate("2026-08-15"),
      months: 3,
    });
    expect(lines[3]?.base?.toString()).toBe("3000");
    expect(lines[5]).toMatchObject({
      from: calendarDate("2026-05-01"),
      to: calendarDate("2026-06-30"),
      days: 60,
    });
  });

  it("shows the minimum as what it adds", () => {
    const given = { taxYear: 2025, totalTax: "1000", paidOnTime: "0", through: "2026-06-15" };
    const lines = linesOf({ ...given, filedOn: "2026-06-15" });
    // two months of 50, less two of 5, up to 525
    expect(written(lines).slice(0, 4)).toEqual([
      "failure-to-file penalty 100.00",
      "less failure-to-pay penalty -10.00",
      "increase to minimum penalty 435.00",
      "failure-to-pay penalty 10.00",
    ]);
  });

  it("has no line of a minimum that the penalty reaches", () => {
    // two months at 5% of 9,000 are more than the minimum of 525
    const given = { taxYear: 2025, totalTax: "9000", paidOnTime: "0", filedOn: "2026-06-15" };
    expect(written(linesOf(given)).slice(0, 2)).toEqual([
      "failure-to-file penalty 900.00",
      "less failure-to-pay penalty -90.00",
    ]);
    const lines = linesOf(given);
    expect(lines.map(({ kind }) => kind)).not.toContain("increase to minimum penalty");
    expect(lines[0]).toMatchObject({
      from: calendarDate("2026-04-16"),
      to: calendarDate("2026-06-15"),
      months: 2,
    });
  });

  it("shows the excuse as a line of nothing with the law behind it", () => {
    const payments = [paid("2026-10-15", "2000")];
    const given = { taxYear: 2025, totalTax: "20000", paidOnTime: "18000", payments };
    const [line, ...interest] = linesOf({ ...given, validExtension: true, filedOn: "2026-10-15" });
    expect(line).toMatchObject({ kind: "reasonable cause", amount: ZERO });
    expect(line?.source?.citation).toContain("301.6651-1(c)(3)");
    expect(interest.map(({ days }) => days)).toEqual([76, 92, 15]);
  });

  it("has a source on every line but those of an assumed rate", () => {
    const given = { taxYear: 2025, totalTax: "1000", paidOnTime: "0", through: "2027-01-31" };
    const lines = linesOf({ ...given, filedOn: "2026-06-15", assumedRate: usd("0.07") });
    const without = lines.filter((line) => line.source === undefined);
    expect(without.map((line) => [line.kind, line.from])).toEqual([
      ["interest on tax", calendarDate("2026-12-31")],
      ["interest on failure-to-file penalty", calendarDate("2026-12-31")],
    ]);
  });

  it("adds up to the total to the cent, in whole cents", () => {
    fc.assert(
      fc.property(anyReturn, (given) => {
        const charged = charges(given, rulebook);
        const lines = chargeLines(charged);
        const sum = lines.reduce((whole, line) => whole.plus(line.amount), ZERO);
        expect(sum.toFixed(2)).toBe(charged.total.toFixed(2));
        for (const line of lines) expect(line.amount.decimalPlaces()).toBeLessThanOrEqual(2);
      }),
      { ...RUNS, numRuns: 1000 }
    );
  });

  it("takes off only by the reduction, and never more than failure to pay charges", () => {
    fc.assert(
      fc.property(anyReturn, (given) => {
        const lines = chargeLines(charges(given, rulebook));
        const off = lines.filter((line) => line.amount.isNegative() && !line.amount.isZero());
        expect(off.every((line) => line.kind === "less failure-to-pay penalty")).toBe(true);
        const paidWithRequest = lines
          .filter((line) => line.kind === "failure-to-pay penalty")
          .reduce((sum, line) => sum.plus(line.amount), ZERO);
        const reduction = off.reduce((sum, line) => sum.plus(line.amount), ZERO);
        expect(reduction.plus(paidWithRequest).greaterThanOrEqualTo("-0.01")).toBe(true);
      }),
      RUNS
    );
  });
});
