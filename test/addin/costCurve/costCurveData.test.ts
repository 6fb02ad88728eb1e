import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  costCurve,
  isStep,
  type CostCurve,
  type CostCurveAnswer,
} from "../../../src/addin/costCurve/costCurveData";
import { costsOn, type CostCurveInput } from "../../../src/addin/costCurve/costOnDate";
import { calendarDate, yearOf } from "../../../src/calendar/calendarDate";
import { catalog } from "../../../src/functions/catalog";
import { ruleTables } from "../../../src/rules/ruleTables";
import { costCurveClient } from "./costCurveClient";

const day = (iso: string): number => calendarDate(iso);
const client: CostCurveInput = { ...costCurveClient, assumedRate: "latest" };

function drawn(answer: CostCurveAnswer): CostCurve {
  if (!("curve" in answer)) throw new Error(answer.sentence);
  return answer.curve;
}
const curveOf = (change: Partial<CostCurveInput> = {}): CostCurve =>
  drawn(costCurve({ ...client, ...change }));
const sentenceOf = (change: Partial<CostCurveInput>): string => {
  const answer = costCurve({ ...client, ...change });
  return "curve" in answer ? "" : answer.sentence;
};
const pointOn = ({ points }: CostCurve, iso: string) =>
  points.find(({ date }) => date === day(iso));

/** The answers of CHARGES for a column of dates, in cents. */
function chargesOn(input: CostCurveInput, dates: readonly number[], extension: string): number[] {
  const column = dates.map((date) => [date]);
  const answers = catalog["CHARGES"]?.answer([
    [[input.taxYear]],
    [[input.totalTax]],
    [[input.payments]],
    column,
    column,
    [[extension]],
    [[input.state]],
    [[input.filerType]],
    [[input.assumedRate ?? null]],
    [[null]],
    [[input.postponementBegins]],
    [[input.postponementEnds]],
  ]) as number[][];
  return answers.map(([amount = NaN]) => Math.round(amount * 100));
}

describe("the cost of waiting by date", () => {
  it("has the amounts of an account that compounds each day by itself", () => {
    // Calculated outside the project, day by day, at the rates of 2026: 953.42 with the extension, 4,441.69 without.
    const point = pointOn(curveOf(), "2026-10-15");
    expect(point?.extended.total).toBe(953.42);
    expect(point?.notExtended.total).toBe(4441.69);
  });

  it("begins with nothing on the due date and ends a year later", () => {
    const { points } = curveOf();
    expect(points[0]).toMatchObject({
      date: day("2026-04-15"),
      extended: { total: 0 },
      notExtended: { total: 0 },
    });
    expect(points.at(-1)?.date).toBe(day("2027-04-15"));
  });

  it("has a point on each side of every month of failure to pay: 0.5% a month (section 6651(a)(2))", () => {
    const curve = curveOf();
    const { points } = curve;
    for (const [month, before, after] of [
      [1, "2026-04-15", "2026-04-16"],
      [2, "2026-05-15", "2026-05-16"],
      [7, "2026-10-15", "2026-10-16"],
    ] as const) {
      expect(pointOn(curve, before)?.extended.failureToPay).toBe((month - 1) * 75);
      expect(pointOn(curve, after)?.extended.failureToPay).toBe(month * 75);
    }
    const apart = points.filter((point, index) => {
      const next = points[index + 1];
      return next && next.date - point.date > 1 && isStep(point, next);
    });
    expect(apart).toEqual([]);
  });

  it("stops at 25% of failure to file: 22.5% beside failure to pay after five months (section 6651(a)(1), (c)(1))", () => {
    const curve = curveOf();
    expect(pointOn(curve, "2026-08-15")?.notExtended.failureToFile).toBe(0.18 * 15_000);
    expect(pointOn(curve, "2026-08-16")?.notExtended.failureToFile).toBe(0.225 * 15_000);
    expect(curve.points.at(-1)?.notExtended.failureToFile).toBe(0.225 * 15_000);
  });

  it("shows the minimum penalty after 60 days: $525 for returns due in 2026, at most the tax", () => {
    // Rev. Proc. 2024-40, section 6651, as the rule table cites it.
    const curve = curveOf({ totalTax: 10_000, payments: 9_000 });
    expect(pointOn(curve, "2026-06-14")?.notExtended.failureToFile).toBe(90);
    const after = pointOn(curve, "2026-06-15")?.notExtended;
    expect(after).toMatchObject({ failureToFile: 525, isMinimum: true });
  });

  it("shows the 90% test, and its loss on the day after the extended due date (26 CFR 301.6651-1(c)(3))", () => {
    const curve = curveOf({ totalTax: 20_000, payments: 18_500 });
    expect(pointOn(curve, "2026-10-15")?.extended).toMatchObject({
      isExcused: true,
      failureToPay: 0,
      total: 50.34,
    });
    expect(pointOn(curve, "2026-10-16")?.extended).toMatchObject({
      isExcused: false,
      failureToPay: 7 * 7.5,
    });
    expect(curve.neededForTest).toBe(0);
    expect(curveOf().neededForTest).toBe(0.9 * 42_000 - 27_000);
  });
});

describe("the end of the curve", () => {
  const through = ruleTables().get("underpayment-rate")?.knownThrough ?? calendarDate("1900-03-01");

  it("is the last published quarter if no rate is assumed", () => {
    const curve = curveOf({ assumedRate: undefined });
    expect(curve.points.at(-1)?.date).toBe(through);
    expect(curve.assumedRate).toBeUndefined();
    expect(curve.publishedThrough).toBe(through);
  });

  it("is a year after the due date if one is, with points where the published rates end", () => {
    const curve = curveOf({ assumedRate: 0.08 });
    expect(curve.assumedRate).toBe(0.08);
    const dates = curve.points.map(({ date }) => date);
    expect(dates).toContain(through);
    expect(dates).toContain(through + 1);
  });

  it("is the last published quarter also for a fiscal year whose return is due shortly before it", () => {
    const curve = curveOf({ taxYear: "8/31/2026", assumedRate: undefined });
    expect(curve.regularDue).toBe(day("2026-12-15"));
    expect(curve.points.at(-1)?.date).toBe(through);
    expect(curve.points.at(-1)?.notExtended.failureToPay).toBe(75);
  });

  it("is a year after the due date of a year whose rates are all published", () => {
    const curve = curveOf({ taxYear: 2022, assumedRate: "" });
    expect(curve.points.at(-1)?.date).toBe(day("2024-04-18"));
    expect(curve.assumedRate).toBeUndefined();
  });

  it("does not exist, with a sentence, if the due date is after it", () => {
    const year = yearOf(through);
    expect(sentenceOf({ taxYear: year, assumedRate: undefined })).toMatch(
      /^Interest rates are published through .*\. Enter an assumed rate/
    );
  });
});

describe("a curve of the client's own dates", () => {
  it("begins in April for a taxpayer out of the country, whose penalties begin after June 15", () => {
    const curve = curveOf({ filerType: "out of country" });
    expect(curve.points[0]?.date).toBe(day("2026-04-15"));
    expect(pointOn(curve, "2026-06-15")?.notExtended.failureToPay).toBe(0);
    expect(pointOn(curve, "2026-06-16")?.notExtended.failureToPay).toBe(75);
    expect(curve.regularDue).toBe(day("2026-06-15"));
  });

  it("begins at the end of a postponement", () => {
    const curve = curveOf({ postponementBegins: "4/1/2026", postponementEnds: "7/31/2026" });
    expect(curve.points[0]?.date).toBe(day("2026-07-31"));
  });

  it("marks the as-of date only where it has it", () => {
    expect(curveOf().asOf).toBe(day("2026-06-01"));
    expect(curveOf({ asOf: "6/1/2026" }).asOf).toBe(day("2026-06-01"));
    for (const asOf of [undefined, "", "soon", "4/1/2026", "6/1/2028"])
      expect(curveOf({ asOf }).asOf, String(asOf)).toBeUndefined();
  });
});

describe("what has no curve", () => {
  it.each<[Partial<CostCurveInput>, RegExp]>([
    [{ totalTax: 20_000, payments: 20_000 }, /^There is no balance due/],
    [{ totalTax: "n/a" }, /^totalTax: "n\/a" is not a dollar amount/],
    [{ taxYear: "" }, /^taxYear: The cell is blank/],
    [{ taxYear: 2060 }, /2060/],
    [{ state: "TXX" }, /^state: "TXX" is not a state/],
    [{ payments: { type: "Error", basicValue: "#DIV/0!" } }, /#DIV\/0!/],
    [{ asOf: { type: "Error", basicValue: "#REF!" } }, /#REF!/],
    [{ assumedRate: "7" }, /^assumedRate: "7" is not an annual rate/],
  ])("%j is answered with a sentence", (change, sentence) => {
    expect(sentenceOf(change)).toMatch(sentence);
  });
});

const clients = fc.record({
  taxYear: fc.integer({ min: 2015, max: 2025 }),
  totalTax: fc.integer({ min: 1, max: 20_000_000 }).map((cents) => cents / 100),
  share: fc.oneof(fc.constantFrom(0, 0.5, 0.899, 0.9, 0.95), fc.double({ min: 0, max: 0.999 })),
  state: fc.constantFrom("OH", "ME", "MA", "DC", "foreign", ""),
  filerType: fc.constantFrom("", "out of country", "nonresident"),
  assumedRate: fc.constantFrom("latest", 0.05, undefined),
  postponement: fc.constantFrom(["", ""], ["2/1", "8/3"], ["4/10", "5/1"], ["9/1", "11/16"]),
});

describe("for any client", () => {
  it("every point is the answer of CHARGES, to the cent, and penalties change at no other date", () => {
    fc.assert(
      fc.property(clients, ({ share, postponement, ...given }) => {
        const year = String(given.taxYear + 1);
        const [begins = "", ends = ""] = postponement.map((date) => date && `${date}/${year}`);
        const input: CostCurveInput = {
          ...client,
          ...given,
          payments: Math.floor(given.totalTax * share * 100) / 100,
          postponementBegins: begins,
          postponementEnds: ends,
        };
        const answer = costCurve(input);
        if (!("curve" in answer)) return;
        const { points } = answer.curve;
        const dates = points.map(({ date }) => date);
        const cents = (amounts: readonly number[]) =>
          amounts.map((amount) => Math.round(amount * 100));
        expect(cents(points.map(({ extended }) => extended.total))).toEqual(
          chargesOn(input, dates, "yes")
        );
        expect(cents(points.map(({ notExtended }) => notExtended.total))).toEqual(
          chargesOn(input, dates, "no")
        );
        for (const [index, point] of points.entries()) {
          const next = points[index + 1];
          if (!next) continue;
          for (let date = point.date + 1; date < next.date; date += 1)
            expect(isStep(point, costsOn(input, date)), String(date)).toBe(false);
        }
      }),
      { numRuns: 12 }
    );
  });
});
