import { civil, dayNumber } from "./civilDays";
import { dayByDayInterest, type Payment } from "./dayByDayInterest";
import { statuteDates, type ActDate, type Who } from "./statuteDates";

/**
 * Both additions of section 6651 and the interest beside them, as the words go, one month after another, in whole numbers: cents
 * times 10,000, so that half a percent and a quarter of one stay whole.
 */
export interface LateReturn {
  readonly taxYear: number;
  readonly who: Who;
  readonly state: string;
  readonly taxCents: number;
  readonly paidOnTimeCents: number;
  readonly payments: readonly Payment[];
  readonly filed: number;
  readonly extended: boolean;
  readonly through: number;
}

/** The parts in cents. */
export interface Parts {
  readonly failureToFile: number;
  readonly failureToPay: number;
  readonly interestOnTax: number;
  readonly interestOnAddition: number;
}

const FINE = 10_000n;
const HALF_PERCENT = 50n;
const FIVE_PERCENT = 500n;
const MOST_SHARE = 2_500n;

/** Least addition in dollars, by the year in which the return is due; section 6651(a) and the procedures that index it. */
const LEAST: Readonly<Record<number, number>> = {
  ...{ 2016: 205, 2017: 205, 2018: 210, 2019: 210, 2020: 435, 2021: 435 },
  ...{ 2022: 435, 2023: 450, 2024: 485, 2025: 510, 2026: 525 },
};

const rounded = (fine: bigint): number => Number((fine + FINE / 2n) / FINE);

/** The last day of the count-th month after a 15th or 17th: the same number (26 CFR 301.6651-1(b)). */
function endOfMonth(named: number, count: number): number {
  const { year, month, date } = civil(named);
  const months = year * 12 + month - 1 + count;
  return dayNumber(Math.floor(months / 12), (months % 12) + 1, date);
}

const paidThrough = (day: number, { paidOnTimeCents, payments }: LateReturn): number =>
  payments.reduce((sum, paid) => (paid.day <= day ? sum + paid.cents : sum), paidOnTimeCents);
const unpaidAfter = (day: number, given: LateReturn): number =>
  Math.max(0, given.taxCents - paidThrough(day, given));

/** Section 6651(a)(2), (b)(2): each month's addition, by the month's first day. A payment on that day is not counted for it. */
function failureToPayMonths(
  given: LateReturn,
  due: ActDate
): readonly (readonly [number, bigint])[] {
  const months: (readonly [number, bigint])[] = [];
  let share = 0n;
  for (let month = 1; ; month++) {
    const begins = endOfMonth(due.named, month - 1) + 1;
    const before = month === 1 ? due.last : begins - 1;
    const unpaid = unpaidAfter(before, given);
    if (begins > given.through || given.through <= due.last) break;
    if (unpaid === 0 || share === MOST_SHARE) break;
    share += HALF_PERCENT;
    months.push([begins, BigInt(unpaid) * HALF_PERCENT]);
  }
  return months;
}

/** Section 6651(a)(1), (b)(1), (c)(1). */
function failureToFile(
  given: LateReturn,
  due: ActDate,
  withoutExtension: ActDate,
  paying: readonly (readonly [number, bigint])[]
): bigint {
  const net = BigInt(unpaidAfter(withoutExtension.last, given));
  if (given.filed <= due.last || net === 0n) return 0n;
  let addition = 0n;
  for (let month = 1; month <= 5; month++) {
    const begins = endOfMonth(due.named, month - 1) + 1;
    if (begins > given.filed) break;
    // the failure-to-pay month that runs on that day: the project's reading where a postponement sets the two apart
    const beside = paying.filter(([first]) => first <= begins).at(-1);
    const sameMonth = beside !== undefined && begins < endOfMonth(beside[0] - 1, 1) + 1;
    addition += net * FIVE_PERCENT - (sameMonth ? beside[1] : 0n);
  }
  if (given.filed - due.named <= 60) return addition;
  const least = BigInt(LEAST[given.taxYear + 1] ?? Number.NaN) * 100n;
  const floor = (net < least ? net : least) * FINE;
  return addition > floor ? addition : floor;
}

/** 26 CFR 301.6651-1(c)(3), a late return losing it. */
function causeIsPresumed(given: LateReturn, due: ActDate, extended: ActDate): boolean {
  const late = unpaidAfter(due.last, given);
  return (
    given.extended &&
    given.filed <= extended.last &&
    unpaidAfter(given.filed, given) === 0 &&
    late * 10 <= given.taxCents
  );
}

/** What the return costs. */
export function monthByMonth(given: LateReturn): Parts {
  const { filing, paying, extended } = statuteDates(given.taxYear, given.who, given.state);
  const due = given.extended ? extended : filing;
  const months = causeIsPresumed(given, filing, extended) ? [] : failureToPayMonths(given, filing);
  const addition = rounded(failureToFile(given, due, filing, months));
  const later = given.payments.filter((payment) => payment.day > paying.last);
  const { through } = given;
  return {
    failureToFile: addition,
    failureToPay: rounded(months.reduce((sum, [, amount]) => sum + amount, 0n)),
    interestOnTax:
      through <= paying.last
        ? 0
        : dayByDayInterest(unpaidAfter(paying.last, given), paying.named, later, through),
    interestOnAddition: dayByDayInterest(addition, due.named, [], through),
  };
}
