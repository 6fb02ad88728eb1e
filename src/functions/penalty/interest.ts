import { shortDate } from "../../calendar/writtenDate";
import { underpaymentInterest } from "../../calculation/penalty/underpaymentInterest";
import { underpaymentRate } from "../../calculation/penalty/underpaymentRate";
import { toCents } from "../../money/dollars";
import { date } from "../arguments/date";
import { dollars } from "../arguments/dollars";
import { assumedRate } from "../arguments/percent";
import { moneyCell, percentCell } from "../cells/answerCell";
import { InputError } from "../cells/inputError";
import { rowFunction } from "../worksheetFunction";

const UNDERPAYRATE = rowFunction({
  arguments: { date, assumedRate },
  tables: ["underpaymentRate"],
  law: ["IRC section 6621(a)(2)"],
  examples: [{ formula: '=EXT.UNDERPAYRATE("4/16/2026")', answer: "6.00%" }],
  calculate: (given, { underpaymentRate: table }) =>
    percentCell(underpaymentRate(given.date, { table, assumedRate: given.assumedRate }).rate),
});

/**
 * Annual underpayment interest rate in effect on a date; interest compounds daily.
 *
 * @customfunction UNDERPAYRATE
 * @param date Date on which the rate is in effect. One cell or a column.
 * @param [assumedRate] Annual interest rate for dates after the last published quarter: a percent such as 7%, or latest.
 * @returns {any[][]} An annual rate as a percent.
 */
export function underpayRate(date: unknown[][], assumedRate?: unknown[][]): unknown[][];
export function underpayRate(...cells: unknown[]): unknown[][] {
  return UNDERPAYRATE.answer(cells);
}

const INTEREST = rowFunction({
  arguments: { amount: dollars, dueOn: date, paidOn: date, assumedRate },
  tables: ["underpaymentRate"],
  law: ["IRC sections 6601(a) and 6622", "Regulations section 301.6622-1"],
  examples: [{ formula: '=EXT.INTEREST(10000,"4/15/2002","6/30/2002")', answer: "125.70" }],
  calculate: ({ amount, dueOn, paidOn, assumedRate: assumed }, { underpaymentRate: table }) => {
    if (paidOn < dueOn)
      throw new InputError(
        "paidOn",
        `${shortDate(paidOn)} is before dueOn, ${shortDate(dueOn)}. Correct one of the two dates.`
      );
    const rates = { table, assumedRate: assumed };
    return moneyCell(toCents(underpaymentInterest(amount, dueOn, [], paidOn, rates).amount));
  },
});

/**
 * Underpayment interest from the due date to the payment date, compounded daily at the rates in effect.
 *
 * @customfunction INTEREST
 * @param amount Unpaid amount, in dollars.
 * @param dueOn Date from which interest accrues: the payment due date.
 * @param paidOn Date the amount is paid.
 * @param [assumedRate] Annual interest rate for dates after the last published quarter: a percent such as 7%, or latest.
 * @returns {any[][]} Dollars and cents.
 */
export function interest(
  amount: unknown[][],
  dueOn: unknown[][],
  paidOn: unknown[][],
  assumedRate?: unknown[][]
): unknown[][];
export function interest(...cells: unknown[]): unknown[][] {
  return INTEREST.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const interestFunctions = { UNDERPAYRATE, INTEREST };
