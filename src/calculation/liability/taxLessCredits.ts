import { Decimal, toWholeDollars } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";
import { alternativeMinimumTax } from "./alternativeMinimumTax";
import { childTaxCredit } from "./childTaxCredit";
import type { GrossIncome } from "./grossIncome";
import { incomeTax } from "./incomeTax";
import type { LiabilityLine } from "./liabilityLine";
import { item, type ReturnItems } from "./returnItems";
import type { TaxableIncome } from "./taxableIncome";

/** Income tax and alternative minimum tax, less credits. */
export interface TaxLessCredits {
  readonly lines: readonly LiabilityLine[];
  /** Whole dollars, never below zero. */
  readonly amount: Decimal;
}

type TaxRules = Pick<
  Rulebook,
  "alternativeMinimumTax" | "incomeTaxRates" | "taxTable" | "capitalGainRates" | "childTaxCredit"
>;

/**
 * Income tax and alternative minimum tax, less nonrefundable credits up to that amount.
 *
 * The foreign tax credit, the education credits, the credit for the elderly and other credits count as given. They come off in the
 * order of the return, the child tax credit after those that its limit takes into account.
 *
 * @param taxYear - The year of the return.
 * @param status - Filing status.
 * @param items - Known items, dollars.
 * @param gross - Adjusted gross income and its parts.
 * @param taxable - Taxable income and the amounts that the minimum tax adds back.
 * @param rules - Rates, minimum tax and child tax credit by year.
 * @returns The lines and what is left of both taxes, in whole dollars.
 * @throws NotInTableError for a tax year that the tables do not cover.
 * @see IRC section 26(a), 55, 901, 25A, 22, 24; Form 1040, lines 16 to 22; Schedule 8812, Credit Limit Worksheet A
 */
export function taxLessCredits(
  taxYear: TaxYear,
  status: FilingStatus,
  items: ReturnItems,
  gross: GrossIncome,
  taxable: TaxableIncome,
  rules: TaxRules
): TaxLessCredits {
  const begins = taxYear.firstDay;
  const { preferentialIncome, adjustedGrossIncome } = gross;
  const { taxableIncome, beforeZero, amtAdjustments } = taxable;
  const regular = toWholeDollars(
    incomeTax(taxYear, status, taxableIncome, preferentialIncome, rules)
  );
  const minimum = toWholeDollars(
    alternativeMinimumTax(
      { taxYear, status, taxableIncome: beforeZero, amtAdjustments, preferentialIncome },
      rules
    )
  );
  const family = childTaxCredit(
    taxYear,
    status,
    item(items, "childrenUnder17").toNumber(),
    item(items, "otherDependents").toNumber(),
    adjustedGrossIncome,
    rules
  );

  let left = regular.plus(minimum);
  const less = (what: string, credit: Decimal, source?: LiabilityLine["source"]): LiabilityLine => {
    const taken = Decimal.min(toWholeDollars(credit), left);
    left = left.minus(taken);
    return { what: `Less ${what}`, amount: taken.negated(), source };
  };
  const lines = [
    {
      what: "Income tax",
      amount: regular,
      source: entryOn(rules.incomeTaxRates, begins).source,
    },
    {
      what: "Alternative minimum tax",
      amount: minimum,
      source: entryOn(rules.alternativeMinimumTax, begins).source,
    },
    less("foreign tax credit", item(items, "foreignTaxCredit")),
    less("education credits", item(items, "educationCredits")),
    less("credit for the elderly", item(items, "elderlyCredit")),
    less(
      "child tax credit and credit for other dependents",
      family,
      entryOn(rules.childTaxCredit, begins).source
    ),
    less("other credits", item(items, "credits")),
  ];
  const shown = lines.filter((line, index) => index === 0 || !line.amount.isZero());
  return { lines: shown, amount: left };
}
