import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { calendarDate } from "../../src/calendar/calendarDate";
import { estimatedTaxPenalty } from "../../src/calculation/estimatedTax/estimatedTaxPenalty";
import { calendarTaxYear } from "../../src/calculation/taxYear";
import { Decimal } from "../../src/money/dollars";
import { rulebook } from "../../src/rules/rulebook";
import { runLength, tell } from "../soak/runLength";
import { dayOf, written } from "./accountDays";
import { openEachDay, type Estimates } from "./openEachDay";

const daysIn = fc.integer({ min: 0, max: 480 });
/** From one day before a regular due date to three days after it. */
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

/** Total in cents and number of lines for each installment. */
function byLines(plan: Estimates): readonly { readonly cents: number; readonly lines: number }[] {
  const day = (number: number): ReturnType<typeof calendarDate> => calendarDate(written(number));
  const usd = (cents: number): Decimal => new Decimal(cents).div(100);
  const { lines } = estimatedTaxPenalty(
    {
      taxYear: calendarTaxYear(plan.taxYear),
      requiredAnnualPayment: usd(plan.required),
      withholding: usd(plan.withheld),
      payments: plan.payments.map((one) => ({ date: day(one.day), amount: usd(one.cents) })),
      paidOn: plan.restOn === undefined ? undefined : day(plan.restOn),
    },
    rulebook
  );
  return [1, 2, 3, 4].map((number) => {
    const own = lines.filter(({ installment }) => installment === number);
    const sum = own.reduce((total, { penalty: addition }) => total.plus(addition), new Decimal(0));
    return { cents: sum.times(100).toNumber(), lines: own.length };
  });
}

const PLANS = runLength(300, 20_000);
const SAME = { numRuns: PLANS, seed: 6654, endOnFailure: true };

/** The usual order: the balance is paid last, with the request or the return. */
const restLast = plans.map((plan) => {
  const last = Math.max(
    dayOf(`${String(plan.taxYear + 1)}-01-16`),
    ...plan.payments.map(({ day }) => day)
  );
  return { ...plan, restOn: plan.restOn === undefined ? undefined : Math.max(plan.restOn, last) };
});

function expectSame(plan: Estimates): void {
  const opinion = openEachDay(plan);
  byLines(plan).forEach(({ cents, lines }, index) => {
    // Each line rounds by at most half a cent.
    expect(Math.abs(cents - (opinion[index] ?? NaN))).toBeLessThanOrEqual(lines / 2 + 1e-6);
  });
}

describe("the estimated tax penalty against the unpaid amount of each day", () => {
  it("is the same for each installment when the balance is paid last", () => {
    fc.assert(fc.property(restLast, expectSame), SAME);
  });

  it("is the same for each installment when withholding or payments come after the balance", () => {
    fc.assert(fc.property(plans, expectSame), SAME);
    tell(`estimates, installment by installment: ${String(2 * PLANS)} years the same`);
  });

  it("is tested in years with and without a penalty", () => {
    const asked = fc
      .sample(restLast, SAME)
      .map((plan) => openEachDay(plan).reduce((sum, one) => sum + one, 0));
    expect(asked.filter((cents) => cents > 100).length).toBeGreaterThan(PLANS / 2);
    expect(asked.filter((cents) => cents === 0).length).toBeGreaterThan(PLANS / 30);
  });
});
