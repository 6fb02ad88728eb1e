import fc from "fast-check";
import { annualizedByForm } from "./annualizedByForm";
import { firstDayOf, requiredInCents, type Estimates, type Harbors } from "./estimateByDay";
import { blocks, yearOfForm, type Block } from "./randomPeriods";
import { assumptions, seldom, yearEnds } from "./randomReturns";
import { earlyReturnDeadline, fifteenthOfFourthMonth, installmentDates } from "./statuteDates";
import { orNothing } from "./workedReturn";

/** The estimated tax payments of a year, and the facts for its required annual payment. */
export interface DrawnEstimates {
  readonly harbors: Harbors;
  readonly given: Estimates;
  /** The periods whose income is annualized, if any. */
  readonly block: Block | undefined;
  /** Whether the periods have no rates: the sheet must show `#N/A`. */
  readonly isWithoutRates: boolean;
}

/** Near one of the due dates or the end, or anywhere in the year and shortly after. */
const moments = fc.record({
  near: fc.integer({ min: 0, max: 4 }),
  days: fc.oneof(
    { weight: 3, arbitrary: fc.integer({ min: -2, max: 5 }) },
    { weight: 2, arbitrary: fc.integer({ min: -100, max: 100 }) }
  ),
});
type Moment = typeof moments extends fc.Arbitrary<infer Value> ? Value : never;

const amounts = fc.oneof(
  { weight: 1, arbitrary: fc.constant(0) },
  { weight: 2, arbitrary: fc.integer({ min: 1, max: 200_000 }) },
  { weight: 6, arbitrary: fc.integer({ min: 200_000, max: 8_000_000 }) },
  { weight: 1, arbitrary: fc.integer({ min: 8_000_000, max: 50_000_000_000 }) }
);
/** In tenths of the installment or of the year, plus some cents. */
const shares = fc.record({
  tenths: fc.constantFrom(0, 3, 5, 9, 10, 10, 10, 12, 25),
  more: fc.constantFrom(-1, 0, 0, 1, 4_321),
});
type Share = typeof shares extends fc.Arbitrary<infer Value> ? Value : never;

const ofAmount = (amount: number, { tenths, more }: Share): number =>
  Math.max(0, Math.floor((amount * tenths) / 10) + more);

/** Without last year's return there is no income on it, and a return has some: a tax of 0 counts only beside an income. */
const harbors = fc
  .record({
    status: fc.constantFrom("single", "joint", "separate", "head", "survivor"),
    tax: amounts,
    priorYearTax: fc.oneof(fc.constant(undefined), amounts, shares),
    priorIncome: fc.oneof(
      fc.constantFrom(7_500_000, 7_500_001, 15_000_000, 15_000_001),
      fc.integer({ min: 0, max: 40_000_000 })
    ),
    farmerOrFisherman: fc.integer({ min: 0, max: 5 }).map((sixth) => sixth === 5),
  })
  .map((drawn) => ({
    ...drawn,
    priorIncome: drawn.priorYearTax === undefined ? 0 : Math.max(1, drawn.priorIncome),
  }));

/** Random estimated tax payments of a year, with the facts for its required annual payment. */
export const yearsOfEstimates: fc.Arbitrary<DrawnEstimates> = fc
  .record({
    yearEnd: yearEnds,
    harbors,
    withheld: fc.oneof(
      { weight: 2, arbitrary: fc.constant(undefined) },
      { weight: 3, arbitrary: shares }
    ),
    payments: fc.array(fc.record({ on: moments, share: shares }), { maxLength: 6 }),
    restOn: fc.option(moments, { nil: undefined }),
    tellsTax: fc.constantFrom<"no" | "yes" | "just below" | "at the limit">(
      ...(["no", "no", "yes", "just below", "at the limit"] as const)
    ),
    postponement: seldom(
      fc.record({
        of: fc.integer({ min: 0, max: 3 }),
        before: fc.integer({ min: -1, max: 100 }),
        after: fc.oneof(fc.integer({ min: -1, max: 3 }), fc.integer({ min: 0, max: 200 })),
      })
    ),
    assumed: assumptions,
    isNonresident: fc.integer({ min: 0, max: 3 }).map((fourth) => fourth === 3),
    block: fc.option(blocks, { nil: undefined }),
    /** Most years have no rates for the periods: few of these keep them. */
    keepsBlock: fc.integer({ min: 0, max: 19 }).map((twentieth) => twentieth === 0),
    filed: fc.option(
      fc.record({
        days: fc.oneof(fc.integer({ min: -3, max: 3 }), fc.integer({ min: -40, max: 60 })),
        paysWithIt: fc.boolean(),
      }),
      { freq: 2, nil: undefined }
    ),
  })
  .map(({ yearEnd, harbors: drawn, assumed, isNonresident, ...of }) => {
    const prior = drawn.priorYearTax;
    const priorYearTax = typeof prior === "object" ? ofAmount(drawn.tax, prior) : prior;
    const based: Harbors = { ...drawn, priorYearTax };
    const required = requiredInCents(based);
    const plain = installmentDates(yearEnd, undefined, isNonresident);
    const about = of.postponement && (plain[of.postponement.of]?.last ?? 0);
    const begins = (about ?? 0) - (of.postponement?.before ?? 0);
    const postponement =
      of.postponement && about
        ? { begins, until: Math.max(begins, about + of.postponement.after) }
        : undefined;
    const ends = [
      ...installmentDates(yearEnd, postponement, isNonresident).map(({ last }) => last),
      fifteenthOfFourthMonth(yearEnd),
    ];
    const dayAt = ({ near, days }: Moment): number =>
      Math.max(firstDayOf(yearEnd), (ends[near] ?? 0) + days);
    const withheld = of.withheld ? ofAmount(Math.floor(required / 2), of.withheld) : 0;
    const tax = {
      no: undefined,
      // A tax of 0 counts as not entered, because some versions of Excel send it for a blank cell.
      yes: drawn.tax === 0 ? undefined : drawn.tax,
      "just below": withheld + 99_999,
      "at the limit": withheld + 100_000,
    }[of.tellsTax];
    const payments = of.payments.map(({ on, share }) => ({
      day: dayAt(on),
      cents: ofAmount(Math.floor(required / 4), share),
    }));
    const { farmerOrFisherman } = drawn;
    const deadline = earlyReturnDeadline(yearEnd, farmerOrFisherman, postponement);
    const filedOn = of.filed && Math.max(yearEnd + 1, deadline + of.filed.days);
    const restOn = of.filed?.paysWithIt === true ? filedOn : of.restOn && dayAt(of.restOn);
    const form = of.block && yearOfForm(of.block, yearEnd, drawn.status, isNonresident);
    const annualized =
      form && !farmerOrFisherman ? orNothing(() => annualizedByForm(form, required)) : undefined;
    const hasBlock = annualized !== undefined || (of.keepsBlock && !farmerOrFisherman);
    const block = hasBlock ? of.block : undefined;
    return {
      harbors: based,
      given: {
        yearEnd,
        required,
        withheld,
        payments,
        restOn,
        tax,
        farmerOrFisherman,
        isNonresident,
        postponement,
        assumed,
        filedOn,
        annualized,
      },
      block,
      isWithoutRates: block !== undefined && annualized === undefined,
    };
  });
