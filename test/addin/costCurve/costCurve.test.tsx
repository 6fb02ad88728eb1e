import { renderToStaticMarkup } from "preact-render-to-string";
import { describe, expect, it } from "vitest";
import { CostCurve } from "../../../src/addin/costCurve/costCurve";
import { costCurve } from "../../../src/addin/costCurve/costCurveData";
import {
  axisAmount,
  labelPlace,
  scaleOf,
  SIZE,
  ticksTo,
} from "../../../src/addin/costCurve/costCurveShape";
import { costRows } from "../../../src/addin/costCurve/costCurveWords";
import type { CostCurveInput } from "../../../src/addin/costCurve/costOnDate";
import { costCurveClient } from "./costCurveClient";

const markupOf = (change: Partial<CostCurveInput> = {}): string =>
  renderToStaticMarkup(<CostCurve input={{ ...costCurveClient, ...change }} />);
const rowsOf = (change: Partial<CostCurveInput>, scenario: "extended" | "notExtended") => {
  const answer = costCurve({ ...costCurveClient, ...change });
  if (!("curve" in answer)) throw new Error(answer.sentence);
  return costRows(answer.curve, scenario);
};

describe("the cost curve on the page", () => {
  it("is two pictures, each with a sentence for who cannot see it", () => {
    const names = [...markupOf().matchAll(/role="img" aria-label="([^"]*)"/g)].map(
      ([, name]) => name
    );
    // The amounts on October 15 are from a calculation outside the project, day by day.
    expect(names).toHaveLength(2);
    expect(names[0]).toMatch(
      /^With the extension, penalties and interest rise from \$0\.00 on April 15, 2026 to \$953\.42 on October 15, 2026 to \$[\d,.]+ on April 15, 2027\.$/
    );
    expect(names[1]).toMatch(/^Without the extension, .*\$4,441\.69 on October 15, 2026/);
  });

  it("names the due date, the as-of date and the assumed rate in words", () => {
    const markup = markupOf();
    for (const text of [
      ">Extended due date 10/15/2026<",
      ">As of 6/1/2026<",
      ">7.00% assumed<",
      "Interest rates are published through 12/31/2026. The dashed part assumes 7.00% a year.",
      "The 90% test is not met: another $10,800.00 had to be paid by 4/15/2026.",
    ])
      expect(markup).toContain(text);
    expect(markupOf({ assumedRate: "" })).not.toContain("assume");
    expect(markupOf({ asOf: "" })).toContain("another $10,800.00 has to be paid by 4/15/2026.");
  });

  it("begins with the figures of the as-of date, and without one with those of the extended due date", () => {
    expect(markupOf()).toContain("June 1, 2026: with the extension $266.33, without it $1,626.80.");
    expect(markupOf({ asOf: "" })).toContain(
      "October 15, 2026: with the extension $953.42, without it $4,441.69."
    );
  });

  it("is a sentence if there is nothing to draw", () => {
    expect(markupOf({ payments: 42_000 })).toBe(
      '<p class="note">There is no balance due, so waiting causes no penalties or interest.</p>'
    );
  });
});

describe("the rows of the table", () => {
  it("are the dates on both sides of each change, with what changes", () => {
    const rows = rowsOf({ totalTax: 20_000, payments: 18_500 }, "extended");
    const remarks = rows.map(({ remark }) => remark).filter(Boolean);
    expect(remarks).toEqual([
      "Regular due date",
      "As-of date",
      "Extended due date",
      "90% test no longer met, failure-to-file penalty rises, failure-to-pay penalty rises",
      "Failure-to-file penalty rises, failure-to-pay penalty rises",
      "Minimum failure-to-file penalty",
      "Failure-to-pay penalty rises",
      "Last date of the published interest rates",
      "Failure-to-pay penalty rises",
      "Failure-to-pay penalty rises",
      "Failure-to-pay penalty rises",
    ]);
    for (const [index, { remark, point }] of rows.entries())
      if (remark.includes("rises"))
        expect(point.date - (rows[index - 1]?.point.date ?? 0), remark).toBe(1);
  });

  it("say when the failure-to-file penalty reaches its maximum: in the fifth month (section 6651(a)(1))", () => {
    const reached = rowsOf({}, "notExtended").filter(({ remark }) => remark.includes("maximum"));
    expect(reached.map(({ remark }) => remark)).toEqual([
      "Failure-to-file penalty reaches its maximum, failure-to-pay penalty rises",
    ]);
    expect(reached[0]?.point.notExtended.failureToFile).toBe(0.225 * 15_000);
  });
});

describe("the axis", () => {
  it.each([
    [4441.69, [0, 1000, 2000, 3000, 4000, 5000]],
    [5000, [0, 1000, 2000, 3000, 4000, 5000]],
    [0.3, [0, 0.2, 0.4]],
    [0, [0, 0.2]],
  ])("to %d has the amounts %j", (highest, ticks) => {
    expect(ticksTo(highest)).toEqual(ticks);
  });

  it.each([
    [0, 500, "$0"],
    [1500, 500, "$1,500"],
    [0.2, 0.2, "$0.20"],
    [40_000, 20_000, "$40K"],
    [1_500_000, 500_000, "$1.5M"],
  ])("writes %d in steps of %d as %s", (amount, step, text) => {
    expect(axisAmount(amount, step)).toBe(text);
  });

  it("places the dates from left to right and the amounts from the bottom up", () => {
    const { x, y } = scaleOf(100, 200, 50);
    expect([x(100), x(200)]).toEqual([SIZE.left, SIZE.width - SIZE.right]);
    expect([y(0), y(50)]).toEqual([SIZE.height - SIZE.bottom, SIZE.top]);
  });

  it("keeps a label within the chart", () => {
    expect(labelPlace("4/15/2026", 5).anchor).toBe("start");
    expect(labelPlace("4/15/2026", 130)).toEqual({ x: 130, anchor: "middle" });
    expect(labelPlace("4/15/2026", SIZE.width - 5).anchor).toBe("end");
  });
});
