import { chargeLines, type ChargeKind } from "../../calculation/penalty/chargeLines";
import type { Charges } from "../../calculation/penalty/charges";
import { ZERO } from "../../money/dollars";
import {
  BLANK,
  cellOrBlank,
  dateCell,
  moneyCell,
  percentCell,
  rateCitation,
  type AnswerCell,
  type AnswerTable,
} from "../cells/answerCell";

const HEADINGS = [
  "Item",
  "From",
  "Through",
  "Months",
  "Days",
  "Rate",
  "Computed on",
  "Amount",
  "Source",
];

/** The text of each kind of line in the first column. */
export const CHARGE_LABELS: Readonly<Record<ChargeKind, string>> = {
  "failure-to-file penalty": "Failure-to-file penalty",
  "less failure-to-pay penalty": "Less failure-to-pay penalty for the same months",
  "increase to minimum penalty": "Increase to minimum penalty (more than 60 days late)",
  "failure-to-pay penalty": "Failure-to-pay penalty",
  "reasonable cause": "No failure-to-pay penalty: 90% paid, reasonable cause",
  "interest on tax": "Interest on the tax",
  "interest on failure-to-file penalty": "Interest on the failure-to-file penalty",
};

const plain = (count: number): AnswerCell => count;

/** The calculation of penalties and interest: headings, then one row per line, or one row that says there are none. */
export function chargeTable(charges: Charges): AnswerTable {
  const rows = chargeLines(charges).map(
    ({ kind, from, to, months, days, rate, base, amount, source }): AnswerCell[] => [
      CHARGE_LABELS[kind],
      cellOrBlank(from, dateCell),
      cellOrBlank(to, dateCell),
      cellOrBlank(months, plain),
      cellOrBlank(days, plain),
      cellOrBlank(rate, percentCell),
      cellOrBlank(base, moneyCell),
      moneyCell(amount),
      rateCitation(source),
    ]
  );
  if (rows.length > 0) return [HEADINGS, ...rows];
  const blanks = HEADINGS.slice(1, -2).map(() => BLANK);
  const none = "Filed and paid on time. No penalties or interest.";
  return [HEADINGS, [none, ...blanks, moneyCell(ZERO), BLANK]];
}
