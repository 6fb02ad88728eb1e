import { dateOf, daysInYear, MINIMUM, rateOn, RETURN_DATES, yearOf, type Due } from "./accountDays";

/** A return and its payments. Amounts are whole cents, dates are numbers. */
export interface Plan {
  readonly taxYear: number;
  readonly totalTax: number;
  readonly payments: readonly { readonly day: number; readonly cents: number }[];
  readonly filedOn: number;
  readonly extended: boolean;
  readonly filerType: "resident" | "out of country";
}

/** The amounts at the end, in dollars and cents. */
export interface Account {
  readonly failureToFile: string;
  readonly failureToPay: string;
  readonly interest: string;
  readonly taxLeft: string;
}

/** Rounds thousandths of a cent half up. */
const cents = (thousandths: number): number => Math.floor((thousandths + 500) / 1000);
const dollars = (wholeCents: number): string => (wholeCents / 100).toFixed(2);

/**
 * The payment history, day by day to its last event. Penalties are whole thousandths of a cent, so that half a cent is exact.
 * Interest is in binary numbers. Its error of some billionths of a cent changes no rounded amount in the cases of this seed.
 */
export function keptDayByDay(plan: Plan): Account {
  const dates = RETURN_DATES[plan.taxYear];
  if (!dates) throw new RangeError("There are no dates for this year.");
  const regular = dates[plan.filerType];
  const filingDue = plan.extended ? dates.extended : regular;
  const paidBy = (day: number): number =>
    plan.payments.reduce((sum, payment) => (payment.day <= day ? sum + payment.cents : sum), 0);
  /** A payment by the deadline counts as made on the date that the law names (section 7503). */
  const open = (act: Due, day: number): number =>
    Math.max(0, plan.totalTax - paidBy(day < act.last ? act.last : day));
  const end = Math.max(
    plan.filedOn,
    dates.payment.last,
    filingDue.last,
    ...plan.payments.map(({ day }) => day)
  );
  const net = open(regular, regular.last);

  // 90% test, 26 CFR 301.6651-1(c)(3): 90% paid on time, the balance by the filing, filed by the extended due date.
  const excused =
    plan.extended &&
    plan.filedOn <= dates.extended.last &&
    (plan.totalTax - net) * 10 >= plan.totalTax * 9 &&
    open(regular, plan.filedOn) === 0 &&
    paidBy(plan.filedOn) >= plan.totalTax;

  // Section 6651(a)(2), (b)(2): 0.5% of the amount unpaid at the beginning of each month, at most 25%.
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

  // Section 6651(a)(1), (b)(1), (c)(1): 5% of the net tax for each month or part of a month, less the failure-to-pay penalty of it.
  let failureToFile = 0;
  let begun = 0;
  if (plan.filedOn > filingDue.last && net > 0) {
    for (let day = filingDue.counted + 1; day <= plan.filedOn; day++) {
      if (dateOf(day) !== dateOf(filingDue.counted + 1) || begun === 5) continue;
      begun++;
      // Where a postponement separates the months, this takes the failure-to-pay month in which the month begins (no authority).
      failureToFile += net * 50 - (ofMonthBegun.get(day) ?? 0);
    }
    const least = Math.min((MINIMUM[yearOf(regular.counted)] ?? NaN) * 100, net) * 1000;
    if (plan.filedOn - filingDue.counted > 60) failureToFile = Math.max(failureToFile, least);
  }
  const addition = cents(failureToFile);

  // Sections 6601(a), (e)(2)(B), 6622: each day on the unpaid amount of the day before and the interest so far, until it is paid. What
  // is paid beyond the tax pays the failure-to-pay penalty, then the failure-to-file penalty (the project's position).
  let onTax = 0;
  let onAddition = 0;
  for (let day = dates.payment.counted + 1; day <= end; day++) {
    const daily = rateOn(day) / daysInYear(yearOf(day));
    const tax = open(dates.payment, day - 1);
    // A payment history that ends on the deadline has nothing late yet.
    if (tax > 0 && end > dates.payment.last) onTax += (tax + onTax) * daily;
    const beyond = Math.max(0, paidBy(day - 1) - plan.totalTax - cents(failureToPay));
    const penalty = Math.max(0, addition - beyond);
    if (penalty > 0 && day > filingDue.counted) onAddition += (penalty + onAddition) * daily;
  }
  return {
    failureToFile: dollars(addition),
    failureToPay: dollars(cents(failureToPay)),
    interest: dollars(Math.round(onTax) + Math.round(onAddition)),
    taxLeft: dollars(Math.max(0, plan.totalTax - paidBy(end))),
  };
}
