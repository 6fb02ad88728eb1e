import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays, daysBetween } from "../../../src/calendar/calendarDate";
import {
  underpaymentInterest,
  type Payment,
} from "../../../src/calculation/penalty/underpaymentInterest";
import { ZERO } from "../../../src/money/dollars";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook, type Rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/interest-factors.json";
import { daysFrom, dollarsUpTo, RUNS } from "../arbitrary";
import { day, MADE_UP, paid, usd } from "../given";

const rates = { table: rulebook.underpaymentRate };

/** Interest in dollars and cents. */
function interest(
  amount: string,
  due: string,
  through: string,
  payments: readonly Payment[] = []
): string {
  const found = underpaymentInterest(usd(amount), day(due), payments, day(through), rates);
  return found.amount.toFixed(2);
}

describe("interest as published", () => {
  it.each(published.worksheet)("$case ($source.document)", ({ inputs, expected }) => {
    const { base, from, to } = inputs;
    const found = underpaymentInterest(usd(base), day(from), [], day(to), rates);
    expect(found.amount.toFixed(2)).toBe(expected.interest);
    expect(found.periods().map(({ period }) => period.days)).toEqual([expected.days]);
    expect(usd(base).plus(expected.interest).toFixed(2)).toBe(expected.balance);
  });

  it("chains exactly where that worksheet rounds every quarter: one cent apart after two", () => {
    expect(interest("10000", "2002-04-15", "2002-09-30")).toBe("279.99");
    expect(published.worksheet[1]?.expected.balance).toBe("10279.98");
  });

  // 26 CFR 301.6622-1(c)(2): simple interest through 1982, what is unpaid of it compounds daily from there.
  it("compounds the unpaid interest of 1982 as the regulation's example does", () => {
    const { inputs, expected } = published.compoundingExample;
    const { simpleRate, compoundedRate, tax, due, taxPaid, interestPaid } = inputs;
    const simple = usd(tax)
      .times(simpleRate)
      .times(daysBetween(day(due), day(taxPaid)))
      .div(365);
    expect(daysBetween(day(due), day(taxPaid))).toBe(expected.simpleDays);
    expect(simple.toFixed(2)).toBe(expected.simpleInterest);
    const from = day("1983-01-01");
    const table: Rulebook["underpaymentRate"] = {
      ...rates.table,
      knownFrom: from,
      knownThrough: day("1983-06-30"),
      entries: [{ from, figures: { rate: usd(compoundedRate) }, source: MADE_UP }],
    };
    const { periods, amount } = underpaymentInterest(simple, day(taxPaid), [], day(interestPaid), {
      table,
    });
    expect(periods().map(({ period }) => period.days)).toEqual([expected.compoundings]);
    expect(simple.plus(amount).toFixed(2)).toBe(expected.total);
  });
});

describe("interest on an amount due April 15, 2026", () => {
  it("is nothing through that day and one day's on the next", () => {
    expect(interest("10000", "2026-04-15", "2026-04-14")).toBe("0.00");
    expect(interest("10000", "2026-04-15", "2026-04-15")).toBe("0.00");
    // 10,000 at 6% by 365
    expect(interest("10000", "2026-04-15", "2026-04-16")).toBe("1.64");
  });

  it("is nothing on nothing", () => {
    expect(interest("0", "2026-04-15", "2026-12-31")).toBe("0.00");
  });

  it("stops with the payment in full, whatever the last date", () => {
    const payments = [paid("2026-06-30", "10000")];
    expect(interest("10000", "2026-04-15", "2026-12-31", payments)).toBe("125.70");
    expect(interest("10000", "2026-04-15", "2030-12-31", payments)).toBe("125.70");
  });

  it("stops with the last date of the calculation when the payment comes later", () => {
    const payments = [paid("2026-12-01", "10000")];
    expect(interest("10000", "2026-04-15", "2026-06-30", payments)).toBe("125.70");
  });

  // IRM 20.2.6.2: interest on tax and interest so far. Half paid after 76 days, then 92 days at 7%:
  // 10,000 x .012570476 = 125.70; (5,000 + 125.70) x .017798686 = 91.23
  it("goes on after a part payment, on the rest and on the interest so far", () => {
    const payments = [paid("2026-06-30", "5000"), paid("2026-09-30", "5000")];
    const found = underpaymentInterest(
      usd("10000"),
      day("2026-04-15"),
      payments,
      day("2026-12-31"),
      rates
    );
    expect(
      found.periods().map(({ base, interest: step }) => [base.toFixed(2), step.toFixed(2)])
    ).toEqual([
      ["10000.00", "125.70"],
      ["5125.70", "91.23"],
    ]);
    expect(found.amount.toFixed(2)).toBe("216.94");
  });

  it("refuses to pass the published rates", () => {
    expect(() => interest("10000", "2026-04-15", "2027-01-01")).toThrow(NotInTableError);
  });
});

describe("interest", () => {
  it("is the sum of its working, period after period", () => {
    const later = daysFrom("2023-04-16", "2026-12-31");
    fc.assert(
      fc.property(dollarsUpTo(100_000), later, later, (amount, paidOn, through) => {
        const payments = [{ date: paidOn, amount: amount.div(3) }];
        const found = underpaymentInterest(amount, day("2023-04-15"), payments, through, rates);
        const sum = found.periods().reduce((total, step) => total.plus(step.interest), ZERO);
        expect(sum.minus(found.amount).abs().lessThan("1e-15")).toBe(true);
      }),
      RUNS
    );
  });

  const spans = fc
    .tuple(daysFrom("1995-01-01", "2026-12-31"), daysFrom("1995-01-01", "2026-12-31"))
    .map(([one, other]) => (one <= other ? ([one, other] as const) : ([other, one] as const)));

  it("over a span is that over its first part, then over its second with what accrued", () => {
    fc.assert(
      fc.property(spans, fc.nat(), dollarsUpTo(100_000), ([from, to], cut, amount) => {
        const between = addDays(from, cut % (daysBetween(from, to) + 1));
        const first = underpaymentInterest(amount, from, [], between, rates).amount;
        const second = underpaymentInterest(amount.plus(first), between, [], to, rates).amount;
        const whole = underpaymentInterest(amount, from, [], to, rates).amount;
        expect(whole.minus(first).minus(second).abs().lessThan("1e-15")).toBe(true);
      }),
      RUNS
    );
  });

  it("grows with the amount in proportion and with every day", () => {
    fc.assert(
      fc.property(spans, dollarsUpTo(100_000), ([from, to], amount) => {
        const single = underpaymentInterest(amount, from, [], to, rates).amount;
        const triple = underpaymentInterest(amount.times(3), from, [], to, rates).amount;
        expect(triple.minus(single.times(3)).abs().lessThan("1e-15")).toBe(true);
        const dayBefore = underpaymentInterest(amount, from, [], addDays(to, -1), rates).amount;
        const grows = amount.greaterThan(ZERO) && to > from;
        expect(single.greaterThan(dayBefore)).toBe(grows);
      }),
      RUNS
    );
  });

  it("is never raised by a part payment, and less the earlier that comes", () => {
    const day2025 = daysFrom("2025-04-16", "2026-12-31");
    fc.assert(
      fc.property(dollarsUpTo(50_000), day2025, day2025, (amount, one, other) => {
        const due = day("2025-04-15");
        const through = day("2026-12-31");
        const [early, late] = one <= other ? [one, other] : [other, one];
        const withHalfPaid = (on: typeof early): typeof amount =>
          underpaymentInterest(amount, due, [{ date: on, amount: amount.div(2) }], through, rates)
            .amount;
        const unpaid = underpaymentInterest(amount, due, [], through, rates).amount;
        expect(withHalfPaid(late).lessThanOrEqualTo(unpaid)).toBe(true);
        expect(withHalfPaid(early).minus(withHalfPaid(late)).lessThanOrEqualTo("1e-15")).toBe(true);
      }),
      RUNS
    );
  });
});
