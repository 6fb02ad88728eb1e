import fc from "fast-check";
import { calendarDate, compareDates, laterDate } from "../../../src/calendar/calendarDate";
import { clientDates } from "../../../src/calculation/dueDate/clientDates";
import type { Circumstances } from "../../../src/calculation/dueDate/dueDate";
import type { FilerType } from "../../../src/calculation/filerType";
import type { Payment } from "../../../src/calculation/penalty/underpaymentInterest";
import type { AssumedRate } from "../../../src/calculation/penalty/underpaymentRate";
import { charges, type Charges, type ChargesInput } from "../../../src/calculation/penalty/charges";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { rulebook } from "../../../src/rules/rulebook";
import { daysFrom, dollarsUpTo, filers, states } from "../arbitrary";
import { day, usd } from "../given";

/** A return as a test describes it; what is left out is the ordinary case. */
export interface GivenReturn {
  readonly taxYear: number;
  readonly totalTax: string;
  readonly paidOnTime: string;
  readonly payments?: readonly Payment[];
  readonly filedOn: string;
  readonly validExtension?: boolean;
  readonly through?: string;
  readonly filerType?: FilerType;
  readonly circumstances?: Circumstances;
  readonly agreementOn?: string;
  readonly assumedRate?: AssumedRate;
}

/** The calculation's input for a described return; calculated through the last of filing and payments where no day is given. */
export function chargesInput(given: GivenReturn): ChargesInput {
  const {
    taxYear,
    payments = [],
    validExtension = false,
    filerType = "resident",
    circumstances = {},
  } = given;
  const filedOn = day(given.filedOn);
  const days = [filedOn, ...payments.map((payment) => payment.date)];
  const through = given.through === undefined ? days.reduce(laterDate) : day(given.through);
  return {
    dates: clientDates(calendarTaxYear(taxYear), filerType, circumstances, rulebook),
    totalTax: usd(given.totalTax),
    paidOnTime: usd(given.paidOnTime),
    payments,
    filedOn,
    validExtension,
    through,
    agreementOn: given.agreementOn === undefined ? undefined : day(given.agreementOn),
    assumedRate: given.assumedRate,
  };
}

/** The charges of a described return. */
export function chargesOf(given: GivenReturn): Charges {
  return charges(chargesInput(given), rulebook);
}

/** The four parts in dollars and cents, and their sum. */
export function parts(charged: Charges): Readonly<Record<string, string>> {
  return {
    failureToFile: charged.failureToFile.amount.toFixed(2),
    failureToPay: charged.failureToPay.amount.toFixed(2),
    interestOnTax: charged.interestOnTax.amount.toFixed(2),
    interestOnPenalty: charged.interestOnPenalty.amount.toFixed(2),
    total: charged.total.toFixed(2),
  };
}

const firstDay = "2023-01-01";
const lastDay = "2026-12-31";
const anyDay = daysFrom(firstDay, lastDay);

/** Any return of 2022 to 2024: part payments on any days, filed on any day, by anyone anywhere. */
export const anyReturn: fc.Arbitrary<ChargesInput> = fc
  .record({
    taxYear: fc.integer({ min: 2022, max: 2024 }),
    filerType: filers,
    state: states,
    totalTax: dollarsUpTo(60_000),
    shareOnTime: fc.integer({ min: 0, max: 110 }),
    payments: fc.array(fc.tuple(anyDay, dollarsUpTo(10_000)), { maxLength: 3 }),
    filedOn: anyDay,
    extended: fc.boolean(),
  })
  .map((given) => {
    const payments = given.payments
      .map(([on, amount]) => ({ date: on, amount }))
      .sort((one, other) => compareDates(one.date, other.date));
    return {
      dates: clientDates(
        calendarTaxYear(given.taxYear),
        given.filerType,
        { state: given.state },
        rulebook
      ),
      totalTax: given.totalTax,
      paidOnTime: given.totalTax.times(given.shareOnTime).div(100).toDecimalPlaces(2),
      payments,
      filedOn: given.filedOn,
      validExtension: given.extended,
      through: calendarDate(lastDay),
    };
  });
