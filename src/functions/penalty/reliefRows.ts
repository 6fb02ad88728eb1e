import type { Charges } from "../../calculation/penalty/charges";
import type { CleanHistoryRule } from "../../calculation/penalty/cleanHistoryRule";
import { likelyRelief } from "../../calculation/penalty/likelyRelief";
import { toCents, ZERO, type Decimal } from "../../money/dollars";
import { BLANK, citation, moneyCell, type AnswerTable } from "../cells/answerCell";
import { CONTINUES, likelyBy, NOTHING_TO_REMOVE } from "./reliefWords";

/** Blank cells from the second column to the one before the amount. */
const BETWEEN = Array.from({ length: 6 }, () => BLANK);

/**
 * The rows below the penalties and interest of a client with a clean history: the total, what relief would likely remove, what would
 * remain, and what to know about it. No rows if there are no penalties or interest.
 */
export function reliefRows(charged: Charges, rule: CleanHistoryRule): AnswerTable {
  if (charged.total.isZero()) return [];
  const parts = {
    failureToFile: toCents(charged.failureToFile.amount),
    failureToPay: toCents(charged.failureToPay.amount),
    interestOnPenalties: toCents(charged.interestOnPenalty.amount),
    interestOnTax: toCents(charged.interestOnTax.amount),
  };
  const { removed, remaining } = likelyRelief(parts);
  const source = citation(rule.source);
  const total = ["Total penalties and interest", ...BETWEEN, moneyCell(charged.total), BLANK];
  const note = (text: string, of: string): AnswerTable => [[text, ...BETWEEN, BLANK, of]];
  if (removed.isZero()) return [total, ...note(NOTHING_TO_REMOVE, source)];
  const relief = (what: string, amount: Decimal): AnswerTable =>
    amount.isZero()
      ? []
      : [[`Likely relief: ${what}`, ...BETWEEN, moneyCell(ZERO.minus(amount)), source]];
  const lastOfPaying = charged.failureToPay.periods.at(-1);
  return [
    total,
    ...relief("failure-to-file penalty", parts.failureToFile),
    ...relief("failure-to-pay penalty", parts.failureToPay),
    ...relief("interest on the failure-to-file penalty", parts.interestOnPenalties),
    ["Likely to remain: interest on the tax", ...BETWEEN, moneyCell(remaining), BLANK],
    ...note(likelyBy(rule), source),
    ...(lastOfPaying ? note(CONTINUES, citation(lastOfPaying.source)) : []),
  ];
}
