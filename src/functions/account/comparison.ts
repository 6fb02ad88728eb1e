import { effectiveAnnualRate } from "../../calculation/account/effectiveAnnualRate";
import { charges } from "../../calculation/penalty/charges";
import { costOfPayingLate } from "../../calculation/penalty/costOfPayingLate";
import {
  BEFORE_NOTICE,
  chargesInput,
  chargesInputOf,
  chargesTables,
  lateness,
} from "../arguments/chargesInput";
import { dollars } from "../arguments/dollars";
import { INTEREST_OUT_OF_COUNTRY, POSTPONEMENT_IN_WEEKEND } from "../arguments/openQuestions";
import { dateRange, dollarRange } from "../arguments/ranges";
import { taxYear } from "../arguments/taxYear";
import { dateCell, moneyCell, percentCell } from "../cells/answerCell";
import { rowFunction, tableFunction } from "../worksheetFunction";

/** A hundredth of a percent. */
const RATE_PLACES = 4;

const WHATIF = tableFunction({
  arguments: {
    taxYear,
    totalTax: dollars,
    paidOnTime: dollars,
    extraPayments: dollarRange,
    dates: dateRange,
    ...lateness,
  },
  tables: chargesTables,
  law: ["IRC sections 6601 and 6651"],
  examples: [
    {
      formula: '=EXT.WHATIF(2025,20000,15000,{0;3000},{"4/15/2026","10/15/2026"},"yes")',
      answer: "317.81",
      remark: "without an extra payment, if the return is filed and the balance paid on 10/15/2026",
    },
  ],
  note: `${BEFORE_NOTICE} ${INTEREST_OUT_OF_COUNTRY} ${POSTPONEMENT_IN_WEEKEND}`,
  calculate: ({ extraPayments, dates, ...given }, rules) => [
    ["Extra payment", ...dates.map(dateCell)],
    ...extraPayments.map((extra) => {
      const paidOnTime = given.paidOnTime.plus(extra);
      const costs = dates.map((date) => {
        const input = chargesInputOf({ ...given, paidOnTime, paidOn: date, filedOn: date });
        return moneyCell(charges(input, rules).total);
      });
      return [moneyCell(extra), ...costs];
    }),
  ],
});

/**
 * Table of penalties and interest for each extra payment (down) and each date of filing and paying (across).
 *
 * @customfunction WHATIF
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year.
 * @param totalTax Total tax on the return, in dollars.
 * @param paidOnTime Total paid by the payment due date, without the extra payment.
 * @param extraPayments Extra payments to compare, in dollars: one cell or a range.
 * @param dates Dates to compare, on which the return is filed and the balance paid: one cell or a range.
 * @param [validExtension] Yes if a valid request was made on time; blank is no.
 * @param [state] Postal code or name of the state of residence, or foreign.
 * @param [filerType] Blank or resident; out of country (line 8); nonresident (Form 1040-NR, line 9).
 * @param [assumedRate] Annual interest rate for dates after the last published quarter: a percent such as 7%, or latest.
 * @param [agreementOn] Date the IRS accepts an installment agreement; used only if the return is filed on time.
 * @param [postponementBegins] First date of the disaster postponement period announced for the client's address.
 * @param [postponementEnds] Last date of that period; deadlines inside the period move to this date.
 * @returns {any[][]} Dates in the first row, extra payments in the first column, dollars and cents between. Fills several cells; not for use inside an Excel table.
 */
export function whatIf(
  taxYear: unknown,
  totalTax: unknown,
  paidOnTime: unknown,
  extraPayments: unknown[][],
  dates: unknown[][],
  validExtension?: unknown,
  state?: unknown,
  filerType?: unknown,
  assumedRate?: unknown,
  agreementOn?: unknown,
  postponementBegins?: unknown,
  postponementEnds?: unknown
): unknown[][];
export function whatIf(...cells: unknown[]): unknown[][] {
  return WHATIF.answer(cells);
}

const EFFECTIVERATE = rowFunction({
  arguments: chargesInput,
  tables: chargesTables,
  law: ["IRC sections 6601 and 6651"],
  examples: [
    {
      formula: '=EXT.EFFECTIVERATE(2025,20000,18500,"10/15/2026","10/15/2026","yes")',
      answer: "6.81%",
    },
  ],
  note: `The rate of paying late: failure-to-pay penalty and interest on the tax. The failure-to-file penalty and the interest on it are left out, because late filing causes them no matter when the tax is paid. ${BEFORE_NOTICE} ${INTEREST_OUT_OF_COUNTRY} ${POSTPONEMENT_IN_WEEKEND}`,
  calculate: (given, rules) => {
    const input = chargesInputOf(given);
    const cost = costOfPayingLate(charges(input, rules));
    const unpaid = input.totalTax.minus(input.paidOnTime);
    const due = input.dates.payment.countedFrom;
    const rate = effectiveAnnualRate(cost, unpaid, due, given.paidOn);
    return percentCell(rate.toDecimalPlaces(RATE_PLACES));
  },
});

/**
 * Effective annual rate of paying late, to compare with a loan: failure-to-pay penalty and interest, without failure-to-file penalty.
 *
 * @customfunction EFFECTIVERATE
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year. One cell or a column.
 * @param totalTax Total tax on the return, in dollars.
 * @param paidOnTime Total paid by the payment due date: withholding, estimated tax payments, credits and payment with the request.
 * @param paidOn Date the remaining balance is paid.
 * @param filedOn Date the return is filed.
 * @param [validExtension] Yes if a valid request was made on time; blank is no.
 * @param [state] Postal code or name of the state of residence, or foreign.
 * @param [filerType] Blank or resident; out of country (line 8); nonresident (Form 1040-NR, line 9).
 * @param [assumedRate] Annual interest rate for dates after the last published quarter: a percent such as 7%, or latest.
 * @param [agreementOn] Date the IRS accepts an installment agreement; used only if the return is filed on time.
 * @param [postponementBegins] First date of the disaster postponement period announced for the client's address.
 * @param [postponementEnds] Last date of that period; deadlines inside the period move to this date.
 * @returns {any[][]} An annual rate as a percent, to a hundredth of a percent; 0 if paying late costs nothing.
 */
export function effectiveRate(
  taxYear: unknown[][],
  totalTax: unknown[][],
  paidOnTime: unknown[][],
  paidOn: unknown[][],
  filedOn: unknown[][],
  validExtension?: unknown[][],
  state?: unknown[][],
  filerType?: unknown[][],
  assumedRate?: unknown[][],
  agreementOn?: unknown[][],
  postponementBegins?: unknown[][],
  postponementEnds?: unknown[][]
): unknown[][];
export function effectiveRate(...cells: unknown[]): unknown[][] {
  return EFFECTIVERATE.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const comparisonFunctions = { WHATIF, EFFECTIVERATE };
