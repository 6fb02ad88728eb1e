/** Compares the independent calculations themselves with published answers (test/fixtures/published). */
import { describe, expect, it } from "vitest";
import dueDates from "../fixtures/published/due-dates.json";
import estimates from "../fixtures/published/estimated-tax.json";
import additions from "../fixtures/published/failure-to-file-and-pay.json";
import minimums from "../fixtures/published/failure-to-file-minimum.json";
import installments from "../fixtures/published/installments.json";
import interest from "../fixtures/published/interest-factors.json";
import months from "../fixtures/published/months-of-delinquency.json";
import postponement from "../fixtures/published/disaster-relief.json";
import required from "../fixtures/published/required-annual-payment.json";
import shortMethod from "../fixtures/published/short-method-factors.json";
import rates from "../fixtures/published/underpayment-rates.json";
import { dayNumber, dayWritten, written } from "./civilDays";
import { dayByDayInterest } from "./dayByDayInterest";
import { estimateByDay, requiredInCents, type Estimates } from "./estimateByDay";
import {
  endOfMonth,
  failureToFile,
  failureToPayMonths,
  leastOf,
  type LateReturn,
} from "./monthByMonth";
import { percentOn } from "./quarterlyRates";
import {
  calendarYearEnd,
  installmentDates,
  statuteDates,
  type ActDate,
  type Who,
} from "./statuteDates";

const cents = (dollars: string): number => Math.round(Number(dollars) * 100);
/** Dollars and cents from cents times 10,000. */
const money = (fine: bigint): string => (Number(fine) / 1_000_000).toFixed(2);
const dueOn = (text: string): ActDate => {
  const day = dayWritten(text);
  return { fifteenth: day, named: day, last: day };
};

function lateReturn(unpaid: string, filed: string, paid: string | undefined): LateReturn {
  const payments = paid === undefined ? [] : [{ day: dayWritten(paid), cents: cents(unpaid) }];
  const through = Math.max(dayWritten(filed), dayWritten(paid ?? filed));
  return {
    yearEnd: calendarYearEnd(1969),
    who: "resident",
    state: "",
    extended: false,
    taxCents: cents(unpaid),
    paidOnTimeCents: 0,
    payments,
    filed: dayWritten(filed),
    through,
  };
}

describe("dates by the statute against published dates", () => {
  it.each(dueDates.cases)("$case", ({ inputs: { taxYear, date }, expected, postponed }) => {
    const who: Who = date === "out of country" ? "out of country" : "resident";
    const state = date === "Maine and Massachusetts" ? "ME" : "";
    const { filing, extended } = statuteDates({ yearEnd: calendarYearEnd(taxYear), who, state });
    const act = date === "extended" ? extended : filing;
    expect(written(act.last)).toBe(postponed?.to ?? expected);
  });

  it.each(installments.cases)("$case", ({ inputs: { taxYear, number }, expected }) => {
    const act = installmentDates(calendarYearEnd(taxYear))[number - 1];
    expect(written(act?.last ?? 0)).toBe(expected);
  });

  it.each(postponement.cases)("disaster postponement: $case", ({ inputs, expected }) => {
    const period = {
      begins: dayWritten(inputs.begins),
      until: dayWritten(inputs.postponementEnds),
    };
    const who = inputs.filerType as Who;
    const dates = statuteDates({
      yearEnd: calendarYearEnd(inputs.taxYear),
      who,
      state: "",
      postponement: period,
    });
    expect({
      regular: written(dates.filing.last),
      payment: written(dates.paidWithRequest.last),
      extended: written(dates.extended.last),
    }).toEqual(expected);
  });

  it.each(months.monthEnds)("months: $case", ({ inputs, expected }) => {
    const due = dayWritten(inputs.due);
    expect(expected.map((_, index) => written(endOfMonth(due, index + 1)))).toEqual(expected);
  });
});

describe("penalties month by month against published amounts", () => {
  it.each(additions.failureToPay)("failure to pay: $case", ({ inputs, expected }) => {
    const { due, unpaid, paidOn } = inputs;
    const charged = failureToPayMonths(lateReturn(unpaid, paidOn, paidOn), dueOn(due), true);
    expect(charged).toHaveLength(expected.months);
    expect(money(charged.reduce((sum, { amount }) => sum + amount, 0n))).toBe(expected.addition);
  });

  it.each(additions.failureToFile)("failure to file: $case", ({ inputs, expected }) => {
    const { due, filedOn, netTax, failureToPay } = inputs;
    const paidWithRequest = failureToPay
      ? failureToPayMonths(
          lateReturn(failureToPay.unpaid, failureToPay.paidOn, failureToPay.paidOn),
          dueOn(due),
          false
        )
      : [];
    const given = lateReturn(netTax, filedOn, undefined);
    // The minimum penalty is later than these facts and is tested below.
    const found = failureToFile(given, dueOn(due), dueOn(due), paidWithRequest);
    expect({
      months: found.months,
      gross: money(found.gross),
      reduction: money(found.reduction),
      addition: money(found.gross - found.reduction),
    }).toEqual(expected);
  });

  it.each(additions.both)("both: $case", ({ inputs: { due, tax, filedOn, paidOn }, expected }) => {
    const given = lateReturn(tax, filedOn, paidOn);
    const paidWithRequest = failureToPayMonths(given, dueOn(due), false);
    const found = failureToFile(given, dueOn(due), dueOn(due), paidWithRequest);
    const paid = paidWithRequest.reduce((sum, { amount }) => sum + amount, 0n);
    expect(money(found.gross - found.reduction + paid)).toBe(expected);
  });

  it.each(minimums.amounts)("minimum: $case", ({ inputs: { dueYear }, expected }) => {
    expect(String(leastOf(dueYear))).toBe(expected);
  });

  it.each(minimums.examples)("minimum: $case", ({ inputs: { dueYear, netTax }, expected }) => {
    const due = dueOn(`${String(dueYear)}-04-15`);
    const given = lateReturn(netTax, `${String(dueYear)}-06-15`, undefined);
    expect(failureToFile(given, due, due, []).least).toBe(cents(expected));
  });
});

describe("interest day by day against published amounts", () => {
  it("has the rates of the cumulative table", () => {
    expect(rates.values.length).toBeGreaterThan(100);
    expect(rates.values.map(({ from }) => percentOn(dayWritten(from)))).toEqual(
      rates.values.map(({ rate }) => Math.round(rate * 100))
    );
  });

  it.each(interest.factors)("$case", ({ inputs: { rate, divisor, days }, expected }) => {
    // Dates in 2027 have no published rate, so that any rate can be assumed.
    const due = dayNumber(2026, 12, 31);
    expect(divisor).toBe(365);
    const billion = 100_000_000_000;
    const found = dayByDayInterest(billion, due, [], due + days, Math.round(Number(rate) * 10_000));
    // Nine decimals are printed, truncated in one table and rounded in the other.
    expect(Math.abs(found / billion - Number(expected))).toBeLessThan(1e-9);
  });

  it.each(interest.worksheet)("$case", ({ inputs: { base, from, to }, expected }) => {
    const found = dayByDayInterest(cents(base), dayWritten(from), [], dayWritten(to));
    expect(found).toBe(cents(expected.interest));
  });
});

function estimatesOf(taxYear: number, requiredCents: number, more: Partial<Estimates>): Estimates {
  return {
    yearEnd: calendarYearEnd(taxYear),
    required: requiredCents,
    withheld: 0,
    payments: [],
    restOn: undefined,
    tax: undefined,
    farmerOrFisherman: false,
    ...more,
  };
}

describe("estimated tax day by day against published amounts", () => {
  it.each(estimates.regularMethod)("Form 2210, regular method: $case", ({ inputs, expected }) => {
    const payments = inputs.payments.map(({ day, amount }) => ({
      day: dayWritten(day),
      cents: cents(amount),
    }));
    const withheld = cents(inputs.withholding);
    const lines = estimateByDay(
      estimatesOf(inputs.taxYear, cents(inputs.requiredAnnualPayment), { withheld, payments })
    );
    expect(
      lines.map((line) => ({
        installment: line.installment,
        amount: String(line.amount / 1200),
        days: line.to - line.from,
        rate: String(line.points / 10_000),
        addition: (line.cents / 100).toFixed(2),
      }))
    ).toEqual(expected.lines);
    const total = lines.reduce((sum, line) => sum + line.cents, 0);
    expect((total / 100).toFixed(2)).toBe(expected.total);
  });

  it.each(shortMethod.cases)("short-method factor: $case", ({ inputs: { taxYear }, expected }) => {
    const whole = 1_000_000_000_000;
    // The factor of 2020 is printed for its regular dates. With the two dates that Notice 2020-23 moved, it is smaller.
    const lines = estimateByDay(estimatesOf(taxYear, whole, {}));
    const total = lines.reduce((sum, line) => sum + line.cents, 0);
    const factor = (total / whole).toFixed(5);
    expect(factor).toBe(taxYear === 2020 ? "0.01744" : expected);
  });

  it.each(required.cases)("required annual payment: $case", ({ inputs, expected }) => {
    const found = requiredInCents({
      status: "single",
      tax: cents(inputs.currentYearTax),
      priorYearTax: cents(inputs.priorYearTax),
      priorIncome: 0,
      farmerOrFisherman: false,
    });
    expect(found).toBe(cents(expected.requiredAnnualPayment));
  });
});
