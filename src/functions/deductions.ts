import { businessIncomeDeduction } from "../calculation/liability/businessIncomeDeduction";
import { childTaxCredit } from "../calculation/liability/childTaxCredit";
import { standardDeduction as standardOf } from "../calculation/liability/standardDeduction";
import { toCents, ZERO } from "../money/dollars";
import { rulebook } from "../rules/rulebook";
import { taxYear as readTaxYear } from "./dayArguments";
import { money, optionalMoney } from "./moneyArguments";
import { moneyCell } from "./results";
import { answerRows } from "./rows";
import { count, filingStatus, yesNo } from "./wordArguments";

const MOST_ADDITIONS = 4;
const MOST_CHILDREN = 30;

/**
 * Standard deduction, with the additions for being 65 or older or blind, or as somebody's dependent.
 *
 * @customfunction STANDARDDEDUCTION
 * @param taxYear Tax year such as 2025, or the last day of a fiscal year; one cell or a column.
 * @param status Filing status: single, joint, separate, head, survivor, or S, MFJ, MFS, HOH, QSS.
 * @param [additions] How many of 65 or older and blind apply, of either spouse on a joint return: 0 to 4.
 * @param [earnedIfDependent] Dollars of earned income, given only for somebody's dependent; 0 counts as given.
 * @returns {any[][]} Dollars.
 * @throws `#VALUE!` for an argument that cannot be read; `#N/A` for a year whose amounts are not held.
 * @see 26 U.S.C. 63(c), (f)
 * @example =EXT.STANDARDDEDUCTION(2025,"joint",2) is 34,700.00
 */
export function standardDeduction(
  taxYear: unknown[][],
  status: unknown[][],
  additions?: unknown[][],
  earnedIfDependent?: unknown[][]
): unknown[][] {
  return answerRows({ taxYear, status, additions, earnedIfDependent }, (cells) => {
    const year = readTaxYear("taxYear", cells.taxYear);
    const who = filingStatus("status", cells.status);
    const more = count("additions", cells.additions, MOST_ADDITIONS);
    const earned = optionalMoney("earnedIfDependent", cells.earnedIfDependent);
    return moneyCell(standardOf(year, who, more, earned, rulebook));
  });
}

/**
 * Deduction of 20% for the qualified income of one business, with the limits by wages, property and kind of service above the threshold.
 *
 * @customfunction BUSINESSDEDUCTION
 * @param taxYear Tax year such as 2025, or the last day of a fiscal year; one cell or a column.
 * @param status Filing status: single, joint, separate, head, survivor, or S, MFJ, MFS, HOH, QSS.
 * @param qualifiedIncome Dollars of qualified business income: profit less half the self-employment tax and the like.
 * @param taxableIncome Dollars of taxable income before this deduction.
 * @param [preferentialIncome] Dollars of net capital gain and qualified dividends in it.
 * @param [wages] Dollars of wages the business paid.
 * @param [property] Dollars of its depreciable property, unadjusted.
 * @param [specifiedService] Yes for a specified service business: health, law, accounting and the like.
 * @returns {any[][]} Dollars and cents.
 * @throws `#VALUE!` for an argument that cannot be read; `#N/A` for a year whose figures are not held.
 * @see 26 U.S.C. 199A; 26 CFR 1.199A-1
 * @example =EXT.BUSINESSDEDUCTION(2025,"single",50000,60000) is 10,000.00
 */
export function businessDeduction(
  taxYear: unknown[][],
  status: unknown[][],
  qualifiedIncome: unknown[][],
  taxableIncome: unknown[][],
  preferentialIncome?: unknown[][],
  wages?: unknown[][],
  property?: unknown[][],
  specifiedService?: unknown[][]
): unknown[][] {
  const given = {
    ...{ taxYear, status, qualifiedIncome, taxableIncome },
    ...{ preferentialIncome, wages, property, specifiedService },
  };
  return answerRows(given, (cells) => {
    const input = {
      taxYear: readTaxYear("taxYear", cells.taxYear),
      status: filingStatus("status", cells.status),
      qualifiedIncome: money("qualifiedIncome", cells.qualifiedIncome),
      taxableIncome: money("taxableIncome", cells.taxableIncome),
      preferentialIncome: optionalMoney("preferentialIncome", cells.preferentialIncome) ?? ZERO,
      wages: optionalMoney("wages", cells.wages) ?? ZERO,
      property: optionalMoney("property", cells.property) ?? ZERO,
      specifiedService: yesNo("specifiedService", cells.specifiedService),
    };
    return moneyCell(toCents(businessIncomeDeduction(input, rulebook)));
  });
}

/**
 * Credit for children under 17 and other dependents as income shrinks it, before it is held to the tax. The refundable part is a payment and not worked out.
 *
 * @customfunction CHILDCREDIT
 * @param taxYear Tax year such as 2025, or the last day of a fiscal year; one cell or a column.
 * @param status Filing status: single, joint, separate, head, survivor, or S, MFJ, MFS, HOH, QSS.
 * @param children Qualifying children under 17.
 * @param [otherDependents] Other dependents.
 * @param [adjustedGrossIncome] Dollars; left out, nothing shrinks.
 * @returns {any[][]} Dollars.
 * @throws `#VALUE!` for an argument that cannot be read; `#N/A` for a year whose amounts are not held.
 * @see 26 U.S.C. 24(a), (b), (h)
 * @example =EXT.CHILDCREDIT(2025,"joint",2,0,410001) is 3,850.00
 */
export function childCredit(
  taxYear: unknown[][],
  status: unknown[][],
  children: unknown[][],
  otherDependents?: unknown[][],
  adjustedGrossIncome?: unknown[][]
): unknown[][] {
  return answerRows({ taxYear, status, children, otherDependents, adjustedGrossIncome }, (cells) =>
    moneyCell(
      childTaxCredit(
        readTaxYear("taxYear", cells.taxYear),
        filingStatus("status", cells.status),
        count("children", cells.children, MOST_CHILDREN),
        count("otherDependents", cells.otherDependents, MOST_CHILDREN),
        optionalMoney("adjustedGrossIncome", cells.adjustedGrossIncome) ?? ZERO,
        rulebook
      )
    )
  );
}
