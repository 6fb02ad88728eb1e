import { describe, expect, it } from "vitest";
import { rateAfterLevyNotice } from "../../../src/calculation/account/rateAfterLevyNotice";
import {
  failureToPayPenalty,
  type FailureToPayPenalty,
} from "../../../src/calculation/penalty/failureToPayPenalty";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import { day, dueOn, usd } from "../given";

/** The penalty on $10,000 due April 15, 2024. */
function penalty(
  through: string,
  { agreementOn, levyNoticeOn }: { agreementOn?: string; levyNoticeOn?: string }
): FailureToPayPenalty {
  const date = (written: string | undefined): ReturnType<typeof day> | undefined =>
    written === undefined ? undefined : day(written);
  const input = {
    due: dueOn("2024-04-15"),
    unpaidTax: usd("10000"),
    payments: [],
    through: day(through),
    agreementOn: date(agreementOn),
    levyNoticeRate: rateAfterLevyNotice(date(levyNoticeOn), rulebook),
  };
  return failureToPayPenalty(input, rulebook.failureToPay);
}
const months = ({ periods }: FailureToPayPenalty): readonly string[] =>
  periods.map(
    (period) => `${String(period.months)} at ${period.monthlyRate.times(100).toFixed()}%`
  );

describe("the failure-to-pay penalty after a levy notice", () => {
  // 26 U.S.C. 6651(d): "each month (or fraction thereof) beginning after" the day 10 days after the notice.
  it.each([
    ["2024-07-04", ["3 at 0.5%", "3 at 1%"], "ten days later is July 14; July 16 begins after it"],
    ["2024-07-05", ["3 at 0.5%", "3 at 1%"], "ten days later is July 15; July 16 begins after it"],
    ["2024-07-06", ["4 at 0.5%", "2 at 1%"], "ten days later is July 16, on which a month begins"],
    ["2024-07-15", ["4 at 0.5%", "2 at 1%"], "ten days later is in the month of July 16"],
    ["2024-04-01", ["6 at 1%"], "ten days later is before the first month"],
    ["2024-10-31", ["6 at 0.5%"], "no month begins after it"],
  ])("of %s has months %j: %s", (levyNoticeOn, expected) => {
    expect(months(penalty("2024-10-15", { levyNoticeOn }))).toEqual(expected);
  });

  it("names section 6651(d) for those months", () => {
    const { periods } = penalty("2024-10-15", { levyNoticeOn: "2024-07-05" });
    expect(periods.map(({ source }) => source.citation)).toEqual([
      expect.stringContaining("6651(a)(2)"),
      "IRC section 6651(d)",
    ]);
  });

  it("ends at 25% in all", () => {
    // 3 months at 0.5%, then 23.5 months at 1%
    const found = penalty("2030-01-01", { levyNoticeOn: "2024-07-05" });
    expect(found.amount.toFixed(2)).toBe("2500.00");
    expect(months(found)).toEqual(["3 at 0.5%", "24 at 1%"]);
  });

  it("has 0.25% in each month during which an agreement is in effect, the month of acceptance included", () => {
    // 26 U.S.C. 6651(h): the example FTP-IA, computed from the statute: four months and three months, 275.00
    const found = penalty("2024-11-15", { agreementOn: "2024-09-10" });
    expect(months(found)).toEqual(["4 at 0.5%", "3 at 0.25%"]);
    expect(found.amount.toFixed(2)).toBe("275.00");
  });

  it("has 1% also under an agreement, because no text ranks section 6651(d) and (h)", () => {
    const both = { agreementOn: "2024-06-01", levyNoticeOn: "2024-07-05" };
    expect(months(penalty("2024-10-15", both))).toEqual(["1 at 0.5%", "2 at 0.25%", "3 at 1%"]);
    const later = { agreementOn: "2024-08-20", levyNoticeOn: "2024-07-05" };
    expect(months(penalty("2024-10-15", later))).toEqual(["3 at 0.5%", "3 at 1%"]);
  });

  it("is refused for a notice before the table, and is nothing without a notice", () => {
    expect(() => rateAfterLevyNotice(day("2008-12-31"), rulebook)).toThrow(NotInTableError);
    expect(() => rateAfterLevyNotice(day("2009-01-01"), rulebook)).not.toThrow();
    expect(rateAfterLevyNotice(undefined, rulebook)).toBeUndefined();
  });
});
