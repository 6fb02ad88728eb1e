import { civil, dayNumber, endsMonth, isLeap } from "./civilDays";
import { LEAST, unpaidAfter } from "./monthByMonth";
import { percentOn, RATES_END } from "./quarterlyRates";
import { obstaclesFrom, statuteDates, type Obstacle } from "./statuteDates";
import type { Worked } from "./workedReturn";

/** Whether a calculated return is of a kind. */
export type Reaches = (one: Worked) => boolean;

const yearOf = (day: number): number => civil(day).year;
const isFiscal = ({ given }: Worked): boolean => civil(given.yearEnd).month !== 12;

/** First and last date of the interest on the tax, if there is any. */
function interestSpan({ given, dates }: Worked): readonly [number, number] | undefined {
  if (unpaidAfter(dates.paidWithRequest.last, given) === 0) return undefined;
  const paid = given.payments.find(({ day }) => unpaidAfter(day, given) === 0)?.day;
  const ends = Math.min(paid ?? given.through, given.through);
  return ends > dates.paidWithRequest.last ? [dates.paidWithRequest.named + 1, ends] : undefined;
}

const spans =
  (test: (from: number, to: number) => boolean): Reaches =>
  (one) => {
    const span = interestSpan(one);
    return span !== undefined && test(...span);
  };

function changesRate(from: number, to: number): boolean {
  for (let day = from; day < Math.min(to, RATES_END); day++)
    if (percentOn(day) !== percentOn(day + 1)) return true;
  return false;
}

function hasLeapDay(from: number, to: number): boolean {
  for (let year = yearOf(from); year <= yearOf(to); year++) {
    const day = dayNumber(year, 2, 29);
    if (isLeap(year) && day >= from && day <= to) return true;
  }
  return false;
}

const isMovedBy =
  (obstacle: Obstacle): Reaches =>
  ({ given, due }) =>
    !given.postponement && obstaclesFrom(due.named, given.state).includes(obstacle);

const filedLate = ({ filed }: Worked): boolean => (filed?.months ?? 0) > 0;
const reliefMoves =
  (act: "filing" | "paidWithRequest" | "extended"): Reaches =>
  ({ given, dates }) =>
    given.postponement !== undefined &&
    dates[act].last !== statuteDates({ ...given, postponement: undefined })[act].last;

const postponementEnds =
  (last: number): Reaches =>
  ({ given, dates }) =>
    !given.postponement && dates.filing.last === last;

const minimumOf =
  (amounts: readonly number[]): Reaches =>
  ({ filed }) =>
    filed !== undefined &&
    amounts.some((amount) => filed.least === amount * 100) &&
    filed.gross - filed.reduction < BigInt(filed.least) * 10_000n;

/** Special cases of the law for a return, for every function. */
export const RETURN_CORNERS: Readonly<Record<string, Reaches>> = {
  "no penalties and no interest": ({ parts }) =>
    parts !== undefined && Object.values(parts as object).every((part) => part === 0),
  "no tax": ({ given }) => given.taxCents === 0,
  "a calendar year": (one) => !isFiscal(one),
  "a fiscal year": isFiscal,
  ...Object.fromEntries(
    Array.from({ length: 19 }, (_, index) => 2009 + index).map((year): [string, Reaches] => [
      `a year that ends in ${String(year)}, something charged`,
      ({ given, parts }) =>
        yearOf(given.yearEnd) === year &&
        parts !== undefined &&
        Object.values(parts as object).some((part) => part !== 0),
    ])
  ),
  "living abroad": ({ given }) => given.who === "out of country",
  "out of the country, interest from April and failure to pay from June": ({
    given,
    months,
    parts,
  }) => given.who === "out of country" && months.length > 0 && (parts?.interestOnTax ?? 0) > 0,
  "a nonresident": ({ given }) => given.who === "nonresident",
  "due date moved by a weekend": isMovedBy("weekend"),
  "due date moved by a federal holiday": isMovedBy("federal holiday"),
  "due date moved by Emancipation Day": isMovedBy("Emancipation Day"),
  "due date moved by Patriots' Day": isMovedBy("Patriots' Day"),
  "filed on the date to which the due date moved": ({ given, due }) =>
    due.last !== due.named && given.filed === due.last,
  "filed a day after that date": ({ given, due }) =>
    due.last !== due.named && given.filed === due.last + 1,
  "postponed for everyone in 2018": postponementEnds(dayNumber(2018, 4, 18)),
  "postponed for everyone in 2020": postponementEnds(dayNumber(2020, 7, 15)),
  "postponed for everyone in 2021": postponementEnds(dayNumber(2021, 5, 17)),
  "disaster postponement of the payment": reliefMoves("paidWithRequest"),
  "disaster postponement of the return": reliefMoves("filing"),
  "disaster postponement of the extended return": reliefMoves("extended"),
  "disaster postponement of nothing": (one) =>
    one.given.postponement !== undefined &&
    !(["filing", "paidWithRequest", "extended"] as const).some((act) => reliefMoves(act)(one)),
  "postponement that begins after the 15th, within the weekend": ({ given, dates }) => {
    const plain = statuteDates({ ...given, postponement: undefined }).filing;
    return (
      given.postponement !== undefined &&
      given.postponement.begins > plain.named &&
      given.postponement.begins <= plain.last &&
      dates.filing.last > plain.last
    );
  },
  "postponement that ends on the date to which a weekend moved": ({ given, dates }) => {
    const plain = statuteDates({ ...given, postponement: undefined }).filing;
    return (
      plain.named !== plain.last &&
      given.postponement?.until === plain.last &&
      dates.filing.named === plain.last
    );
  },
  "months of delinquency counted from the last day of a month": (one) =>
    filedLate(one) && endsMonth(one.due.named),
  "months of delinquency counted from a 29th or 30th over a February": (one) =>
    one.months.some(({ ends }) => civil(ends).month === 2 && endsMonth(ends)) &&
    civil(one.dates.filing.named).date >= 29 &&
    !endsMonth(one.dates.filing.named),
  extended: ({ given }) => given.extended,
  "not extended": ({ given }) => !given.extended,
  "filed by the extended due date, with an extension": ({ given, dates }) =>
    given.extended && given.filed > dates.filing.last && given.filed <= dates.extended.last,
  "filed by the extended due date, without an extension": ({ given, dates }) =>
    !given.extended && given.filed > dates.filing.last && given.filed <= dates.extended.last,
  "filed after the extended due date": ({ given, dates }) =>
    given.extended && given.filed > dates.extended.last,
  "failure to file, one month": ({ filed }) => filed?.months === 1,
  "failure to file, two to four months": ({ filed }) =>
    filed !== undefined && filed.months > 1 && filed.months < 5,
  "failure to file at 25%": ({ filed }) => filed?.months === 5,
  "exactly 60 days late": ({ given, due, filed }) =>
    (filed?.months ?? 0) > 0 && given.filed - due.named === 60,
  "exactly 61 days late": ({ given, due, filed }) =>
    (filed?.months ?? 0) > 0 && given.filed - due.named === 61,
  ...Object.fromEntries(
    [...new Set(Object.values(LEAST))].map((amount): [string, Reaches] => [
      `the minimum of $${String(amount)}`,
      minimumOf([amount]),
    ])
  ),
  "the minimum penalty, limited to the net tax": (one) =>
    one.filed !== undefined &&
    one.filed.least > 0 &&
    one.filed.least === unpaidAfter(one.dates.filing.last, one.given) &&
    !Object.values(LEAST).includes(one.filed.least / 100),
  "the minimum penalty, the return postponed into the next year": ({ dates, filed }) =>
    yearOf(dates.filing.named) > yearOf(dates.filing.fifteenth) &&
    filed !== undefined &&
    filed.least > 0 &&
    filed.gross - filed.reduction < BigInt(filed.least) * 10_000n,
  "more than 60 days late, above the minimum penalty": ({ filed }) =>
    filed !== undefined &&
    filed.least > 0 &&
    filed.gross - filed.reduction > BigInt(filed.least) * 10_000n,
  "months of both penalties, one reduced by the other": ({ filed }) =>
    (filed?.reduction ?? 0n) > 0n,
  "failure to file of months without failure to pay": ({ filed }) =>
    (filed?.months ?? 0) > 0 && filed?.reduction === 0n,
  "failure to file of months, some with failure to pay and some without": ({
    filed,
    months,
    given,
  }) =>
    filed !== undefined &&
    filed.reduction > 0n &&
    months.length > 0 &&
    filed.months > 1 &&
    (months.at(-1)?.ends ?? 0) < given.filed &&
    filed.months < 5,
  "failure to pay, one month": ({ months }) => months.length === 1,
  "failure to pay at 25%": ({ months }) =>
    months.reduce((sum, { share }) => sum + share, 0n) === 2_500n,
  "the 0.25% of an installment agreement": ({ months }) =>
    months.some(({ share }) => share === 25n),
  "0.5% first, then 0.25%": ({ months }) =>
    months.some(({ share }) => share === 50n) && months.at(-1)?.share === 25n,
  "an installment agreement without effect because the return is late": ({
    given,
    outcome,
    months,
  }) =>
    !outcome.timely &&
    months.length > 0 &&
    given.agreementOn !== undefined &&
    given.agreementOn < (months.at(-1)?.ends ?? 0),
  "90% test met": ({ outcome, given, dates }) =>
    outcome.presumed && unpaidAfter(dates.filing.last, given) > 0,
  "90% test met with exactly 90%": ({ outcome, given, dates }) =>
    outcome.presumed &&
    given.taxCents > 0 &&
    unpaidAfter(dates.filing.last, given) * 10 === given.taxCents,
  "a cent or less short of 90%": ({ outcome, given, dates }) => {
    const short = unpaidAfter(dates.filing.last, given) * 10 - given.taxCents;
    return !outcome.presumed && given.extended && short > 0 && short <= 20;
  },
  "90% paid, the balance only after filing": ({ outcome, given, dates }) =>
    !outcome.presumed &&
    given.extended &&
    given.filed <= dates.extended.last &&
    unpaidAfter(dates.filing.last, given) * 10 <= given.taxCents &&
    unpaidAfter(given.filed, given) > 0,
  "90% paid, filed after the extended due date": ({ outcome, given, dates }) =>
    !outcome.presumed &&
    given.extended &&
    given.filed > dates.extended.last &&
    given.taxCents > 0 &&
    unpaidAfter(dates.filing.last, given) * 10 <= given.taxCents &&
    unpaidAfter(given.filed, given) === 0,
  "paid on the first day of a month of failure to pay": ({ given, months }) =>
    months.some(({ begins }) => given.payments.some(({ day }) => day === begins)),
  "paid on the last day of a month of failure to pay": ({ given, months }) =>
    months.some(({ ends }) => given.payments.some(({ day }) => day === ends)),
  "interest over February 29": spans(hasLeapDay),
  "interest by 365 and by 366": spans((from, to) => {
    const years = Array.from(
      { length: yearOf(to) - yearOf(from) + 1 },
      (_, more) => yearOf(from) + more
    );
    return years.some(isLeap) && !years.every(isLeap);
  }),
  "interest over a change of rate": spans(changesRate),
  "interest for more than five years": spans((from, to) => to - from > 1825),
  "interest on the failure-to-file penalty": ({ parts }) => (parts?.interestOnAddition ?? 0) > 0,
  "interest at the latest published rate continued": (one) =>
    one.given.assumed === "latest" && spans((_from, to) => to > RATES_END)(one),
  "interest at an assumed rate": (one) =>
    typeof one.given.assumed === "number" && spans((_from, to) => to > RATES_END)(one),
  "#N/A without a rate": (one) => one.parts === undefined && one.filed !== undefined,
  "#N/A without a minimum penalty": ({ filed }) => filed === undefined,
  "a tax above ten million dollars": ({ given, parts }) =>
    given.taxCents > 1_000_000_000 && parts !== undefined && parts.interestOnTax > 0,
};

/** Special cases of a return with the balance paid on one date. */
export const PAID_AT_ONCE_CORNERS: Readonly<Record<string, Reaches>> = {
  ...RETURN_CORNERS,
  "filed before paid": ({ given }) => given.payments.some(({ day }) => day > given.filed),
  "paid before filed": ({ given }) => given.payments.some(({ day }) => day < given.filed),
  "filed and paid on one date": ({ given }) =>
    given.payments.some(({ day }) => day === given.filed),
  "paid on the payment due date": ({ given, dates }) =>
    given.payments.some(({ day }) => day === dates.paidWithRequest.last),
  "paid a day late": ({ given, dates }) =>
    given.payments.some(({ day }) => day === dates.paidWithRequest.last + 1),
  "paid in full on time": ({ given }) => given.paidOnTimeCents === given.taxCents,
  overpaid: ({ given }) => given.paidOnTimeCents > given.taxCents,
};
