import {
  dateOf,
  dayOf,
  daysInYear,
  monthOf,
  rateOn,
  weekdayOf,
  yearOf,
  type Due,
} from "./accountDays";

/** The estimated tax payments of a year. Amounts are whole cents, dates are numbers. */
export interface Estimates {
  readonly taxYear: number;
  readonly required: number;
  readonly withheld: number;
  readonly payments: readonly { readonly day: number; readonly cents: number }[];
  /** The date on which the balance is paid after withholding and payments. */
  readonly restOn: number | undefined;
}

/** Martin Luther King Jr. Day and Emancipation Day: no other holiday falls on or next to the 15th of these months. */
function isHoliday(day: number): boolean {
  if (monthOf(day) === 1) {
    return weekdayOf(day) === 1 && dateOf(day) >= 15 && dateOf(day) <= 21;
  }
  const emancipation = dayOf(`${String(yearOf(day))}-04-16`);
  const kept = { 0: 1, 6: -1 }[weekdayOf(emancipation)] ?? 0;
  return day === emancipation + kept;
}

/** Section 7503, the additional day in 2018, and Notice 2020-23. */
function timely(named: string): Due {
  if (named === "2018-04-15") return { counted: dayOf(named), last: dayOf("2018-04-18") };
  if (named === "2020-04-15" || named === "2020-06-15") {
    return { counted: dayOf("2020-07-15"), last: dayOf("2020-07-15") };
  }
  let last = dayOf(named);
  while (weekdayOf(last) === 0 || weekdayOf(last) === 6 || isHoliday(last)) last++;
  return { counted: dayOf(named), last };
}

/**
 * The penalty on each installment in cents, not rounded: the unpaid amount of each day times the rate of the day.
 *
 * The unpaid amount of an installment is the total of the installments so far less everything paid so far, at least zero and at most
 * the installment, because payments go to the earliest installment (section 6654(b)(3)).
 */
export function openEachDay({
  taxYear,
  required,
  withheld,
  payments,
  restOn,
}: Estimates): readonly number[] {
  const [year, next] = [String(taxYear), String(taxYear + 1)];
  const fifteenths = [`${year}-04-15`, `${year}-06-15`, `${year}-09-15`, `${next}-01-15`];
  const dues = fifteenths.map(timely);
  const end = dayOf(`${next}-04-15`);
  const quarter = required / 4;
  const all = payments.reduce((sum, one) => sum + one.cents, withheld);
  const rest = { day: restOn ?? Infinity, cents: Math.max(0, required - all) };
  const inBy = (day: number): number => {
    const estimates = [...payments, rest].reduce(
      (sum, one) => (one.day <= day ? sum + one.cents : sum),
      0
    );
    // Section 6654(g)(1): withholding counts on the due dates, and the postponement of 2020 moved none (26 CFR 301.7508A-1(b)(4)).
    return estimates + fifteenths.filter((due) => dayOf(due) <= day).length * (withheld / 4);
  };
  return dues.map(({ counted, last }, index) => {
    let cost = 0;
    for (let day = counted + 1; day <= end; day++) {
      const before = day <= last ? last : day - 1;
      const open = Math.min(quarter, Math.max(0, quarter * (index + 1) - inBy(before)));
      // Section 6621(b)(2)(B): the rate of the first quarter through April 15.
      const rate = rateOn(day > end - 15 ? end - 15 : day);
      cost += (open * rate) / daysInYear(yearOf(day));
    }
    return cost;
  });
}
