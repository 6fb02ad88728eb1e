import { businessIncomeDeduction } from "../../calculation/liability/businessIncomeDeduction";
import { childTaxCredit } from "../../calculation/liability/childTaxCredit";
import { standardDeduction as standardOf } from "../../calculation/liability/standardDeduction";
import { toCents, ZERO } from "../../money/dollars";
import { optional } from "../arguments/argumentKind";
import { dollars } from "../arguments/dollars";
import { count } from "../arguments/number";
import { taxYear } from "../arguments/taxYear";
import { filingStatus } from "../arguments/words";
import { yesNo } from "../arguments/yesNo";
import { moneyCell } from "../cells/answerCell";
import { InputError } from "../cells/inputError";
import { rowFunction } from "../worksheetFunction";

const MOST_BOXES = 4;
const MOST_CHILDREN = 30;

const STANDARDDEDUCTION = rowFunction({
  arguments: {
    taxYear,
    filingStatus,
    ageBlindBoxes: count(MOST_BOXES),
    dependentEarnedIncome: optional(dollars, ZERO),
    dependent: yesNo,
  },
  tables: ["standardDeduction", "dependentStandardDeduction"],
  law: ["IRC section 63(c), (f)"],
  examples: [
    {
      formula: '=EXT.STANDARDDEDUCTION(2025,"joint",2)',
      answer: "34,700.00",
      remark: "both spouses age 65 or older",
    },
    {
      formula: '=EXT.STANDARDDEDUCTION(2025,"single",,5000,"yes")',
      answer: "5,450.00",
      remark: "claimed as a dependent",
    },
  ],
  calculate: ({ taxYear: year, filingStatus: status, ageBlindBoxes, ...given }, rules) => {
    const { dependent, dependentEarnedIncome: earned } = given;
    if (!dependent && earned.greaterThan(0))
      throw new InputError(
        "dependent",
        `The cell is blank or no, but dependentEarnedIncome is ${earned.toString()}. Enter yes if the filer is claimed as a dependent, or clear the income.`
      );
    return moneyCell(
      standardOf(year, status, ageBlindBoxes, dependent ? earned : undefined, rules)
    );
  },
});

/**
 * Standard deduction, including the amounts for age 65 or older and blindness, or the limit for a dependent.
 *
 * @customfunction STANDARDDEDUCTION
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year. One cell or a column.
 * @param filingStatus Single (S), married filing jointly (MFJ) or separately (MFS), head of household (HOH), or qualifying surviving spouse (QSS).
 * @param [ageBlindBoxes] Number of boxes checked for age 65 or older and blindness, 0 to 4. Blank is none.
 * @param [dependentEarnedIncome] Earned income of a filer who is claimed as a dependent, in dollars. Blank is none.
 * @param [dependent] Yes if the filer is claimed as a dependent; blank is no.
 * @returns {any[][]} Whole dollars.
 */
export function standardDeduction(
  taxYear: unknown[][],
  filingStatus: unknown[][],
  ageBlindBoxes?: unknown[][],
  dependentEarnedIncome?: unknown[][],
  dependent?: unknown[][]
): unknown[][];
export function standardDeduction(...cells: unknown[]): unknown[][] {
  return STANDARDDEDUCTION.answer(cells);
}

const BUSINESSDEDUCTION = rowFunction({
  arguments: {
    taxYear,
    filingStatus,
    qualifiedBusinessIncome: dollars,
    taxableIncome: dollars,
    preferentialIncome: optional(dollars, ZERO),
    w2Wages: optional(dollars, ZERO),
    ubia: optional(dollars, ZERO),
    sstb: yesNo,
  },
  tables: ["businessIncomeDeduction"],
  law: ["IRC section 199A", "Regulations section 1.199A-1"],
  examples: [{ formula: '=EXT.BUSINESSDEDUCTION(2025,"single",50000,60000)', answer: "10,000.00" }],
  calculate: (given, rules) => {
    const input = {
      ...given,
      status: given.filingStatus,
      qualifiedIncome: given.qualifiedBusinessIncome,
      wages: given.w2Wages,
      property: given.ubia,
      specifiedService: given.sstb,
    };
    return moneyCell(toCents(businessIncomeDeduction(input, rules)));
  },
});

/**
 * Qualified business income deduction for one business, with the W-2 wage, property and SSTB limits.
 *
 * @customfunction BUSINESSDEDUCTION
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year. One cell or a column.
 * @param filingStatus Single (S), married filing jointly (MFJ) or separately (MFS), head of household (HOH), or qualifying surviving spouse (QSS).
 * @param qualifiedBusinessIncome Qualified business income of one business, in dollars.
 * @param taxableIncome Taxable income before this deduction, in dollars.
 * @param [preferentialIncome] Net capital gain and qualified dividends included in taxable income, in dollars. Blank is none.
 * @param [w2Wages] W-2 wages paid by the business, in dollars. Blank is none.
 * @param [ubia] Unadjusted basis immediately after acquisition (UBIA) of qualified property, in dollars. Blank is none.
 * @param [sstb] Yes for a specified service trade or business; blank is no.
 * @returns {any[][]} Dollars and cents.
 */
export function businessDeduction(
  taxYear: unknown[][],
  filingStatus: unknown[][],
  qualifiedBusinessIncome: unknown[][],
  taxableIncome: unknown[][],
  preferentialIncome?: unknown[][],
  w2Wages?: unknown[][],
  ubia?: unknown[][],
  sstb?: unknown[][]
): unknown[][];
export function businessDeduction(...cells: unknown[]): unknown[][] {
  return BUSINESSDEDUCTION.answer(cells);
}

const CHILDCREDIT = rowFunction({
  arguments: {
    taxYear,
    filingStatus,
    qualifyingChildren: count(MOST_CHILDREN),
    otherDependents: count(MOST_CHILDREN),
    agi: optional(dollars, ZERO),
  },
  tables: ["childTaxCredit"],
  law: ["IRC section 24(a), (b), (h)"],
  examples: [{ formula: '=EXT.CHILDCREDIT(2025,"joint",2,0,410001)', answer: "3,850.00" }],
  calculate: ({ taxYear: year, filingStatus: status, ...given }, rules) =>
    moneyCell(
      childTaxCredit(
        year,
        status,
        given.qualifyingChildren,
        given.otherDependents,
        given.agi,
        rules
      )
    ),
});

/**
 * Child tax credit and credit for other dependents after the income phaseout, before the limit to the tax owed.
 *
 * @customfunction CHILDCREDIT
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year. One cell or a column.
 * @param filingStatus Single (S), married filing jointly (MFJ) or separately (MFS), head of household (HOH), or qualifying surviving spouse (QSS).
 * @param qualifyingChildren Number of qualifying children under age 17. Blank is none.
 * @param [otherDependents] Number of other dependents. Blank is none.
 * @param [agi] Modified adjusted gross income, in dollars. Blank is 0.
 * @returns {any[][]} Whole dollars. The refundable part is not calculated.
 */
export function childCredit(
  taxYear: unknown[][],
  filingStatus: unknown[][],
  qualifyingChildren: unknown[][],
  otherDependents?: unknown[][],
  agi?: unknown[][]
): unknown[][];
export function childCredit(...cells: unknown[]): unknown[][] {
  return CHILDCREDIT.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const deductionFunctions = { STANDARDDEDUCTION, BUSINESSDEDUCTION, CHILDCREDIT };
