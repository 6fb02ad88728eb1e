/**
 * Compares the penalties and interest of a late return with a table of months by section 6651 (monthByMonth.ts), with dates by sections
 * 6072, 6081 and 7503 (statuteDates.ts) and interest day by day, in whole numbers and without code from src.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { written as isoText } from "../../src/calendar/calendarDate";
import { clientDates } from "../../src/calculation/dueDate/clientDates";
import type { DueDate } from "../../src/calculation/dueDate/dueDate";
import { charges } from "../../src/calculation/penalty/charges";
import { calendarTaxYear } from "../../src/calculation/taxYear";
import { rulebook } from "../../src/rules/rulebook";
import { day, state, usd } from "../calculation/given";
import { runLength, tell } from "../soak/runLength";
import { civil, dayNumber, dayWritten, written } from "./civilDays";
import { monthByMonth, type LateReturn, type Parts } from "./monthByMonth";
import { calendarYearEnd, statuteDates, type ActDate, type Who } from "./statuteDates";

const LAST = dayNumber(2026, 12, 31);
const WHO: readonly Who[] = ["resident", "out of country", "nonresident"];
const STATES = ["ME", "MA", "NH", "TX"];

function chargesInCents(given: LateReturn): Parts {
  const where = { state: state(given.state) };
  const charged = charges(
    {
      dates: clientDates(calendarTaxYear(civil(given.yearEnd).year), given.who, where, rulebook),
      totalTax: usd(given.taxCents).div(100),
      paidOnTime: usd(given.paidOnTimeCents).div(100),
      payments: given.payments.map((payment) => ({
        date: day(written(payment.day)),
        amount: usd(payment.cents).div(100),
      })),
      filedOn: day(written(given.filed)),
      validExtension: given.extended,
      through: day(written(given.through)),
    },
    rulebook
  );
  const cents = (amount: typeof charged.total): number => Number(amount.times(100).toFixed(0));
  return {
    failureToFile: cents(charged.failureToFile.amount),
    failureToPay: cents(charged.failureToPay.amount),
    interestOnTax: cents(charged.interestOnTax.amount),
    interestOnAddition: cents(charged.interestOnPenalty.amount),
    interestAfterNotice: 0,
  };
}

/**
 * Returns of 2015 to 2025, late or not. Many payments and dates are near the limits of the law: 90% of the tax, the due dates, and the
 * balance paid with the return.
 */
const anyLateReturn: fc.Arbitrary<LateReturn> = fc
  .record({
    taxYear: fc.integer({ min: 2015, max: 2025 }),
    who: fc.constantFrom(...WHO),
    state: fc.constantFrom(...STATES),
    taxCents: fc.oneof(
      fc.integer({ min: 0, max: 200_000 }),
      fc.integer({ min: 200_000, max: 9_000_000 })
    ),
    paidTenths: fc.constantFrom(0, 5, 8, 9, 9, 9, 10, 11),
    paidMoreCents: fc.constantFrom(-1, 0, 0, 1, 12_345),
    parts: fc.array(
      fc.record({
        after: fc.oneof(fc.integer({ min: -10, max: 260 }), fc.integer({ min: 0, max: 2000 })),
        cents: fc.integer({ min: 1, max: 900_000 }),
      }),
      { maxLength: 3 }
    ),
    filedAfter: fc.oneof(
      fc.integer({ min: -5, max: 8 }),
      fc.integer({ min: 55, max: 70 }),
      fc.integer({ min: 120, max: 190 }),
      fc.integer({ min: 0, max: 900 })
    ),
    restWithReturn: fc.boolean(),
    extended: fc.boolean(),
    longer: fc.constantFrom(0, 0, 40, 1700),
  })
  .map((drawn) => {
    const { taxYear, who, taxCents, restWithReturn } = drawn;
    const april = dayNumber(taxYear + 1, 4, 15);
    const within = (number: number): number => Math.min(april + number, LAST);
    const filed = within(drawn.filedAfter);
    const paidOnTimeCents = Math.max(
      0,
      Math.floor((taxCents * drawn.paidTenths) / 10) + drawn.paidMoreCents
    );
    const parts = drawn.parts
      .map(({ after, cents }) => ({ day: within(after), cents }))
      .filter((part) => !restWithReturn || part.day <= filed);
    const paid = parts.reduce((sum, part) => sum + part.cents, paidOnTimeCents);
    if (restWithReturn && taxCents > paid) parts.push({ day: filed, cents: taxCents - paid });
    const payments = parts.sort((one, other) => one.day - other.day);
    const lastAct = Math.max(filed, ...payments.map((payment) => payment.day));
    return {
      yearEnd: calendarYearEnd(taxYear),
      who,
      state: drawn.state,
      taxCents,
      paidOnTimeCents,
      payments,
      filed,
      extended: drawn.extended,
      through: Math.min(lastAct + drawn.longer, LAST),
    };
  });

describe("dates by the statute", () => {
  const both = (due: DueDate): ActDate => ({
    fifteenth: dayWritten(isoText(due.statutory)),
    named: dayWritten(isoText(due.countedFrom)),
    last: dayWritten(isoText(due.lastDay)),
  });

  it("are the same for every tax year of 2009 to 2027, every filer type and every state", () => {
    for (let year = 2009; year <= 2027; year++) {
      for (const who of WHO) {
        for (const code of STATES) {
          const where = { state: state(code) };
          const found = clientDates(calendarTaxYear(year), who, where, rulebook);
          expect({
            filing: both(found.regular),
            paidWithRequest: both(found.payment),
            extended: both(found.extended),
          }).toEqual(statuteDates({ yearEnd: calendarYearEnd(year), who, state: code }));
        }
      }
    }
  });
});

describe("penalties and interest, month by month", () => {
  const RETURNS = runLength(1_000, 20_000);

  it("are the same to the cent for a thousand returns of 2015 to 2025, part by part", () => {
    const seen = { failureToFile: 0, failureToPay: 0, interestOnTax: 0, nothing: 0 };
    fc.assert(
      fc.property(anyLateReturn, (given) => {
        const expected = monthByMonth(given);
        expect(chargesInCents(given)).toEqual(expected);
        if (expected.failureToFile > 0) seen.failureToFile++;
        if (expected.failureToPay > 0) seen.failureToPay++;
        if (expected.interestOnTax > 0) seen.interestOnTax++;
        else seen.nothing++;
      }),
      { numRuns: RETURNS, seed: 4868 }
    );
    // Each kind of return occurs often enough.
    expect(Math.min(...Object.values(seen))).toBeGreaterThan(RETURNS / 5);
    tell(`penalties and interest, part by part: ${String(RETURNS)} returns the same to the cent`);
  });
});
