import { underpaymentInterest } from "../calculation/penalty/underpaymentInterest";
import { underpaymentRate } from "../calculation/penalty/underpaymentRate";
import { InputError } from "../inputError";
import { toCents } from "../money/dollars";
import { rulebook } from "../rules/rulebook";
import { day as readDay } from "./dayArguments";
import { assumedRate as readAssumedRate, money } from "./moneyArguments";
import { fractionCell, moneyCell } from "./results";
import { answerRows } from "./rows";

/**
 * The yearly rate of interest on unpaid tax in force on a day, compounded daily.
 *
 * @customfunction UNDERPAYRATE
 * @param day Any day; one cell or a column.
 * @param [assumedRate] Rate for days beyond the last published quarter: a fraction a year such as 7%, or latest. Left out, such days are refused.
 * @returns {any[][]} A fraction a year, such as 0.07.
 * @throws `#VALUE!` for an argument that cannot be read; `#N/A` for a day without a published rate.
 * @see 26 U.S.C. 6621(a)(2)
 * @example =EXT.UNDERPAYRATE("2026-04-16") is 6.00%
 */
export function underpayRate(day: unknown[][], assumedRate?: unknown[][]): unknown[][] {
  return answerRows({ day, assumedRate }, (cells) => {
    const assumed = readAssumedRate("assumedRate", cells.assumedRate);
    const rates = { table: rulebook.underpaymentRate, assumedRate: assumed };
    return fractionCell(underpaymentRate(readDay("day", cells.day), rates).rate);
  });
}

/**
 * Interest on an amount from the day it was due to the day it is paid, compounded daily over every rate on the way.
 *
 * @customfunction INTEREST
 * @param amount Dollars unpaid; one cell or a column.
 * @param from The day they were due; it bears no interest.
 * @param to The day they are paid; it bears interest.
 * @param [assumedRate] Rate for days beyond the last published quarter: a fraction a year such as 7%, or latest.
 * @returns {any[][]} Dollars and cents.
 * @throws `#VALUE!` for an argument that cannot be read or days in the wrong order; `#N/A` for a day without a published rate.
 * @see 26 U.S.C. 6601(a), 6622; 26 CFR 301.6622-1
 * @example =EXT.INTEREST(10000,"2002-04-15","2002-06-30") is 125.70
 */
export function interest(
  amount: unknown[][],
  from: unknown[][],
  to: unknown[][],
  assumedRate?: unknown[][]
): unknown[][] {
  return answerRows({ amount, from, to, assumedRate }, (cells) => {
    const owed = money("amount", cells.amount);
    const due = readDay("from", cells.from);
    const paid = readDay("to", cells.to);
    if (paid < due) throw new InputError("to", `${paid} is before from, ${due}`);
    const assumed = readAssumedRate("assumedRate", cells.assumedRate);
    const rates = { table: rulebook.underpaymentRate, assumedRate: assumed };
    return moneyCell(toCents(underpaymentInterest(owed, due, [], paid, rates).amount));
  });
}
