import type { LedgerRow } from "../../calculation/account/ledger";
import type { CleanHistoryRule } from "../../calculation/penalty/cleanHistoryRule";
import { likelyRelief } from "../../calculation/penalty/likelyRelief";
import { atLeastZero, ZERO } from "../../money/dollars";
import type { Source } from "../../rules/source";
import { BLANK, citation, moneyCell, type AnswerTable } from "../cells/answerCell";
import { CONTINUES, likelyBy, NOTHING_TO_REMOVE } from "../penalty/reliefWords";

/** Blank cells for the columns from the amount to the overpayment. */
const BLANKS = Array.from({ length: 8 }, () => BLANK);

/**
 * The rows below the payment history of a client with a clean history: what relief would likely remove of the last row, what would
 * remain, and what to know about it. What was paid beyond the tax then pays the interest that remains. No rows if there are no
 * penalties or interest.
 *
 * @param last - The last row of the history.
 * @param rule - The relief that applies to the tax year.
 * @param ofPaying - The law of the failure-to-pay penalty.
 */
export function ledgerReliefRows(
  last: LedgerRow,
  rule: CleanHistoryRule,
  ofPaying: Source
): AnswerTable {
  const { failureToFile, failureToPay, interest, interestOnPenalties } = last;
  const charged = failureToFile.plus(failureToPay).plus(interest);
  if (charged.isZero()) return [];
  const interestOnTax = interest.minus(interestOnPenalties);
  const { removed, remaining } = likelyRelief({
    failureToFile,
    failureToPay,
    interestOnPenalties,
    interestOnTax,
  });
  const source = citation(rule.source);
  const note = (text: string, of: string): AnswerTable => [[BLANK, text, ...BLANKS, of]];
  if (removed.isZero()) return note(NOTHING_TO_REMOVE, source);
  const paidBeyondTax = charged.minus(last.unpaidPenaltiesAndInterest).plus(last.overpayment);
  return [
    [
      BLANK,
      "Likely relief: both penalties and the interest on them",
      BLANK,
      BLANK,
      moneyCell(ZERO.minus(failureToFile)),
      moneyCell(ZERO.minus(failureToPay)),
      moneyCell(ZERO.minus(interestOnPenalties)),
      moneyCell(ZERO.minus(removed)),
      BLANK,
      BLANK,
      source,
    ],
    [
      BLANK,
      "Likely to remain: interest on the tax",
      BLANK,
      moneyCell(last.unpaidTax),
      moneyCell(ZERO),
      moneyCell(ZERO),
      moneyCell(remaining),
      moneyCell(remaining),
      moneyCell(atLeastZero(remaining.minus(paidBeyondTax))),
      moneyCell(atLeastZero(paidBeyondTax.minus(remaining))),
      BLANK,
    ],
    ...note(likelyBy(rule), source),
    ...(failureToPay.isZero() ? [] : note(CONTINUES, citation(ofPaying))),
  ];
}
