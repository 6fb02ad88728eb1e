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

/** The deductions that a return takes: the standard deduction, or the itemized deductions. */
export type DeductionChoice = "standard" | "itemized";

/** Taxable income, with the deductions that the alternative minimum tax adds back. */
export interface TaxableIncome {
  readonly lines: readonly LiabilityLine[];
  /** Whole dollars of the deductions chosen: itemized, or standard with cash contributions to charity. */
  readonly deduction: Decimal;
  readonly taxableIncome: Decimal;
  /** The same without the limit of zero, for the alternative minimum tax. */
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
 * Taxable income from adjusted gross income: less the standard or the itemized deductions, the deductions of 2025 through 2028, and
 * the deduction for qualified business income.
 *
 * If qualified business income is not given, it is the business profit less the deductible part of self-employment tax. The
 * business income deduction and the alternative minimum tax are calculated without the limit on itemized deductions at the highest
 * rate.
 *
 * @param taxYear - The year of the return.
 * @param status - Filing status.
 * @param items - Known items, dollars.
 * @param gross - Adjusted gross income and its parts.
 * @param choice - The deductions taken, even if the others are larger.
 * @param rules - Deductions by year.
 * @returns The lines, taxable income and the amounts that the alternative minimum tax adds back, in whole dollars.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @see IRC section 56(b)(1), 63, 68, 151(d)(5)(C), 163(h)(4), 170(p), 199A, 224, 225
 */
export function taxableIncome(
  taxYear: TaxYear,
  status: FilingStatus,
  items: ReturnItems,
  gross: GrossIncome,
  choice: DeductionChoice,
  rules: TaxableIncomeRules
): TaxableIncome {
  const begins = taxYear.firstDay;
  const itemizes = choice === "itemized";
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

  const deductible = selfEmploymentTaxDeduction(taxYear, gross.selfEmploymentTax, rules);
  const qualifiedIncome =
    items.qualifiedBusinessIncome ?? atLeastZero(item(items, "businessProfit").minus(deductible));
  const business = (before: Decimal): Decimal =>
    businessIncomeDeduction(
      {
        taxYear,
        status,
        qualifiedIncome,
        preferentialIncome,
        taxableIncome: atLeastZero(before),
        wages: item(items, "businessWages"),
        property: item(items, "businessProperty"),
        specifiedService: item(items, "specifiedService").greaterThan(0),
      },
      rules
    );
  // Section 68 uses taxable income without the limit, after every other deduction.
  const others = [senior, pay("tips"), pay("overtime"), carLoan];
  const beforeListed = others.reduce((sum, one) => sum.minus(one), income);
  const unlimited = beforeListed.minus(business(beforeListed.minus(listed)));
  const itemized = limitedItemizedDeductions(taxYear, status, listed, unlimited, rules);
  const disallowed = itemizes ? toWholeDollars(listed).minus(toWholeDollars(itemized)) : ZERO;
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
  less("cash contributions to charity", charitable, gifts.source);
  const deduction = income.minus(left);
  less("senior deduction", senior, temporary);
  less("qualified tips", pay("tips"), temporary);
  less("qualified overtime", pay("overtime"), temporary);
  less("car loan interest", carLoan, temporary);

  // Section 199A(e)(1): taxable income without regard to section 68.
  const businessLaw = entryOn(rules.businessIncomeDeduction, begins).source;
  less("business income deduction", business(left.minus(disallowed)), businessLaw);
  const result = atLeastZero(left);
  // Section 56(b)(1): section 68 does not apply, so the part that it disallowed is deducted again.
  return {
    lines: [...lines, { what: "Taxable income", amount: result, source: undefined }],
    deduction,
    taxableIncome: result,
    beforeZero: left,
    amtAdjustments: toWholeDollars(itemizes ? stateTaxes : standard)
      .minus(disallowed)
      .plus(toWholeDollars(senior))
      .plus(toWholeDollars(item(items, "minimumTaxItems"))),
  };
}
