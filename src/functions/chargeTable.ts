import { chargeLines, type ChargeKind } from "../calculation/penalty/chargeLines";
import type { Charges } from "../calculation/penalty/charges";
import { ZERO } from "../money/dollars";
import {
  dayCell,
  EMPTY,
  fractionCell,
  moneyCell,
  optional,
  rateCitation,
  type AnswerCell,
  type AnswerTable,
} from "./results";

/** Headings of the working of the charges. */
export const CHARGE_HEADINGS = [
  "What",
  "From",
  "To",
  "Months",
  "Days",
  "Rate",
  "Base",
  "Amount",
  "Source",
] as const;

const LABELS: Readonly<Record<ChargeKind, string>> = {
  "failure-to-file penalty": "Failure to file",
  "less failure-to-pay penalty": "Less failure to pay of the same months",
  "increase to minimum penalty": "Up to the minimum for a return over 60 days late",
  "failure-to-pay penalty": "Failure to pay",
  "reasonable cause": "Failure to pay: cause presumed, 90% was paid",
  "interest on tax": "Interest on the tax",
  "interest on failure-to-file penalty": "Interest on failure to file",
};

const plain = (count: number): AnswerCell => count;

/** The working of the charges as cells: a row a line, or one row saying that nothing is charged. */
export function chargeTable(charges: Charges): AnswerTable {
  const rows = chargeLines(charges).map(
    ({ kind, from, to, months, days, rate, base, amount, source }): AnswerCell[] => [
      LABELS[kind],
      optional(from, dayCell),
      optional(to, dayCell),
      optional(months, plain),
      optional(days, plain),
      optional(rate, fractionCell),
      optional(base, moneyCell),
      moneyCell(amount),
      rateCitation(source),
    ]
  );
  if (rows.length > 0) return rows;
  const blanks = CHARGE_HEADINGS.slice(1, -2).map(() => EMPTY);
  return [["Filed and paid on time: nothing charged", ...blanks, moneyCell(ZERO), EMPTY]];
}
