import { estimatedTaxPenalty } from "../calculation/estimatedTax/estimatedTaxPenalty";
import { firstInstallment as firstOf } from "../calculation/estimatedTax/firstInstallment";
import { requiredAnnualPayment as requiredOf } from "../calculation/estimatedTax/requiredAnnualPayment";
import { toCents, ZERO } from "../money/dollars";
import { rulebook } from "../rules/rulebook";
import { taxYear as readTaxYear } from "./dayArguments";
import { estimatesOf } from "./estimateArguments";
import { estimateTable, ESTIMATE_HEADINGS } from "./estimateTable";
import { money, optionalMoney } from "./moneyArguments";
import { moneyCell } from "./results";
import { answered, answerRows, answerTable } from "./rows";
import { filingStatus, yesNo } from "./wordArguments";

/**
 * Required annual payment of estimated tax: the lesser of 90% of this year's tax and 100% of last year's (110% above the income threshold); two thirds of this year's for farmers and fishers.
 *
 * @customfunction REQUIREDPAYMENT
 * @param taxYear Year whose tax is estimated, such as 2026, or the last day of a fiscal year; one cell or a column.
 * @param status Filing status that year: single, joint, separate, head, survivor, or S, MFJ, MFS, HOH, QSS.
 * @param currentYearTax Dollars of that year's tax, expected or known, with self-employment and the other taxes of the return.
 * @param priorYearTax Dollars of tax on last year's return; leave empty if none was filed or the year was shorter than twelve months. 0 means no tax last year, so nothing is required; where your Excel sends an empty cell as 0, leave the argument out.
 * @param priorAdjustedGrossIncome Dollars of last year's adjusted gross income; above 150,000 (75,000 if separate) last year's share is 110%.
 * @param [farmerOrFisherman] Yes if two thirds of gross income, this year or last, is from farming or fishing.
 * @returns {any[][]} Dollars and cents.
 * @throws `#VALUE!` for an argument that cannot be read; `#N/A` for a year before 2003.
 * @see 26 U.S.C. 6654(d)(1)(B), (C), (i)(1)
 * @example =EXT.REQUIREDPAYMENT(2026,"joint",11000,10000,60000) is 9,900.00; =EXT.REQUIREDPAYMENT(2026,"MFJ",30000,20000,160000) is 22,000.00
 */
export function requiredAnnualPayment(
  taxYear: unknown[][],
  status: unknown[][],
  currentYearTax: unknown[][],
  priorYearTax: unknown[][],
  priorAdjustedGrossIncome: unknown[][],
  farmerOrFisherman?: unknown[][]
): unknown[][] {
  const given = {
    taxYear,
    status,
    currentYearTax,
    priorYearTax,
    priorAdjustedGrossIncome,
    farmerOrFisherman,
  };
  return answerRows(given, (cells) => {
    const input = {
      taxYear: readTaxYear("taxYear", cells.taxYear),
      filingStatus: filingStatus("status", cells.status),
      currentYearTax: money("currentYearTax", cells.currentYearTax),
      priorYearTax: optionalMoney("priorYearTax", cells.priorYearTax),
      priorYearAgi: money("priorAdjustedGrossIncome", cells.priorAdjustedGrossIncome),
      farmerOrFisherman: yesNo("farmerOrFisherman", cells.farmerOrFisherman),
    };
    return moneyCell(toCents(requiredOf(input, rulebook)));
  });
}

/**
 * First estimate of a year's tax, due the day the extension of the year before is asked for: a quarter of the required annual payment less withholding, and less the overpayment applied.
 *
 * @customfunction FIRSTINSTALLMENT
 * @param taxYear Year whose tax is estimated, such as 2026, or the last day of a fiscal year; one cell or a column.
 * @param status Filing status that year: single, joint, separate, head, survivor, or S, MFJ, MFS, HOH, QSS.
 * @param expectedTax Dollars of tax expected for that year.
 * @param priorYearTax Dollars of tax on last year's return; leave empty if none is filed or the year was shorter than twelve months; where your Excel sends an empty cell as 0, leave the argument out.
 * @param priorAdjustedGrossIncome Dollars of last year's adjusted gross income.
 * @param [withholding] Dollars expected to be withheld in the year.
 * @param [overpaymentApplied] Dollars of last year's overpayment applied to the year.
 * @param [farmerOrFisherman] Yes if two thirds of gross income is from farming or fishing: then nothing is due in April.
 * @returns {any[][]} Dollars and cents, rounded up to the cent; 0 where the tax after withholding stays below $1,000.
 * @throws `#VALUE!` for an argument that cannot be read; `#N/A` for a year before 2003.
 * @see 26 U.S.C. 6654(c), (d)(1)(A), (e)(1), (g)(1), (i)(1)
 * @example =EXT.FIRSTINSTALLMENT(2026,"joint",24000,20000,120000,8000) is 3,000.00
 */
export function firstInstallment(
  taxYear: unknown[][],
  status: unknown[][],
  expectedTax: unknown[][],
  priorYearTax: unknown[][],
  priorAdjustedGrossIncome: unknown[][],
  withholding?: unknown[][],
  overpaymentApplied?: unknown[][],
  farmerOrFisherman?: unknown[][]
): unknown[][] {
  const given = {
    ...{ taxYear, status, expectedTax, priorYearTax, priorAdjustedGrossIncome },
    ...{ withholding, overpaymentApplied, farmerOrFisherman },
  };
  return answerRows(given, (cells) => {
    const input = {
      taxYear: readTaxYear("taxYear", cells.taxYear),
      filingStatus: filingStatus("status", cells.status),
      currentYearTax: money("expectedTax", cells.expectedTax),
      priorYearTax: optionalMoney("priorYearTax", cells.priorYearTax),
      priorYearAgi: money("priorAdjustedGrossIncome", cells.priorAdjustedGrossIncome),
      withholding: optionalMoney("withholding", cells.withholding) ?? ZERO,
      overpaymentApplied: optionalMoney("overpaymentApplied", cells.overpaymentApplied) ?? ZERO,
      farmerOrFisherman: yesNo("farmerOrFisherman", cells.farmerOrFisherman),
    };
    return moneyCell(firstOf(input, rulebook));
  });
}

/**
 * Addition to tax for underpaid estimates, by the regular method: each installment from its due date until it is paid or until April 15, at the interest rate, not compounded.
 *
 * @customfunction ESTPENALTY
 * @param taxYear Year whose estimates were paid, such as 2025, or the last day of a fiscal year.
 * @param requiredAnnualPayment Dollars of the required annual payment, see REQUIREDPAYMENT.
 * @param withholding Dollars withheld in the year; counted in four equal parts on the due dates.
 * @param payments Estimated payments as rows of day and amount, in any order; an overpayment applied counts on the first due date.
 * @param [paidOn] Day the rest was paid, if before April 15: a payment with the extension ends the addition. Filing and paying by January 31, which clears the fourth installment, is not looked at.
 * @param [assumedRate] Interest rate for days beyond the last published quarter: a fraction a year such as 7%, or latest.
 * @param [currentYearTax] Dollars of the year's tax: if given, nothing is charged where less than $1,000 is left after withholding.
 * @param [farmerOrFisherman] Yes for farmers and fishers: one installment in January of the whole; filing and paying by March 1, which clears it, is not looked at.
 * @param [postponementBegins] First day of a disaster-relief period announced for the client's address.
 * @param [postponementEnds] Day to which that relief postpones the installments inside it.
 * @returns Dollars and cents; each line of the working rounds, as on Form 2210.
 * @throws `#VALUE!` for an argument that cannot be read, naming the row of a payment; `#N/A` for a year or rate that is not held.
 * @see 26 U.S.C. 6654(a), (b), 6621(b)(2)(B), 6622(b)
 * @example =EXT.ESTPENALTY(2025,8000,8000,) is 0.00
 */
export function estimateCharge(
  taxYear: unknown,
  requiredAnnualPayment: unknown,
  withholding: unknown,
  payments: unknown[][],
  paidOn?: unknown,
  assumedRate?: unknown,
  currentYearTax?: unknown,
  farmerOrFisherman?: unknown,
  postponementBegins?: unknown,
  postponementEnds?: unknown
): unknown {
  const cells = {
    ...{ taxYear, requiredAnnualPayment, withholding, payments, paidOn },
    ...{ assumedRate, currentYearTax, farmerOrFisherman, postponementBegins, postponementEnds },
  };
  return answered(() => moneyCell(estimatedTaxPenalty(estimatesOf(cells), rulebook).amount));
}

/**
 * The working of ESTPENALTY: installment, amount, from, to, days, rate, addition, law; the additions add up to it. Spills; put it outside tables.
 *
 * @customfunction ESTPENALTYLINES
 * @param taxYear Year whose estimates were paid, such as 2025, or the last day of a fiscal year.
 * @param requiredAnnualPayment Dollars of the required annual payment, see REQUIREDPAYMENT.
 * @param withholding Dollars withheld in the year; counted in four equal parts on the due dates.
 * @param payments Estimated payments as rows of day and amount, in any order.
 * @param [paidOn] Day the rest was paid, if before April 15.
 * @param [assumedRate] Interest rate for days beyond the last published quarter: a fraction a year such as 7%, or latest.
 * @param [currentYearTax] Dollars of the year's tax: if given, nothing is charged where less than $1,000 is left after withholding.
 * @param [farmerOrFisherman] Yes for farmers and fishers: one installment in January of the whole; filing and paying by March 1, which clears it, is not looked at.
 * @param [postponementBegins] First day of a disaster-relief period announced for the client's address.
 * @param [postponementEnds] Day to which that relief postpones the installments inside it.
 * @returns {any[][]} A header row, then a row for each part of an installment in each rate period.
 * @throws `#VALUE!` for an argument that cannot be read, naming the row of a payment; `#N/A` for a year or rate that is not held.
 * @see 26 U.S.C. 6654(a), (b), 6621(b)(2)(B), 6622(b)
 * @example =EXT.ESTPENALTYLINES(2025,8000,0,{"2025-04-15",6000}) shows one line: 2,000 of the fourth installment for 90 days, 34.52
 */
export function estimateLines(
  taxYear: unknown,
  requiredAnnualPayment: unknown,
  withholding: unknown,
  payments: unknown[][],
  paidOn?: unknown,
  assumedRate?: unknown,
  currentYearTax?: unknown,
  farmerOrFisherman?: unknown,
  postponementBegins?: unknown,
  postponementEnds?: unknown
): unknown[][] {
  const cells = {
    ...{ taxYear, requiredAnnualPayment, withholding, payments, paidOn },
    ...{ assumedRate, currentYearTax, farmerOrFisherman, postponementBegins, postponementEnds },
  };
  return answerTable(ESTIMATE_HEADINGS, () =>
    estimateTable(estimatedTaxPenalty(estimatesOf(cells), rulebook))
  );
}
