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

/** A year's estimates in whole cents, days as numbers. */
export interface Estimates {
  readonly taxYear: number;
  readonly required: number;
  readonly withheld: number;
  readonly payments: readonly { readonly day: number; readonly cents: number }[];
  /** The day on which is paid what neither withholding nor the payments bring. */
  readonly restOn: number | undefined;
}

/** Martin Luther King Jr. Day and Emancipation Day: no other holiday falls on or beside the 15th of these months. */
function isHoliday(day: number): boolean {
  if (monthOf(day) === 1) {
    return weekdayOf(day) === 1 && dateOf(day) >= 15 && dateOf(day) <= 21;
  }
  const emancipation = dayOf(`${String(yearOf(day))}-04-16`);
  const kept = { 0: 1, 6: -1 }[weekdayOf(emancipation)] ?? 0;
  return day === emancipation + kept;
}

/** Section 7503; the day more of 2018 and Notice 2020-23. */
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
 * What each installment costs in cents, not rounded: every day's open balance by the day's rate.
 *
 * What is open of the n-th installment is what n installments are more than all that came in so far, between nothing and the whole of
 * it: payments go to the earliest (section 6654(b)(3)).
 */
export function openEachDay({
  taxYear,
  required,
  withheld,
  payments,
  restOn,
}: Estimates): readonly number[] {
  const [year, next] = [String(taxYear), String(taxYear + 1)];
  const dues = [`${year}-04-15`, `${year}-06-15`, `${year}-09-15`, `${next}-01-15`].map(timely);
  const end = dayOf(`${next}-04-15`);
  const quarter = required / 4;
  const all = payments.reduce((sum, one) => sum + one.cents, withheld);
  const rest = { day: restOn ?? Infinity, cents: Math.max(0, required - all) };
  const inBy = (day: number): number => {
    const estimates = [...payments, rest].reduce(
      (sum, one) => (one.day <= day ? sum + one.cents : sum),
      0
    );
    return estimates + dues.filter(({ counted }) => counted <= day).length * (withheld / 4);
  };
  return dues.map(({ counted, last }, index) => {
    let cost = 0;
    for (let day = counted + 1; day <= end; day++) {
      const before = day <= last ? last : day - 1;
      const open = Math.min(quarter, Math.max(0, quarter * (index + 1) - inBy(before)));
      // section 6621(b)(2)(B): the first quarter's rate through April 15
      const rate = rateOn(day > end - 15 ? end - 15 : day);
      cost += (open * rate) / daysInYear(yearOf(day));
    }
    return cost;
  });
}
