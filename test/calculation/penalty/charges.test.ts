import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays } from "../../../src/calendar/calendarDate";
import { charges } from "../../../src/calculation/penalty/charges";
import type { DatedTable } from "../../../src/rules/datedTable";
import { NotInTableError } from "../../../src/rules/notInTableError";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/failure-to-file-and-pay.json";
import { dollarsUpTo, RUNS } from "../arbitrary";
import { day, dueOn, MADE_UP, paid, usd } from "../given";
import { anyReturn, chargesInput, chargesOf, parts } from "./givenReturn";

function sinceLongAgo<Figures>(table: DatedTable<Figures>, figures: Figures): DatedTable<Figures> {
  const from = day("1970-01-01");
  return { ...table, knownFrom: from, entries: [{ from, figures, source: MADE_UP }] };
}

describe("charges as published", () => {
  // No minimum then; interest of 1970 is left out by a rate of nothing, the example gives the penalties alone.
  const of1970 = {
    ...rulebook,
    failureToFileMinimum: sinceLongAgo(rulebook.failureToFileMinimum, { amount: usd(0) }),
    underpaymentRate: sinceLongAgo(rulebook.underpaymentRate, { rate: usd(0) }),
  };

  it.each(published.both)("$case ($source.document)", ({ inputs, expected }) => {
    const due = dueOn(inputs.due);
    const charged = charges(
      {
        dates: { regular: due, payment: due, extended: dueOn("1970-10-15") },
        totalTax: usd(inputs.tax),
        paidOnTime: usd(0),
        payments: [paid(inputs.paidOn, inputs.tax)],
        filedOn: day(inputs.filedOn),
        validExtension: false,
        through: day(inputs.paidOn),
      },
      of1970
    );
    expect(charged.total.toFixed(2)).toBe(expected);
  });
});

describe("charges", () => {
  const late = { taxYear: 2025, totalTax: "20000", paidOnTime: "15000", validExtension: true };

  it("are refused beyond the published rates, and calculated at an assumed one", () => {
    const payments = [paid("2027-02-01", "5000")];
    const given = { ...late, payments, filedOn: "2026-10-15" };
    expect(() => chargesOf(given)).toThrow(NotInTableError);
    const at7 = chargesOf({ ...given, assumedRate: usd("0.07") });
    const latest = chargesOf({ ...given, assumedRate: "latest" });
    expect(parts(at7)).toEqual(parts(latest));
    const at9 = chargesOf({ ...given, assumedRate: usd("0.09") });
    expect(at9.total.greaterThan(at7.total)).toBe(true);
  });

  it("under an agreement charge half only where the return was timely", () => {
    const given = { ...late, through: "2026-12-15", agreementOn: "2026-04-16" };
    const timely = chargesOf({ ...given, filedOn: "2026-10-15" });
    const untimely = chargesOf({ ...given, filedOn: "2026-10-16" });
    // eight months on 5,000 at 0.25% and at 0.5%
    expect(timely.failureToPay.amount.toFixed(2)).toBe("100.00");
    expect(untimely.failureToPay.amount.toFixed(2)).toBe("200.00");
  });

  it("take a payment before the due date as paid on time", () => {
    const given = {
      taxYear: 2025,
      totalTax: "20000",
      filedOn: "2026-06-20",
      through: "2026-07-20",
    };
    const before = chargesOf({
      ...given,
      paidOnTime: "15000",
      payments: [paid("2026-04-15", "3000")],
    });
    const counted = chargesOf({ ...given, paidOnTime: "18000" });
    expect(parts(before)).toEqual(parts(counted));
  });

  it("add up from four parts of zero or more, each rounded once", () => {
    fc.assert(
      fc.property(anyReturn, (given) => {
        const { failureToFile, total, ...other } = parts(charges(given, rulebook));
        const sum = Object.values(other).reduce(
          (whole, part) => whole.plus(part),
          usd(failureToFile ?? "")
        );
        expect(sum.toFixed(2)).toBe(total);
        for (const part of Object.values(other)) expect(usd(part).isNegative()).toBe(false);
      }),
      RUNS
    );
  });

  it("are nothing where all was paid on time, however late the return", () => {
    fc.assert(
      fc.property(anyReturn, dollarsUpTo(1000), (given, over) => {
        const paidOnTime = given.totalTax.plus(over);
        const charged = charges({ ...given, paidOnTime }, rulebook);
        expect(charged.total.toString()).toBe("0");
        expect(charged.excused).toBeUndefined();
      }),
      RUNS
    );
  });

  it("never fall when the return comes later, without an extension", () => {
    fc.assert(
      fc.property(anyReturn, fc.integer({ min: 0, max: 90 }), (given, delay) => {
        const unextended = { ...given, validExtension: false };
        const filedLater = addDays(given.filedOn, delay);
        const sooner = charges(unextended, rulebook).total;
        const later = charges({ ...unextended, filedOn: filedLater }, rulebook).total;
        expect(later.greaterThanOrEqualTo(sooner)).toBe(true);
      }),
      RUNS
    );
  });

  it("are never raised by an extension that was kept", () => {
    fc.assert(
      fc.property(anyReturn, (given) => {
        fc.pre(given.filedOn <= given.dates.extended.lastDay);
        const without = charges({ ...given, validExtension: false }, rulebook).total;
        const extended = charges({ ...given, validExtension: true }, rulebook).total;
        expect(extended.lessThanOrEqualTo(without)).toBe(true);
      }),
      RUNS
    );
  });

  it("never fall as tax goes unpaid for longer, without an extension", () => {
    fc.assert(
      fc.property(anyReturn, fc.integer({ min: 0, max: 200 }), (given, delay) => {
        const unextended = { ...given, validExtension: false };
        const delayed = given.payments.map(({ date: on, amount }) => ({
          date: addDays(on, delay),
          amount,
        }));
        const sooner = charges(unextended, rulebook).total;
        const later = charges({ ...unextended, payments: delayed }, rulebook).total;
        // failure to file falls by what failure to pay rises, but for rounding
        expect(later.minus(sooner).greaterThanOrEqualTo("-0.01")).toBe(true);
      }),
      RUNS
    );
  });

  it("cost interest from April for every filer, with or without an extension", () => {
    for (const filerType of ["resident", "out of country"] as const) {
      const given = { ...late, filerType, through: "2026-12-31", filedOn: "2026-06-15" };
      const [first] = charges(chargesInput(given), rulebook).interestOnTax.periods();
      expect(first?.period.from).toBe(day("2026-04-15"));
    }
  });
});
