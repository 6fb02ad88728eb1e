import { dateOf, daysInYear, MINIMUM, rateOn, RETURN_DATES, yearOf, type Due } from "./accountDays";

/** A return and its payments in whole cents, days as numbers. */
export interface Plan {
  readonly taxYear: number;
  readonly totalTax: number;
  readonly payments: readonly { readonly day: number; readonly cents: number }[];
  readonly filedOn: number;
  readonly extended: boolean;
  readonly filerType: "resident" | "out of country";
}

/** What it ends at, in dollars and cents. */
export interface Account {
  readonly failureToFile: string;
  readonly failureToPay: string;
  readonly interest: string;
  readonly taxLeft: string;
}

/** Half up, from thousandths of a cent. */
const cents = (thousandths: number): number => Math.floor((thousandths + 500) / 1000);
const dollars = (wholeCents: number): string => (wholeCents / 100).toFixed(2);

/**
 * The account, day after day to its last event. Additions are whole thousandths of a cent, so that half a cent is exact; interest is
 * in binary numbers, some billionths of a cent off, which no case of this seed is near enough to a half cent to show.
 */
export function keptDayByDay(plan: Plan): Account {
  const dates = RETURN_DATES[plan.taxYear];
  if (!dates) throw new RangeError("no dates");
  const regular = dates[plan.filerType];
  const filingDue = plan.extended ? dates.extended : regular;
  const paidBy = (day: number): number =>
    plan.payments.reduce((sum, payment) => (payment.day <= day ? sum + payment.cents : sum), 0);
  /** A payment by the last timely day counts as made on the day the law names (section 7503). */
  const open = (act: Due, day: number): number =>
    Math.max(0, plan.totalTax - paidBy(day < act.last ? act.last : day));
  const end = Math.max(
    plan.filedOn,
    dates.payment.last,
    filingDue.last,
    ...plan.payments.map(({ day }) => day)
  );
  const net = open(regular, regular.last);

  // Presumption, 26 CFR 301.6651-1(c)(3): 90% in time, all by the filing, filed within the extension.
  const excused =
    plan.extended &&
    plan.filedOn <= dates.extended.last &&
    (plan.totalTax - net) * 10 >= plan.totalTax * 9 &&
    open(regular, plan.filedOn) === 0 &&
    paidBy(plan.filedOn) >= plan.totalTax;

  // Section 6651(a)(2), (b)(2): 0.5% of what is open as a month begins, once the month has begun unpaid; 25% in all.
  let failureToPay = 0;
  const ofMonthBegun = new Map<number, number>();
  let months = 0;
  let monthOnly = 0;
  for (let day = regular.counted + 1; day <= end; day++) {
    const begins = dateOf(day) === dateOf(regular.counted + 1);
    if (begins) {
      const base = day <= regular.last ? net : open(regular, day - 1);
      const late = end > regular.last;
      monthOnly = !excused && late && months < 50 ? base * 5 : 0;
      if (base > 0) months++;
      failureToPay += monthOnly;
    }
    ofMonthBegun.set(day, monthOnly);
  }

  // Section 6651(a)(1), (b)(1), (c)(1): 5% of the net tax for each month begun before the filing, less failure to pay of that month.
  let failureToFile = 0;
  let begun = 0;
  if (plan.filedOn > filingDue.last && net > 0) {
    for (let day = filingDue.counted + 1; day <= plan.filedOn; day++) {
      if (dateOf(day) !== dateOf(filingDue.counted + 1) || begun === 5) continue;
      begun++;
      // where a postponement sets the months apart: the month of failure to pay in which it begins (no authority)
      failureToFile += net * 50 - (ofMonthBegun.get(day) ?? 0);
    }
    const least = Math.min((MINIMUM[yearOf(regular.counted)] ?? NaN) * 100, net) * 1000;
    if (plan.filedOn - filingDue.counted > 60) failureToFile = Math.max(failureToFile, least);
  }
  const addition = cents(failureToFile);

  // Sections 6601(a), (e)(2)(B), 6622: each day on the tax open the day before and the interest so far, until the tax is paid.
  let onTax = 0;
  let onAddition = 0;
  for (let day = dates.payment.counted + 1; day <= end; day++) {
    const daily = rateOn(day) / daysInYear(yearOf(day));
    const tax = open(dates.payment, day - 1);
    // an account that ends on the last timely day knows of nothing late yet
    if (tax > 0 && end > dates.payment.last) onTax += (tax + onTax) * daily;
    if (day > filingDue.counted) onAddition += (addition + onAddition) * daily;
  }
  return {
    failureToFile: dollars(addition),
    failureToPay: dollars(cents(failureToPay)),
    interest: dollars(Math.round(onTax) + Math.round(onAddition)),
    taxLeft: dollars(Math.max(0, plan.totalTax - paidBy(end))),
  };
}
