import fc from "fast-check";
import type { Status } from "./returnFigures";
import type { Filer } from "./returnIncome";
import type { Whole } from "./wholeReturn";

/** Whole dollars up to an amount, the small as often as the large. */
const upTo = (most: number): fc.Arbitrary<number> =>
  fc.oneof(
    fc.integer({ min: 1, max: Math.min(most, 20_000) }),
    fc.integer({ min: 1, max: Math.min(most, 150_000) }),
    fc.integer({ min: 1, max: most })
  );
const gainOrLoss = (most: number): fc.Arbitrary<number> =>
  fc.tuple(upTo(most), fc.boolean()).map(([amount, isLoss]) => (isLoss ? -amount : amount));
const persons = (most: number): fc.Arbitrary<number> => fc.integer({ min: 1, max: most });
const yes = fc.constant(1);

const DRAWN: Readonly<Record<string, fc.Arbitrary<number>>> = {
  wages: upTo(1_400_000),
  ownerWages: upTo(250_000),
  taxExemptInterest: upTo(30_000),
  interest: upTo(300_000),
  ordinaryDividends: upTo(200_000),
  qualifiedDividends: upTo(200_000),
  longTermGain: gainOrLoss(900_000),
  shortTermGain: gainOrLoss(200_000),
  longTermCarryover: upTo(100_000),
  shortTermCarryover: upTo(100_000),
  businessProfit: gainOrLoss(1_200_000),
  rentalIncome: gainOrLoss(900_000),
  partnershipIncome: gainOrLoss(1_200_000),
  netOperatingLoss: upTo(200_000),
  pensions: upTo(150_000),
  retirementDistributions: upTo(150_000),
  charitableDistribution: upTo(100_000),
  earlyDistributions: upTo(60_000),
  socialSecurityBenefits: upTo(80_000),
  taxableSocialSecurity: upTo(20_000),
  livedApart: yes,
  unemployment: upTo(20_000),
  otherIncome: gainOrLoss(50_000),
  adjustments: upTo(30_000),
  itemizedDeductions: upTo(250_000),
  stateAndLocalTaxes: upTo(90_000),
  charitableCash: upTo(5_000),
  tips: upTo(40_000),
  overtime: upTo(40_000),
  carLoanInterest: upTo(15_000),
  qualifiedBusinessIncome: upTo(900_000),
  businessWages: upTo(600_000),
  businessProperty: upTo(2_000_000),
  specifiedService: yes,
  childrenUnder17: persons(6),
  otherDependents: persons(3),
  aged: persons(2),
  blind: persons(2),
  earnedIfDependent: upTo(30_000),
  minimumTaxItems: upTo(900_000),
  foreignTaxCredit: upTo(5_000),
  educationCredits: upTo(4_000),
  elderlyCredit: upTo(1_000),
  credits: upTo(20_000),
  otherTaxes: upTo(20_000),
};
const NAMES = Object.keys(DRAWN);

/** Groups of items that meet often, each with a few others. */
const GROUPS: readonly (readonly string[])[] = [
  ["wages"],
  ["wages", "itemizedDeductions", "minimumTaxItems"],
  ["wages", "itemizedDeductions", "stateAndLocalTaxes", "charitableCash"],
  ["wages", "stateAndLocalTaxes", "charitableCash", "minimumTaxItems"],
  ["wages", "businessProfit", "partnershipIncome"],
  ["businessProfit", "businessWages", "itemizedDeductions"],
  ["partnershipIncome", "qualifiedBusinessIncome", "businessWages", "stateAndLocalTaxes"],
  ["pensions", "socialSecurityBenefits", "livedApart", "aged"],
  ["longTermGain", "shortTermGain", "qualifiedDividends", "longTermCarryover"],
  ["wages", "childrenUnder17", "foreignTaxCredit"],
];

const STATUSES: readonly Status[] = ["single", "joint", "separate", "head", "survivor"];

/** A filer of 2022 to 2026 with up to a dozen items. */
export const filers: fc.Arbitrary<Filer> = fc
  .record({
    year: fc.oneof(fc.integer({ min: 2022, max: 2026 }), fc.constant(2026)),
    status: fc.constantFrom(...STATUSES),
    group: fc.constantFrom(...GROUPS),
    others: fc.uniqueArray(fc.constantFrom(...NAMES), { maxLength: 7 }),
  })
  .chain(({ year, status, group, others }) => {
    const names = [...new Set([...group, ...others])];
    return fc
      .tuple(...names.map((name) => (DRAWN[name] ?? yes).map((amount) => [name, amount] as const)))
      .map((pairs) => ({ year, status, items: Object.fromEntries(pairs) }));
  });

const has = (name: string, { filer }: Whole): boolean => (filer.items[name] ?? 0) > 0;

/** Special cases of the law that the filers must reach. */
export const FILER_CORNERS: Readonly<Record<string, (one: Whole) => boolean>> = {
  "an excess business loss": ({ income }) => income.excessLoss > 0,
  "an excess business loss and investment income": ({ income, investment }) =>
    income.excessLoss > 0 && investment > 0,
  "the business income deduction beside the cut of section 68": ({ chosen, itemized }) =>
    chosen === "itemized" && itemized.cut > 0 && itemized.businessDeduction > 0,
  "the minimum tax beside the cut of section 68": ({ chosen, itemized }) =>
    chosen === "itemized" && itemized.cut > 0 && itemized.minimumTax > 0,
  "less tax with smaller itemized deductions": ({ chosen, standard, itemized }) =>
    chosen === "itemized" && itemized.deduction < standard.deduction,
  "less tax with a smaller standard deduction": ({ chosen, standard, itemized }) =>
    chosen === "standard" &&
    itemized.deduction > standard.deduction &&
    itemized.afterCredits > standard.afterCredits,
  "gifts of cash that decide against itemizing": ({ chosen, standard, itemized }) =>
    chosen === "standard" &&
    standard.gifts > 0 &&
    itemized.deduction > standard.deduction - standard.gifts &&
    itemized.deduction < standard.deduction,
  "benefits of a separate filer who lived apart": (one) =>
    one.filer.status === "separate" && has("livedApart", one) && one.income.benefits > 0,
  "benefits of a separate filer who did not": (one) =>
    one.filer.status === "separate" && !has("livedApart", one) && one.income.benefits > 0,
  "capital loss carryovers": (one) =>
    has("longTermCarryover", one) || has("shortTermCarryover", one),
  "a net operating loss carryforward": (one) => has("netOperatingLoss", one),
  "a qualified charitable distribution": (one) =>
    has("charitableDistribution", one) && has("retirementDistributions", one),
  "credits above the tax": ({ standard }) =>
    standard.beforeCredits > 0 && standard.afterCredits === 0,
  "the Additional Medicare Tax": ({ medicare }) => medicare > 0,
};
