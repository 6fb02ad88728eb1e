import { firstInstallment as firstOf } from "../../calculation/estimatedTax/firstInstallment";
import { requiredAnnualPayment } from "../../calculation/estimatedTax/requiredAnnualPayment";
import { toCents, ZERO, type Decimal } from "../../money/dollars";
import { optional, readArgument } from "../arguments/argumentKind";
import { dollars } from "../arguments/dollars";
import { taxYear } from "../arguments/taxYear";
import { filerType, filingStatus } from "../arguments/words";
import { yesNo } from "../arguments/yesNo";
import { moneyCell } from "../cells/answerCell";
import { InputError } from "../cells/inputError";
import { rowFunction } from "../worksheetFunction";

/** Last year's return as the cells give it. */
interface PriorYear {
  readonly priorYearTax: Decimal | undefined;
  readonly priorYearAgi: Decimal | undefined;
}

/**
 * Last year's return. Some versions of Excel send a blank cell as 0, so a tax of 0 counts only beside an adjusted gross income: without
 * one, there was no return.
 *
 * @throws InputError when one of the two is blank and the other is not.
 */
function priorYearOf({ priorYearTax: tax, priorYearAgi: agi }: PriorYear): {
  readonly priorYearTax: Decimal | undefined;
  readonly priorYearAgi: Decimal;
} {
  if (tax === undefined && agi?.greaterThan(0))
    throw new InputError(
      "priorYearTax",
      `The cell is blank, but priorYearAgi is ${agi.toString()}. Enter the tax on last year's return, or clear both if there was none.`
    );
  // Beside a tax the income is needed, so a blank cell is refused as for any other amount.
  const income = agi ?? (tax?.greaterThan(0) ? readArgument(dollars, "priorYearAgi", null) : ZERO);
  const hasReturn = tax?.greaterThan(0) === true || income.greaterThan(0);
  return { priorYearTax: hasReturn ? tax : undefined, priorYearAgi: income };
}

const REQUIREDPAYMENT = rowFunction({
  arguments: {
    taxYear,
    filingStatus,
    currentYearTax: dollars,
    priorYearTax: optional(dollars),
    priorYearAgi: optional(dollars),
    farmerOrFisherman: yesNo,
  },
  tables: ["requiredAnnualPayment"],
  law: ["IRC section 6654(d)(1)(B), (C), (e)(2), (i)(1)"],
  examples: [
    { formula: '=EXT.REQUIREDPAYMENT(2026,"joint",11000,10000,60000)', answer: "9,900.00" },
    {
      formula: '=EXT.REQUIREDPAYMENT(2026,"MFJ",30000,20000,160000)',
      answer: "22,000.00",
      remark: "110% of the prior year tax, because AGI was more than $150,000",
    },
  ],
  note: "Leave `priorYearTax` and `priorYearAgi` blank for a client without a prior year return. A tax of 0 counts only with an AGI above 0: enter it for a client who had no tax liability in a 12-month prior year and was a U.S. citizen or resident for that whole year.",
  calculate: (given, rules) =>
    moneyCell(toCents(requiredAnnualPayment({ ...given, ...priorYearOf(given) }, rules))),
});

/**
 * Required annual payment: 90% of current year tax or 100% (110% for higher AGI) of prior year tax, whichever is less.
 *
 * @customfunction REQUIREDPAYMENT
 * @param taxYear Year the estimated tax is for, such as 2026, or the last date of a fiscal year. One cell or a column.
 * @param filingStatus Single (S), married filing jointly (MFJ) or separately (MFS), head of household (HOH), or qualifying surviving spouse (QSS).
 * @param currentYearTax Tax for that year, expected or known, with self-employment tax and other taxes, in dollars.
 * @param priorYearTax Total tax on last year's return; blank if none was filed for a 12-month year. 0 beside an AGI means no tax, so nothing is required.
 * @param priorYearAgi Adjusted gross income on last year's return, in dollars; blank if none was filed.
 * @param [farmerOrFisherman] Yes if at least 66⅔% of gross income, this year or last, is from farming or fishing; blank is no.
 * @returns {any[][]} Dollars and cents.
 */
export function requiredPayment(
  taxYear: unknown[][],
  filingStatus: unknown[][],
  currentYearTax: unknown[][],
  priorYearTax: unknown[][],
  priorYearAgi: unknown[][],
  farmerOrFisherman?: unknown[][]
): unknown[][];
export function requiredPayment(...cells: unknown[]): unknown[][] {
  return REQUIREDPAYMENT.answer(cells);
}

const FIRSTINSTALLMENT = rowFunction({
  arguments: {
    taxYear,
    filingStatus,
    expectedTax: dollars,
    priorYearTax: optional(dollars),
    priorYearAgi: optional(dollars),
    withholding: optional(dollars, ZERO),
    overpaymentApplied: optional(dollars, ZERO),
    farmerOrFisherman: yesNo,
    filerType,
  },
  tables: ["requiredAnnualPayment"],
  law: ["IRC section 6654(c), (d)(1)(A), (e)(1), (g)(1), (i)(1), (j)"],
  examples: [
    {
      formula: '=EXT.FIRSTINSTALLMENT(2026,"joint",24000,20000,120000,8000)',
      answer: "3,000.00",
    },
    {
      formula: '=EXT.FIRSTINSTALLMENT(2026,"single",24000,20000,120000,,,,"nonresident")',
      answer: "10,000.00",
      remark: "half of the required annual payment, due in June",
    },
  ],
  note: "Leave `priorYearTax` and `priorYearAgi` blank for a client without a prior year return. A tax of 0 counts only with an AGI above 0. For a nonresident the answer is half of the required annual payment less a third of the withholding.",
  calculate: ({ expectedTax, ...given }, rules) =>
    moneyCell(firstOf({ ...given, ...priorYearOf(given), currentYearTax: expectedTax }, rules)),
});

/**
 * First estimated tax installment: a quarter (nonresident: half) of the required payment, less withholding and overpayment.
 *
 * @customfunction FIRSTINSTALLMENT
 * @param taxYear Year the estimated tax is for, such as 2026, or the last date of a fiscal year. One cell or a column.
 * @param filingStatus Single (S), married filing jointly (MFJ) or separately (MFS), head of household (HOH), or qualifying surviving spouse (QSS).
 * @param expectedTax Tax expected for that year, in dollars.
 * @param priorYearTax Total tax on last year's return; blank if none was filed for a 12-month year. 0 beside an AGI means no tax, so nothing is required.
 * @param priorYearAgi Adjusted gross income on last year's return, in dollars; blank if none was filed.
 * @param [withholding] Tax expected to be withheld during the year, in dollars. Blank is none.
 * @param [overpaymentApplied] Overpayment on last year's return applied to that year, in dollars. Blank is none.
 * @param [farmerOrFisherman] Yes if at least 66⅔% of gross income, this year or last, is from farming or fishing; blank is no.
 * @param [filerType] Blank or resident; out of country (line 8); nonresident (Form 1040-NR, line 9).
 * @returns {any[][]} Dollars and cents, rounded up to the cent; 0 if less than $1,000 of tax remains after withholding.
 */
export function firstInstallment(
  taxYear: unknown[][],
  filingStatus: unknown[][],
  expectedTax: unknown[][],
  priorYearTax: unknown[][],
  priorYearAgi: unknown[][],
  withholding?: unknown[][],
  overpaymentApplied?: unknown[][],
  farmerOrFisherman?: unknown[][],
  filerType?: unknown[][]
): unknown[][];
export function firstInstallment(...cells: unknown[]): unknown[][] {
  return FIRSTINSTALLMENT.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const requiredPaymentFunctions = { REQUIREDPAYMENT, FIRSTINSTALLMENT };
