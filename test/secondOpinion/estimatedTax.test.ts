import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { calendarDate } from "../../src/calendar/calendarDate";
import { estimatedTaxAddition } from "../../src/calculation/estimatedTax/estimatedTaxAddition";
import { calendarTaxYear } from "../../src/calculation/taxYear";
import { Decimal } from "../../src/money/dollars";
import { rulebook } from "../../src/rules/rulebook";
import {
  dateOf,
  dayOf,
  daysInYear,
  monthOf,
  rateOn,
  weekdayOf,
  written,
  yearOf,
  type Due,
} from "./accountDays";

/** A year's estimates in whole cents, days as numbers. */
interface Estimates {
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
function dayByDay({ taxYear, required, withheld, payments, restOn }: Estimates): readonly number[] {
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

const daysIn = fc.integer({ min: 0, max: 480 });
/** From the day before an ordinary due date to three days after it. */
const daysNearDue = fc.constantFrom(
  ...[104, 165, 257, 379].flatMap((days) => [-1, 0, 1, 2, 3].map((more) => days + more))
);

const plans: fc.Arbitrary<Estimates> = fc
  .record({
    taxYear: fc.integer({ min: 2016, max: 2025 }),
    required: fc.integer({ min: 0, max: 8_000_000 }),
    withheld: fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 4_000_000 })),
    payments: fc.array(
      fc.tuple(fc.oneof(daysIn, daysNearDue), fc.integer({ min: 0, max: 2_500_000 })),
      { maxLength: 6 }
    ),
    restOn: fc.option(daysIn, { nil: undefined }),
  })
  .map((plan) => {
    const from = dayOf(`${String(plan.taxYear)}-01-01`);
    return {
      ...plan,
      payments: plan.payments.map(([days, cents]) => ({ day: from + days, cents })),
      restOn: plan.restOn === undefined ? undefined : from + plan.restOn,
    };
  });

/** Lines in cents and their count, installment by installment. */
function byLines(plan: Estimates): readonly { readonly cents: number; readonly lines: number }[] {
  const day = (number: number): ReturnType<typeof calendarDate> => calendarDate(written(number));
  const usd = (cents: number): Decimal => new Decimal(cents).div(100);
  const { lines } = estimatedTaxAddition(
    {
      taxYear: calendarTaxYear(plan.taxYear),
      requiredAnnualPayment: usd(plan.required),
      withholding: usd(plan.withheld),
      payments: plan.payments.map((one) => ({ day: day(one.day), amount: usd(one.cents) })),
      paidOn: plan.restOn === undefined ? undefined : day(plan.restOn),
    },
    rulebook
  );
  return [1, 2, 3, 4].map((number) => {
    const own = lines.filter(({ installment }) => installment === number);
    const sum = own.reduce((total, { addition }) => total.plus(addition), new Decimal(0));
    return { cents: sum.times(100).toNumber(), lines: own.length };
  });
}

const SAME = { numRuns: 300, seed: 6654, endOnFailure: true };

/** As it mostly goes: the rest comes last, with the request or the return. */
const restLast = plans.map((plan) => {
  const last = Math.max(
    dayOf(`${String(plan.taxYear + 1)}-01-16`),
    ...plan.payments.map(({ day }) => day)
  );
  return { ...plan, restOn: plan.restOn === undefined ? undefined : Math.max(plan.restOn, last) };
});

function expectSame(plan: Estimates): void {
  const opinion = dayByDay(plan);
  byLines(plan).forEach(({ cents, lines }, index) => {
    // each line rounds by half a cent at most
    expect(Math.abs(cents - (opinion[index] ?? NaN))).toBeLessThanOrEqual(lines / 2 + 1e-6);
  });
}

describe("the addition on underpaid estimates against each day's open balance", () => {
  it("is the same for each installment where the rest is paid last", () => {
    fc.assert(fc.property(restLast, expectSame), SAME);
  });

  it("is the same for each installment where withholding or payments come after the rest", () => {
    fc.assert(fc.property(plans, expectSame), SAME);
  });

  it("is asked about years that cost something and years that cost nothing", () => {
    const asked = fc
      .sample(restLast, SAME)
      .map((plan) => dayByDay(plan).reduce((sum, one) => sum + one, 0));
    expect(asked.filter((cents) => cents > 100).length).toBeGreaterThan(150);
    expect(asked.filter((cents) => cents === 0).length).toBeGreaterThan(10);
  });
});
