import { describe, expect, it } from "vitest";
import { paidBeyond } from "../../../src/calculation/penalty/paidBeyond";
import { written } from "../../../src/calendar/calendarDate";
import { paid, usd } from "../given";

const beyond = (amount: string, ...payments: ReturnType<typeof paid>[]): readonly string[] =>
  paidBeyond(usd(amount), payments).map(
    ({ date, amount: left }) => `${written(date)} ${left.toString()}`
  );

// Arithmetic alone: payments less the amount that they pay first.
describe("what is paid beyond an amount", () => {
  const june = paid("2026-06-01", 700);
  const july = paid("2026-07-01", 400);

  it("is the part of the payment that exceeds it, and all of the later ones", () => {
    expect(beyond("500", june, july)).toEqual(["2026-06-01 200", "2026-07-01 400"]);
    expect(beyond("1000", june, july)).toEqual(["2026-07-01 100"]);
    expect(beyond("700", june, july)).toEqual(["2026-07-01 400"]);
  });

  it("is nothing if the payments do not exceed it", () => {
    expect(beyond("1100", june, july)).toEqual([]);
    expect(beyond("1100.01", june, july)).toEqual([]);
    expect(beyond("5")).toEqual([]);
  });

  it("is every payment if there is nothing to pay", () => {
    expect(beyond("0", june, july)).toEqual(["2026-06-01 700", "2026-07-01 400"]);
  });
});
