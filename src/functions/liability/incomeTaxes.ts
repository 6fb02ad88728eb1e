import { alternativeMinimumTax } from "../../calculation/liability/alternativeMinimumTax";
import { incomeTax as incomeTaxOf } from "../../calculation/liability/incomeTax";
import { toCents, ZERO } from "../../money/dollars";
import { optional } from "../arguments/argumentKind";
import { dollars } from "../arguments/dollars";
import { taxYear } from "../arguments/taxYear";
import { filingStatus } from "../arguments/words";
import { moneyCell } from "../cells/answerCell";
import { rowFunction } from "../worksheetFunction";

const INCOMETAX = rowFunction({
  arguments: {
    taxYear,
    filingStatus,
    taxableIncome: dollars,
    preferentialIncome: optional(dollars, ZERO),
  },
  tables: ["incomeTaxRates", "taxTable", "capitalGainRates"],
  law: ["IRC sections 1(h), (j) and 3", "Form 1040 instructions, line 16"],
  examples: [
    {
      formula: '=EXT.INCOMETAX(2025,"single",99999.99)',
      answer: "16,909.00",
      remark: "from the Tax Table",
    },
    {
      formula: '=EXT.INCOMETAX(2025,"single",100000)',
      answer: "16,914.00",
      remark: "from the worksheet",
    },
  ],
  calculate: (given, rules) => {
    const { taxableIncome, preferentialIncome } = given;
    return moneyCell(
      toCents(
        incomeTaxOf(given.taxYear, given.filingStatus, taxableIncome, preferentialIncome, rules)
      )
    );
  },
});

/**
 * Income tax for Form 1040, line 16, from the Tax Table or worksheet, with capital gain rates where they apply.
 *
 * @customfunction INCOMETAX
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year. One cell or a column.
 * @param filingStatus Single (S), married filing jointly (MFJ) or separately (MFS), head of household (HOH), or qualifying surviving spouse (QSS).
 * @param taxableIncome Taxable income, in dollars.
 * @param [preferentialIncome] Net long-term capital gain and qualified dividends included in it, in dollars. Blank is none.
 * @returns {any[][]} Whole dollars from the Tax Table; dollars and cents from the worksheet.
 */
export function incomeTax(
  taxYear: unknown[][],
  filingStatus: unknown[][],
  taxableIncome: unknown[][],
  preferentialIncome?: unknown[][]
): unknown[][];
export function incomeTax(...cells: unknown[]): unknown[][] {
  return INCOMETAX.answer(cells);
}

const MINIMUMTAX = rowFunction({
  arguments: {
    taxYear,
    filingStatus,
    taxableIncome: dollars,
    amtAdjustments: dollars,
    preferentialIncome: optional(dollars, ZERO),
  },
  tables: ["alternativeMinimumTax", "capitalGainRates", "incomeTaxRates", "taxTable"],
  law: ["IRC sections 55 and 56(b)(1)", "Form 6251"],
  examples: [{ formula: '=EXT.MINIMUMTAX(2025,"single",150000,15750)', answer: "0.00" }],
  calculate: ({ filingStatus: status, ...given }, rules) =>
    moneyCell(toCents(alternativeMinimumTax({ ...given, status }, rules))),
});

/**
 * Alternative minimum tax (AMT): the tentative minimum tax in excess of the regular tax.
 *
 * @customfunction MINIMUMTAX
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year. One cell or a column.
 * @param filingStatus Single (S), married filing jointly (MFJ) or separately (MFS), head of household (HOH), or qualifying surviving spouse (QSS).
 * @param taxableIncome Taxable income, in dollars.
 * @param amtAdjustments Amounts added back for the AMT, in dollars: the standard deduction or state taxes, and preference items.
 * @param [preferentialIncome] Net long-term capital gain and qualified dividends included in taxable income, in dollars. Blank is none.
 * @returns {any[][]} Dollars and cents.
 */
export function minimumTax(
  taxYear: unknown[][],
  filingStatus: unknown[][],
  taxableIncome: unknown[][],
  amtAdjustments: unknown[][],
  preferentialIncome?: unknown[][]
): unknown[][];
export function minimumTax(...cells: unknown[]): unknown[][] {
  return MINIMUMTAX.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const incomeTaxes = { INCOMETAX, MINIMUMTAX };
