import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays } from "../../../src/calendar/calendarDate";
import {
  failureToFilePenalty,
  type FailureToFilePenalty,
} from "../../../src/calculation/penalty/failureToFilePenalty";
import { failureToPayPenalty } from "../../../src/calculation/penalty/failureToPayPenalty";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/failure-to-file-and-pay.json";
import { daysFrom, dollarsUpTo, RUNS } from "../arbitrary";
import { day, dueOn, MADE_UP, paid, usd } from "../given";

const from1970 = day("1970-01-01");
/** No minimum stood in the law for returns due before 1983: these rules give it as nothing. */
const beforeTheMinimum = {
  ...rulebook,
  failureToFileMinimum: {
    ...rulebook.failureToFileMinimum,
    knownFrom: from1970,
    entries: [{ from: from1970, figures: { amount: usd(0) }, source: MADE_UP }],
  },
};

/** The penalty alone, on a return due and filed on the days given. */
function addition(
  netTax: string,
  filedOn: string,
  due = dueOn("2026-04-15"),
  unextended = due
): FailureToFilePenalty {
  return failureToFilePenalty(
    { due, regular: unextended, filedOn: day(filedOn), unpaidTax: usd(netTax) },
    rulebook
  );
}
const dollars = (...given: Parameters<typeof addition>): string =>
  addition(...given).amount.toFixed(2);

describe("failure to file as published", () => {
  it.each(published.failureToFile)("$case ($source.document)", ({ inputs, expected }) => {
    const due = dueOn(inputs.due);
    const beside = inputs.failureToPay;
    const failureToPay = beside
      ? failureToPayPenalty(
          {
            due,
            unpaidTax: usd(beside.unpaid),
            payments: [paid(beside.paidOn, beside.unpaid)],
            through: day(beside.paidOn),
          },
          rulebook.failureToPay
        )
      : undefined;
    const filedOn = day(inputs.filedOn);
    const found = failureToFilePenalty(
      { due, regular: due, filedOn, unpaidTax: usd(inputs.netTax), failureToPay },
      beforeTheMinimum
    );
    expect({
      months: found.months,
      gross: found.gross.toFixed(2),
      reduction: found.reduction.toFixed(2),
      addition: found.amount.toFixed(2),
    }).toEqual(expected);
  });
});

describe("failure to file on $10,000", () => {
  // 26 U.S.C. 6651(a)(1): 5% a month or part of one, most 25%.
  it.each([
    ["2026-04-14", "0.00"],
    ["2026-04-15", "0.00"],
    ["2026-04-16", "500.00"],
    ["2026-05-15", "500.00"],
    ["2026-05-16", "1000.00"],
    ["2026-08-15", "2000.00"],
    ["2026-08-16", "2500.00"],
    ["2026-09-16", "2500.00"],
    ["2030-01-01", "2500.00"],
  ])("filed %s is %s", (filedOn, amount) => {
    expect(dollars("10000", filedOn)).toBe(amount);
  });

  // 26 CFR 301.6651-1(b)(3): due Sunday October 15, 2023, timely on Monday, months from the 15th.
  it.each([
    ["2023-10-16", "0.00"],
    ["2023-10-17", "500.00"],
    ["2023-11-15", "500.00"],
    ["2023-11-16", "1000.00"],
  ])("extended to a Sunday and filed %s is %s", (filedOn, amount) => {
    const extended = dueOn("2023-10-15", "2023-10-16", "extended return");
    expect(dollars("10000", filedOn, extended, dueOn("2023-04-15", "2023-04-18"))).toBe(amount);
  });
});

describe("the minimum", () => {
  // 26 U.S.C. 6651(a), last sentence: the 61st day after April 15, 2026 is June 15.
  it.each([
    ["1000", "2026-06-14", "100.00"],
    ["1000", "2026-06-15", "525.00"],
    ["100", "2026-06-15", "100.00"],
    ["5250", "2026-06-15", "525.00"],
    ["6000", "2026-06-15", "600.00"],
    ["0", "2026-06-15", "0.00"],
  ])("on %s, filed %s, makes the penalty %s", (netTax, filedOn, amount) => {
    expect(dollars(netTax, filedOn)).toBe(amount);
  });

  // 26 U.S.C. 6651(c)(1), last sentence: the reduction does not go below the minimum.
  it("is not reduced by failure to pay", () => {
    const due = dueOn("2026-04-15");
    const filedOn = day("2026-09-30");
    const unpaid = usd("2200");
    const failureToPay = failureToPayPenalty(
      { due, unpaidTax: unpaid, payments: [], through: filedOn },
      rulebook.failureToPay
    );
    const found = failureToFilePenalty(
      { due, regular: due, filedOn, unpaidTax: unpaid, failureToPay },
      rulebook
    );
    // 550 less 55 would be 495
    expect([found.gross, found.reduction, found.amount].map((part) => part.toFixed(2))).toEqual([
      "550.00",
      "55.00",
      "525.00",
    ]);
  });

  it("is refused where it applies and is not published", () => {
    expect(() => dollars("10000", "2028-12-31", dueOn("2028-04-15"))).toThrow(NotInTableError);
    expect(dollars("10000", "2028-05-31", dueOn("2028-04-15"))).toBe("1000.00");
  });
});

describe("failure to file", () => {
  const due = dueOn("2026-04-15");

  it("is nothing where no tax is unpaid, however late", () => {
    expect(addition("0", "2026-12-31")).toMatchObject({ months: 0, minimum: undefined });
  });

  it("names the months it charges", () => {
    expect(addition("10000", "2026-06-20")).toMatchObject({
      months: 3,
      from: day("2026-04-16"),
      to: day("2026-07-15"),
    });
  });

  // Pub. L. 91-172, section 943(d), 83 Stat. 729: returns due after December 31, 1969.
  it("is refused for due dates before the law began", () => {
    expect(() => dollars("10000", "1970-01-15", dueOn("1969-12-31"))).toThrow(NotInTableError);
    expect(dollars("10000", "1970-01-15", dueOn("1970-01-01"))).toBe("500.00");
  });

  it("never falls with lateness, never exceeds a quarter or the minimum if that is more", () => {
    fc.assert(
      fc.property(
        dollarsUpTo(50_000),
        daysFrom("2026-04-01", "2027-12-31"),
        fc.integer({ min: 0, max: 60 }),
        (netTax, filedOn, delay) => {
          const filed = (on: typeof filedOn): typeof netTax =>
            failureToFilePenalty({ due, regular: due, filedOn: on, unpaidTax: netTax }, rulebook)
              .amount;
          const later = filed(addDays(filedOn, delay));
          expect(later.greaterThanOrEqualTo(filed(filedOn))).toBe(true);
          const quarter = netTax.times("0.25");
          const most = quarter.greaterThan(525)
            ? quarter
            : netTax.lessThan(525)
              ? netTax
              : usd(525);
          expect(later.lessThanOrEqualTo(most)).toBe(true);
        }
      ),
      RUNS
    );
  });

  // Common effect of 6651(c)(1), no separate source: 4.5% a month beside 0.5%, 22.5% at most.
  it("together with failure to pay on the same unpaid tax makes 5% a month for five months", () => {
    fc.assert(
      fc.property(dollarsUpTo(50_000), daysFrom("2026-04-16", "2026-06-14"), (netTax, filedOn) => {
        const failureToPay = failureToPayPenalty(
          { due, unpaidTax: netTax, payments: [], through: filedOn },
          rulebook.failureToPay
        );
        const found = failureToFilePenalty(
          { due, regular: due, filedOn, unpaidTax: netTax, failureToPay },
          rulebook
        );
        expect(found.amount.plus(failureToPay.amount).equals(found.gross)).toBe(true);
      }),
      RUNS
    );
  });
});
