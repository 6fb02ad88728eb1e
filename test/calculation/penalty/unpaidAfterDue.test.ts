import { describe, expect, it } from "vitest";
import { written } from "../../../src/calendar/calendarDate";
import { unpaidAfterDue } from "../../../src/calculation/penalty/unpaidAfterDue";
import { dueOn, paid, usd } from "../given";

// 26 U.S.C. 7503: a payment by the last day is on time.
describe("the tax unpaid after a due date", () => {
  const unpaid = (owed: string, ...payments: ReturnType<typeof paid>[]): readonly unknown[] => {
    const found = unpaidAfterDue(dueOn("2026-04-15"), usd(owed), payments);
    return [found.unpaid.toFixed(2), ...found.later.map(({ date }) => written(date))];
  };

  it("is what the payments by the last day leave, and the later ones are apart", () => {
    const payments = [paid("2026-04-10", 700), paid("2026-04-15", 100), paid("2026-04-16", 50)];
    expect(unpaid("1000", ...payments)).toEqual(["200.00", "2026-04-16"]);
  });

  it("is zero, not negative, if they exceed it", () => {
    expect(unpaid("1000", paid("2026-04-10", 1_200))).toEqual(["0.00"]);
    expect(unpaid("1000")).toEqual(["1000.00"]);
  });
});
