import { additionalMedicareTax } from "../calculation/liability/additionalMedicareTax";
import { alternativeMinimumTax } from "../calculation/liability/alternativeMinimumTax";
import { incomeTax as incomeTaxOf } from "../calculation/liability/incomeTax";
import { netEarnings } from "../calculation/liability/netEarnings";
import { netInvestmentIncomeTax } from "../calculation/liability/netInvestmentIncomeTax";
import { selfEmploymentTax } from "../calculation/liability/selfEmploymentTax";
import { toCents, ZERO } from "../money/dollars";
import { rulebook } from "../rules/rulebook";
import { taxYear as readTaxYear } from "./dayArguments";
import { money, optionalMoney, signedMoney } from "./moneyArguments";
import { moneyCell } from "./results";
import { answerRows } from "./rows";
import { filingStatus } from "./wordArguments";

/**
 * Income tax on taxable income, line 16: the Tax Table below 100,000 as printed, the worksheet above, gains and qualified dividends at their own rates.
 *
 * @customfunction INCOMETAX
 * @param taxYear Tax year such as 2025, or the last day of a fiscal year; one cell or a column.
 * @param status Filing status: single, joint, separate, head, survivor, or S, MFJ, MFS, HOH, QSS.
 * @param taxableIncome Dollars of taxable income, gains and qualified dividends included.
 * @param [preferentialIncome] Dollars of net long-term gain and qualified dividends in it.
 * @returns {any[][]} Dollars; whole from the Tax Table, cents from the worksheet.
 * @throws `#VALUE!` for an argument that cannot be read; `#N/A` for a year whose rates are not held.
 * @see 26 U.S.C. 1(h), (j), 3; Instructions for Form 1040, line 16
 * @example =EXT.INCOMETAX(2025,"single",99999.99) is 16,909.00; =EXT.INCOMETAX(2025,"single",100000) is 16,914.00
 */
export function incomeTax(
  taxYear: unknown[][],
  status: unknown[][],
  taxableIncome: unknown[][],
  preferentialIncome?: unknown[][]
): unknown[][] {
  return answerRows({ taxYear, status, taxableIncome, preferentialIncome }, (cells) => {
    const income = money("taxableIncome", cells.taxableIncome);
    const gain = optionalMoney("preferentialIncome", cells.preferentialIncome) ?? ZERO;
    const year = readTaxYear("taxYear", cells.taxYear);
    return moneyCell(
      toCents(incomeTaxOf(year, filingStatus("status", cells.status), income, gain, rulebook))
    );
  });
}

/**
 * Self-employment tax on a net profit: Social Security up to the wage base, which wages use up first, and Medicare.
 *
 * @customfunction SETAX
 * @param taxYear Tax year such as 2025, or the last day of a fiscal year; one cell or a column.
 * @param profit Dollars of net profit of one person, negative for a loss.
 * @param [wages] Dollars of the same person's wages that bore Social Security tax.
 * @returns {any[][]} Dollars and cents; 0 where net earnings stay below $400.
 * @throws `#VALUE!` for an argument that cannot be read; `#N/A` for a year whose wage base is not held.
 * @see 26 U.S.C. 1401, 1402; Schedule SE
 * @example =EXT.SETAX(2025,100000) is 14,129.55
 */
export function seTax(taxYear: unknown[][], profit: unknown[][], wages?: unknown[][]): unknown[][] {
  return answerRows({ taxYear, profit, wages }, (cells) => {
    const year = readTaxYear("taxYear", cells.taxYear);
    const earned = signedMoney("profit", cells.profit);
    const paid = optionalMoney("wages", cells.wages) ?? ZERO;
    return moneyCell(toCents(selfEmploymentTax(year, earned, paid, rulebook)));
  });
}

/**
 * Additional Medicare tax of 0.9% on wages and self-employment income above the threshold.
 *
 * @customfunction EXTRAMEDICARE
 * @param taxYear Tax year such as 2025, or the last day of a fiscal year; one cell or a column.
 * @param status Filing status: single, joint, separate, head, survivor, or S, MFJ, MFS, HOH, QSS.
 * @param wages Dollars of Medicare wages, of both spouses on a joint return.
 * @param [selfEmployment] Dollars of net profit from self-employment; 92.35% of it counts, nothing where that is below $400.
 * @returns {any[][]} Dollars and cents.
 * @throws `#VALUE!` for an argument that cannot be read; `#N/A` for a year before 2022.
 * @see 26 U.S.C. 3101(b)(2), 1401(b)(2); Form 8959
 * @example =EXT.EXTRAMEDICARE(2025,"single",225000) is 225.00
 */
export function extraMedicare(
  taxYear: unknown[][],
  status: unknown[][],
  wages: unknown[][],
  selfEmployment?: unknown[][]
): unknown[][] {
  return answerRows({ taxYear, status, wages, selfEmployment }, (cells) => {
    const year = readTaxYear("taxYear", cells.taxYear);
    const profit = optionalMoney("selfEmployment", cells.selfEmployment) ?? ZERO;
    const earnings = netEarnings(year, profit, rulebook);
    const paid = money("wages", cells.wages);
    const who = filingStatus("status", cells.status);
    return moneyCell(toCents(additionalMedicareTax(year, who, paid, earnings, rulebook)));
  });
}

/**
 * Net investment income tax of 3.8%, on the lesser of net investment income and income above the threshold.
 *
 * @customfunction NETINVESTMENTTAX
 * @param taxYear Tax year such as 2025, or the last day of a fiscal year; one cell or a column.
 * @param status Filing status: single, joint, separate, head, survivor, or S, MFJ, MFS, HOH, QSS.
 * @param netInvestmentIncome Dollars of net investment income.
 * @param adjustedGrossIncome Dollars, with excluded foreign income added back.
 * @returns {any[][]} Dollars and cents.
 * @throws `#VALUE!` for an argument that cannot be read; `#N/A` for a year before 2022.
 * @see 26 U.S.C. 1411; Form 8960
 * @example =EXT.NETINVESTMENTTAX(2025,"joint",40000,270000) is 760.00
 */
export function netInvestmentTax(
  taxYear: unknown[][],
  status: unknown[][],
  netInvestmentIncome: unknown[][],
  adjustedGrossIncome: unknown[][]
): unknown[][] {
  return answerRows({ taxYear, status, netInvestmentIncome, adjustedGrossIncome }, (cells) => {
    const year = readTaxYear("taxYear", cells.taxYear);
    const who = filingStatus("status", cells.status);
    const investment = signedMoney("netInvestmentIncome", cells.netInvestmentIncome);
    const income = signedMoney("adjustedGrossIncome", cells.adjustedGrossIncome);
    return moneyCell(toCents(netInvestmentIncomeTax(year, who, investment, income, rulebook)));
  });
}

/**
 * Alternative minimum tax: what the tentative minimum tax is above the regular one.
 *
 * @customfunction MINIMUMTAX
 * @param taxYear Tax year such as 2025, or the last day of a fiscal year; one cell or a column.
 * @param status Filing status: single, joint, separate, head, survivor, or S, MFJ, MFS, HOH, QSS.
 * @param taxableIncome Dollars of regular taxable income.
 * @param amtAdjustments Dollars added back: the standard deduction or state and local taxes, incentive stock options and the like.
 * @param [preferentialIncome] Dollars of net long-term gain and qualified dividends in taxable income.
 * @returns {any[][]} Dollars and cents.
 * @throws `#VALUE!` for an argument that cannot be read; `#N/A` for a year whose figures are not held.
 * @see 26 U.S.C. 55, 56(b)(1); Form 6251
 * @example =EXT.MINIMUMTAX(2025,"single",150000,15750) is 0.00
 */
export function minimumTax(
  taxYear: unknown[][],
  status: unknown[][],
  taxableIncome: unknown[][],
  amtAdjustments: unknown[][],
  preferentialIncome?: unknown[][]
): unknown[][] {
  return answerRows(
    { taxYear, status, taxableIncome, amtAdjustments, preferentialIncome },
    (cells) => {
      const income = money("taxableIncome", cells.taxableIncome);
      const gain = optionalMoney("preferentialIncome", cells.preferentialIncome) ?? ZERO;
      const input = {
        taxYear: readTaxYear("taxYear", cells.taxYear),
        status: filingStatus("status", cells.status),
        taxableIncome: income,
        amtAdjustments: money("amtAdjustments", cells.amtAdjustments),
        preferentialIncome: gain,
      };
      return moneyCell(toCents(alternativeMinimumTax(input, rulebook)));
    }
  );
}
