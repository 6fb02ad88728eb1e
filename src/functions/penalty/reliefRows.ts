import type { Charges } from "../../calculation/penalty/charges";
import type { CleanHistoryRule } from "../../calculation/penalty/cleanHistoryRule";
import { likelyRelief } from "../../calculation/penalty/likelyRelief";
import type { Decimal } from "../../money/dollars";
import { BLANK, citation, moneyCell, type AnswerTable } from "../cells/answerCell";

/** Blank cells from the second column to the one before the amount. */
const BETWEEN = Array.from({ length: 6 }, () => BLANK);

/**
 * The rows below the penalties and interest of a client with a clean history: the total, what relief would likely remove, what would
 * remain, and what to know about it. No rows if there are no penalties or interest.
 */
export function reliefRows(charged: Charges, rule: CleanHistoryRule): AnswerTable {
  if (charged.total.isZero()) return [];
  const relief = likelyRelief(charged);
  const source = citation(rule.source);
  const total = ["Total penalties and interest", ...BETWEEN, moneyCell(charged.total), BLANK];
  const noted = (text: string, of: string): AnswerTable => [[text, ...BETWEEN, BLANK, of]];
  if (relief.removed.isZero())
    return [
      total,
      ...noted("No penalty that relief could remove. Interest on the tax stays", source),
    ];
  const removed = (what: string, amount: Decimal): AnswerTable =>
    amount.isZero()
      ? []
      : [[`Likely relief: ${what}`, ...BETWEEN, moneyCell(amount.negated()), source]];
  const paying = charged.failureToPay.periods.at(-1);
  return [
    total,
    ...removed("failure-to-file penalty", relief.failureToFile),
    ...removed("failure-to-pay penalty", relief.failureToPay),
    ...removed("interest on the failure-to-file penalty", relief.interestOnPenalty),
    ["Likely to remain: interest on the tax", ...BETWEEN, moneyCell(relief.remaining), BLANK],
    ...noted(`Relief is likely, but not certain: ${rule.name}`, source),
    ...(paying
      ? noted(
          "The failure-to-pay penalty continues until the tax is paid. Ask for relief after that",
          citation(paying.source)
        )
      : []),
  ];
}
