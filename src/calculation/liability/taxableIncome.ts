import { atLeastZero, Decimal, toWholeDollars, ZERO } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import { figureForStatus } from "../figureForStatus";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";
import { businessIncomeDeduction } from "./businessIncomeDeduction";
import { carLoanDeduction } from "./carLoanDeduction";
import type { GrossIncome } from "./grossIncome";
import type { LiabilityLine } from "./liabilityLine";
import { limitedItemizedDeductions } from "./limitedItemizedDeductions";
import { item, type ReturnItems } from "./returnItems";
import { selfEmploymentTaxDeduction } from "./selfEmploymentTaxDeduction";
import { seniorDeduction } from "./seniorDeduction";
import { standardDeduction } from "./standardDeduction";
import { stateAndLocalDeduction } from "./stateAndLocalDeduction";
import { workDeduction } from "./workDeduction";

/** Taxable income, with what the minimum tax adds back of the deductions. */
export interface TaxableIncome {
  readonly lines: readonly LiabilityLine[];
  readonly taxableIncome: Decimal;
  /** The same before it is held to zero, as the minimum tax counts it. */
  readonly beforeZero: Decimal;
  readonly amtAdjustments: Decimal;
}

type TaxableIncomeRules = Pick<
  Rulebook,
  | "standardDeduction"
  | "dependentStandardDeduction"
  | "stateAndLocalCap"
  | "itemizedLimit"
  | "incomeTaxRates"
  | "selfEmploymentTax"
  | "charitableWithoutItemizing"
  | "additionalDeductions"
  | "businessIncomeDeduction"
>;

/**
 * Taxable income from adjusted gross income: the larger of the standard and the itemized deductions, those of 2025 to 2028, and
 * the deduction for business income.
 *
 * Business income without an amount of its own is the business profit less half the self-employment tax.
 *
 * @param taxYear - The year of the return.
 * @param status - Filing status.
 * @param items - What is known, dollars.
 * @param gross - Income so far.
 * @param rules - Deductions by year.
 * @returns The lines, taxable income and what the minimum tax adds back, in whole dollars.
 * @throws NotInTableError for a year whose figures are not held.
 * @see IRC section 63, 151(d)(5)(C), 163(h)(4), 170(p), 199A, 224, 225
 */
export function taxableIncome(
  taxYear: TaxYear,
  status: FilingStatus,
  items: ReturnItems,
  gross: GrossIncome,
  rules: TaxableIncomeRules
): TaxableIncome {
  const begins = taxYear.firstDay;
  const { adjustedGrossIncome: income, preferentialIncome } = gross;
  const aged = item(items, "aged").toNumber();
  const additions = aged + item(items, "blind").toNumber();
  const standard = standardDeduction(taxYear, status, additions, items.earnedIfDependent, rules);
  const paidTaxes = item(items, "stateAndLocalTaxes");
  const stateTaxes = stateAndLocalDeduction(taxYear, status, paidTaxes, income, rules);
  const listed = item(items, "itemizedDeductions").plus(stateTaxes);
  const senior = seniorDeduction(taxYear, status, aged, income, rules);
  const pay = (kind: "tips" | "overtime"): Decimal =>
    workDeduction(kind, taxYear, status, item(items, kind), income, rules);
  const carLoan = carLoanDeduction(taxYear, status, item(items, "carLoanInterest"), income, rules);
  const temporary = entryOn(rules.additionalDeductions, begins).source;

  const half = selfEmploymentTaxDeduction(taxYear, gross.selfEmploymentTax, rules);
  const qualifiedIncome =
    items.qualifiedBusinessIncome ?? atLeastZero(item(items, "businessProfit").minus(half));
  const business = (before: Decimal): Decimal =>
    businessIncomeDeduction(
      {
        ...{ taxYear, status, qualifiedIncome, preferentialIncome },
        taxableIncome: atLeastZero(before),
        wages: item(items, "businessWages"),
        property: item(items, "businessProperty"),
        specifiedService: item(items, "specifiedService").greaterThan(0),
      },
      rules
    );
  // Section 68 looks at taxable income as it would be without the limit, every other deduction taken.
  const others = [senior, pay("tips"), pay("overtime"), carLoan];
  const beforeListed = others.reduce((sum, one) => sum.minus(one), income);
  const unlimited = beforeListed.minus(business(beforeListed.minus(listed)));
  const itemized = limitedItemizedDeductions(taxYear, status, listed, unlimited, rules);
  const itemizes = itemized.greaterThan(standard);
  const gifts = entryOn(rules.charitableWithoutItemizing, begins);
  const mostGifts = figureForStatus(gifts.figures.limit, status);
  const charitable = itemizes ? ZERO : Decimal.min(item(items, "charitableCash"), mostGifts);

  const lines: LiabilityLine[] = [];
  let left = income;
  const less = (what: string, deduction: Decimal, source: LiabilityLine["source"]): void => {
    const amount = toWholeDollars(deduction);
    if (amount.isZero()) return;
    lines.push({ what: `Less ${what}`, amount: amount.negated(), source });
    left = left.minus(amount);
  };
  const chosen = itemizes ? rules.stateAndLocalCap : rules.standardDeduction;
  less(
    itemizes ? "itemized deductions" : "standard deduction",
    itemizes ? itemized : standard,
    entryOn<object>(chosen, begins).source
  );
  less("cash gifts without itemizing", charitable, gifts.source);
  less("senior deduction", senior, temporary);
  less("qualified tips", pay("tips"), temporary);
  less("qualified overtime", pay("overtime"), temporary);
  less("car loan interest", carLoan, temporary);

  const businessLaw = entryOn(rules.businessIncomeDeduction, begins).source;
  less("business income deduction", business(left), businessLaw);
  const result = atLeastZero(left);
  return {
    lines: [...lines, { what: "Taxable income", amount: result, source: undefined }],
    taxableIncome: result,
    beforeZero: left,
    amtAdjustments: toWholeDollars(itemizes ? stateTaxes : standard)
      .plus(toWholeDollars(senior))
      .plus(toWholeDollars(item(items, "minimumTaxItems"))),
  };
}
