/**
 * Compares dates and interest with ordinary worksheet formulas, as a preparer would write them, calculated by a third-party spreadsheet
 * engine ("@cj-tech-master/excelts"): WORKDAY with a list of holidays, EDATE, EOMONTH, FV and a power. The list is the federal
 * one of "@18f/us-federal-holidays" and Emancipation Day by a formula. The engine was right in every case tried.
 */
import { allForYear } from "@18f/us-federal-holidays";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { monthEnd } from "../../src/calendar/monthOfDelinquency";
import { clientDates } from "../../src/calculation/dueDate/clientDates";
import type { DueDate } from "../../src/calculation/dueDate/dueDate";
import { installmentDueDate } from "../../src/calculation/dueDate/installmentDueDate";
import type { InstallmentNumber } from "../../src/calculation/dueDate/installmentNumbers";
import { underpaymentInterest } from "../../src/calculation/penalty/underpaymentInterest";
import { calendarTaxYear } from "../../src/calculation/taxYear";
import { rulebook } from "../../src/rules/rulebook";
import { day, state, usd } from "../calculation/given";
import { runLength } from "../soak/runLength";
import { dayNumber, written } from "./civilDays";
import { percentOn } from "./quarterlyRates";
import { answers, serialOf } from "./sheet";

const YEARS = Array.from({ length: 18 }, (_, index) => 2010 + index);

const federal = [...YEARS, 2028].flatMap((year) =>
  allForYear(year).map((holiday) => serialOf(holiday.dateString))
);
const emancipationDays = [...YEARS, 2028].map((year) => {
  const april16 = `DATE(${String(year)},4,16)`;
  return `${april16}+CHOOSE(WEEKDAY(${april16}),1,0,0,0,0,0,-1)`;
});
/** The third Monday of April: the first Monday of the month plus two weeks. */
const patriotsDays = YEARS.filter((year) => year >= 2016).map((year) => {
  const april1 = `DATE(${String(year)},4,1)`;
  return `${april1}+MOD(9-WEEKDAY(${april1}),7)+14`;
});
const district = [...federal, ...emancipationDays];
const range = (column: string, cells: readonly unknown[]): string =>
  `${column}1:${column}${String(cells.length)}`;
const inDistrict = range("H", district);
const inNewEngland = range("I", [...district, ...patriotsDays]);

const workday = (formula: string, holidays = inDistrict): string =>
  `WORKDAY(${formula}-1,1,${holidays})`;
const inSheet = (formulas: readonly string[]): readonly number[] =>
  answers(formulas, [district, [...district, ...patriotsDays]]);
/** Before a notice moved the date for everyone, which the formulas do not include. */
const beforePostponement = ({ lastDay, moves }: DueDate): number =>
  moves.find((move) => move.because === "nationwide postponement")?.from ?? lastDay;

const april15 = (year: number): string => `DATE(${String(year)},4,15)`;

describe("due dates of 2010 to 2027 by WORKDAY and EDATE", () => {
  const dates = YEARS.map((year) =>
    clientDates(calendarTaxYear(year - 1), "out of country", {}, rulebook)
  );

  it("are the same in April, June and October", () => {
    const formulas = YEARS.flatMap((year) => [
      workday(april15(year)),
      workday(`EDATE(${april15(year)},2)`),
      workday(`EDATE(${april15(year)},6)`),
    ]);
    expect(inSheet(formulas)).toEqual(
      dates.flatMap(({ payment, regular, extended }) =>
        [payment, regular, extended].map(beforePostponement)
      )
    );
  });

  it("are the same for a resident of Massachusetts, with Patriots' Day from 2016", () => {
    const where = { state: state("MA") };
    const found = YEARS.map((year) =>
      beforePostponement(
        clientDates(calendarTaxYear(year - 1), "resident", where, rulebook).regular
      )
    );
    expect(inSheet(YEARS.map((year) => workday(april15(year), inNewEngland)))).toEqual(found);
  });

  it("are the same for the four installments", () => {
    const months: readonly (readonly [InstallmentNumber, number])[] = [
      [1, 4],
      [2, 6],
      [3, 9],
      [4, 13],
    ];
    const cases = YEARS.flatMap((year) =>
      months.map(([number, month]) => ({ year, number, month }))
    );
    const found = cases.map(({ year, number }) =>
      beforePostponement(
        installmentDueDate(calendarTaxYear(year), "resident", number, undefined, rulebook)
      )
    );
    expect(
      inSheet(cases.map(({ year, month }) => workday(`DATE(${String(year)},${String(month)},15)`)))
    ).toEqual(found);
  });
});

describe("months of delinquency by EDATE and EOMONTH", () => {
  it("end on the same date, from a day of a month and from its last day", () => {
    const counts = Array.from({ length: 30 }, (_, index) => index + 1);
    const cases = counts.flatMap((count) => [
      ["2025-04-15", `EDATE(DATE(2025,4,15),${String(count)})`, count] as const,
      ["2024-01-30", `EDATE(DATE(2024,1,30),${String(count)})`, count] as const,
      ["2024-02-29", `EOMONTH(DATE(2024,2,29),${String(count)})`, count] as const,
      ["2025-02-28", `EOMONTH(DATE(2025,2,28),${String(count)})`, count] as const,
    ]);
    expect(inSheet(cases.map(([, formula]) => formula))).toEqual(
      cases.map(([due, , count]) => monthEnd(day(due), count))
    );
  });
});

describe("interest by FV and by a power", () => {
  /** Spans within one quarter of 2009 to 2026. */
  const spans = fc
    .record({
      year: fc.integer({ min: 2009, max: 2026 }),
      quarter: fc.integer({ min: 0, max: 3 }),
      from: fc.integer({ min: 0, max: 88 }),
      days: fc.integer({ min: 1, max: 91 }),
      cents: fc.integer({ min: 1, max: 50_000_000 }),
    })
    .map(({ year, quarter, from, days, cents }) => {
      const begins = dayNumber(year, 3 * quarter + 1, 1) - 1;
      const ends =
        dayNumber(quarter === 3 ? year + 1 : year, quarter === 3 ? 1 : 3 * quarter + 4, 1) - 1;
      const due = begins + (from % (ends - begins));
      return { due, through: Math.min(due + days, ends), dollars: cents / 100 };
    });
  const cases = fc.sample(spans, { numRuns: runLength(200, 2_000), seed: 4868 });

  it("is the same to the cent at one rate, with the days of the year from February 29", () => {
    const rows = cases.map(({ due, through, dollars }) => {
      const [from, to] = [due, through].map((number) => String(serialOf(written(number))));
      const days = `(${String(to)}-${String(from)})`;
      const year = `YEAR(${String(to)})`;
      const divisor = `IF(MONTH(DATE(${year},2,29))=2,366,365)`;
      const daily = `${String(percentOn(through))}%/${divisor}`;
      const amount = String(dollars);
      return [
        `ROUND(FV(${daily},${days},0,-${amount})-${amount},2)`,
        `ROUND(${amount}*(1+${daily})^${days}-${amount},2)`,
      ];
    });
    const found = cases.flatMap(({ due, through, dollars }) => {
      const { amount } = underpaymentInterest(
        usd(dollars),
        day(written(due)),
        [],
        day(written(through)),
        { table: rulebook.underpaymentRate }
      );
      const cents = Number(amount.toFixed(2));
      return [cents, cents];
    });
    expect(found.some((cents) => cents > 100)).toBe(true);
    expect(inSheet(rows.flat())).toEqual(found);
  });
});
