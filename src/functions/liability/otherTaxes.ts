import { additionalMedicareTax } from "../../calculation/liability/additionalMedicareTax";
import { netEarnings } from "../../calculation/liability/netEarnings";
import { netInvestmentIncomeTax } from "../../calculation/liability/netInvestmentIncomeTax";
import { selfEmploymentTax } from "../../calculation/liability/selfEmploymentTax";
import { toCents, ZERO } from "../../money/dollars";
import { optional } from "../arguments/argumentKind";
import { dollars, signedDollars } from "../arguments/dollars";
import { taxYear } from "../arguments/taxYear";
import { filingStatus } from "../arguments/words";
import { moneyCell } from "../cells/answerCell";
import { rowFunction } from "../worksheetFunction";

const SETAX = rowFunction({
  arguments: {
    taxYear,
    netProfit: signedDollars,
    socialSecurityWages: optional(dollars, ZERO),
  },
  tables: ["selfEmploymentTax"],
  law: ["IRC sections 1401 and 1402", "Schedule SE"],
  examples: [{ formula: "=EXT.SETAX(2025,100000)", answer: "14,129.55" }],
  calculate: (given, rules) =>
    moneyCell(
      toCents(selfEmploymentTax(given.taxYear, given.netProfit, given.socialSecurityWages, rules))
    ),
});

/**
 * Self-employment tax on one person's net profit; wages reduce the Social Security wage base first.
 *
 * @customfunction SETAX
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year. One cell or a column.
 * @param netProfit One person's net profit from self-employment, in dollars; negative for a loss.
 * @param [socialSecurityWages] Wages of the same person subject to Social Security tax, in dollars. Blank is none.
 * @returns {any[][]} Dollars and cents; 0 if net earnings are less than $400.
 */
export function seTax(
  taxYear: unknown[][],
  netProfit: unknown[][],
  socialSecurityWages?: unknown[][]
): unknown[][];
export function seTax(...cells: unknown[]): unknown[][] {
  return SETAX.answer(cells);
}

const EXTRAMEDICARE = rowFunction({
  arguments: {
    taxYear,
    filingStatus,
    medicareWages: dollars,
    netProfit: optional(dollars, ZERO),
  },
  tables: ["selfEmploymentTax", "additionalMedicareTax"],
  law: ["IRC sections 3101(b)(2) and 1401(b)(2)", "Form 8959"],
  examples: [{ formula: '=EXT.EXTRAMEDICARE(2025,"single",225000)', answer: "225.00" }],
  calculate: ({ taxYear: year, filingStatus: status, medicareWages, netProfit }, rules) => {
    const earnings = netEarnings(year, netProfit, rules);
    return moneyCell(toCents(additionalMedicareTax(year, status, medicareWages, earnings, rules)));
  },
});

/**
 * Additional Medicare Tax of 0.9% on wages and self-employment income above the threshold.
 *
 * @customfunction EXTRAMEDICARE
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year. One cell or a column.
 * @param filingStatus Single (S), married filing jointly (MFJ) or separately (MFS), head of household (HOH), or qualifying surviving spouse (QSS).
 * @param medicareWages Wages subject to Medicare tax, in dollars.
 * @param [netProfit] Net profit from self-employment, in dollars. Blank is none.
 * @returns {any[][]} Dollars and cents.
 */
export function extraMedicare(
  taxYear: unknown[][],
  filingStatus: unknown[][],
  medicareWages: unknown[][],
  netProfit?: unknown[][]
): unknown[][];
export function extraMedicare(...cells: unknown[]): unknown[][] {
  return EXTRAMEDICARE.answer(cells);
}

const NETINVESTMENTTAX = rowFunction({
  arguments: {
    taxYear,
    filingStatus,
    netInvestmentIncome: signedDollars,
    agi: signedDollars,
  },
  tables: ["netInvestmentIncomeTax"],
  law: ["IRC section 1411", "Form 8960"],
  examples: [{ formula: '=EXT.NETINVESTMENTTAX(2025,"joint",40000,270000)', answer: "760.00" }],
  calculate: ({ taxYear: year, filingStatus: status, netInvestmentIncome, agi }, rules) =>
    moneyCell(toCents(netInvestmentIncomeTax(year, status, netInvestmentIncome, agi, rules))),
});

/**
 * Net investment income tax of 3.8% on net investment income or AGI above the threshold, whichever is less.
 *
 * @customfunction NETINVESTMENTTAX
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year. One cell or a column.
 * @param filingStatus Single (S), married filing jointly (MFJ) or separately (MFS), head of household (HOH), or qualifying surviving spouse (QSS).
 * @param netInvestmentIncome Net investment income, in dollars; negative for a loss.
 * @param agi Modified adjusted gross income, in dollars; negative for a loss.
 * @returns {any[][]} Dollars and cents.
 */
export function netInvestmentTax(
  taxYear: unknown[][],
  filingStatus: unknown[][],
  netInvestmentIncome: unknown[][],
  agi: unknown[][]
): unknown[][];
export function netInvestmentTax(...cells: unknown[]): unknown[][] {
  return NETINVESTMENTTAX.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const otherTaxes = { SETAX, EXTRAMEDICARE, NETINVESTMENTTAX };
