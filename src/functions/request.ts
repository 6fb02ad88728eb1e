import { requestLines } from "../calculation/request/requestLines";
import { shortfall as balanceDue } from "../calculation/request/shortfall";
import { suggestedPayment } from "../calculation/request/suggestedPayment";
import { toCents } from "../money/dollars";
import { rulebook } from "../rules/rulebook";
import { cushion as readCushion, money, optionalMoney, paymentAim } from "./moneyArguments";
import { citation, EMPTY, moneyCell, optional, wholeDollarCell, type AnswerTable } from "./results";
import { answerRows, answerTable, singles } from "./rows";
import { filerType as readFiler } from "./wordArguments";

/**
 * Balance due on the request: estimated total tax less payments, never below zero.
 *
 * @customfunction SHORTFALL
 * @param totalTax Estimated total tax in dollars, line 4; one cell or a column.
 * @param payments Withholding, estimates and credits in dollars, line 5, without what is sent with the request.
 * @returns {any[][]} Dollars and cents, line 6.
 * @throws `#VALUE!` for an amount that is empty, negative or no number.
 * @see Form 4868, lines 4 to 6
 * @example =EXT.SHORTFALL(18250,15000) is 3,250.00
 */
export function shortfall(totalTax: unknown[][], payments: unknown[][]): unknown[][] {
  return answerRows({ totalTax, payments }, (cells) =>
    moneyCell(
      toCents(balanceDue(money("totalTax", cells.totalTax), money("payments", cells.payments)))
    )
  );
}

/**
 * What to pay with the request: the whole shortfall, enough for the 90% presumption, or a fraction of the tax, with a cushion and the new year's first estimate.
 *
 * @customfunction SUGGEST
 * @param totalTax Estimated total tax in dollars; one cell or a column.
 * @param payments Withholding, estimates and credits in dollars.
 * @param [target] full (the default), protect (just enough for the 90% presumption against the late-payment addition; interest still runs), or a fraction of total tax such as 95%.
 * @param [cushion] Against an estimate that proves low: a fraction of total tax below 1 such as 5%, or dollars.
 * @param [firstInstallment] First estimate of the new year in dollars, due the same day. With any aim but full, send it as a payment of its own: what goes with the request pays the old year first.
 * @returns {any[][]} Dollars and cents, rounded up to the cent, never below zero.
 * @throws `#VALUE!` for an amount or aim that cannot be read.
 * @see 26 CFR 301.6651-1(c)(3); Rev. Rul. 99-40
 * @example =EXT.SUGGEST(20000,15000) is 5,000.00; =EXT.SUGGEST(20000,15000,"protect") is 3,000.00; =EXT.SUGGEST(20000,15000,"full",5%,2500) is 8,500.00
 */
export function suggest(
  totalTax: unknown[][],
  payments: unknown[][],
  target?: unknown[][],
  cushion?: unknown[][],
  firstInstallment?: unknown[][]
): unknown[][] {
  return answerRows({ totalTax, payments, target, cushion, firstInstallment }, (cells) =>
    moneyCell(
      suggestedPayment(
        {
          totalTax: money("totalTax", cells.totalTax),
          payments: money("payments", cells.payments),
          target: paymentAim("target", cells.target),
          cushion: readCushion("cushion", cells.cushion),
          firstInstallment: optionalMoney("firstInstallment", cells.firstInstallment),
        },
        rulebook
      )
    )
  );
}

/**
 * Lines 4 to 9 of the request in whole dollars, as the form wants them. Spills; put it outside tables.
 *
 * @customfunction LINES
 * @param totalTax Estimated total tax in dollars.
 * @param payments Withholding, estimates and credits in dollars, without what is sent with the request.
 * @param paidWithRequest Dollars sent with the request, 0 if nothing.
 * @param [filerType] Blank or resident; abroad ticks line 8; nonresident ticks line 9.
 * @returns {any[][]} A header row, then a row a line: line, what, dollars, tick, source.
 * @throws `#VALUE!` for an argument that cannot be read.
 * @see Form 4868, lines 4 to 9; 26 U.S.C. 6102(a)
 * @example =EXT.LINES(18249.50,15000.49,3000) gives 18,250, 15,000, 3,250 and 3,000 on lines 4 to 7
 */
export function lines(
  totalTax: unknown,
  payments: unknown,
  paidWithRequest: unknown,
  filerType?: unknown
): unknown[][] {
  return answerTable(["Line", "What", "Dollars", "Tick", "Source"], (): AnswerTable => {
    const cells = singles({ totalTax, payments, paidWithRequest, filerType });
    const filled = requestLines(
      money("totalTax", cells.totalTax),
      money("payments", cells.payments),
      money("paidWithRequest", cells.paidWithRequest),
      readFiler("filerType", cells.filerType),
      rulebook
    );
    return filled.map(({ line, what, amount, checked: ticked, source }) => [
      line,
      what,
      optional(amount, wholeDollarCell),
      ticked ? "X" : EMPTY,
      citation(source),
    ]);
  });
}
