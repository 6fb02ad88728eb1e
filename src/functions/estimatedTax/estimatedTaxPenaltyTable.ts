import type { EstimatedTaxPenalty } from "../../calculation/estimatedTax/estimatedTaxPenalty";
import { ZERO } from "../../money/dollars";
import type { Source } from "../../rules/source";
import {
  BLANK,
  dateCell,
  moneyCell,
  percentCell,
  rateCitation,
  type AnswerTable,
} from "../cells/answerCell";

const HEADINGS = ["Installment", "Amount", "From", "Through", "Days", "Rate", "Penalty", "Source"];

/** The citation of a line's rate: the first and the last ruling where several quarters have one rate. */
function rulings(sources: readonly Source[]): string {
  const first = sources[0];
  const last = sources.at(-1);
  return first === last ? rateCitation(first) : [first, last].map(rateCitation).join(" to ");
}

/** The calculation of the estimated tax penalty: headings, then one row per line, or one row that says there is none. */
export function estimatedTaxPenaltyTable({ lines }: EstimatedTaxPenalty): AnswerTable {
  if (lines.length === 0)
    return [HEADINGS, ["No penalty", BLANK, BLANK, BLANK, BLANK, BLANK, moneyCell(ZERO), BLANK]];
  const rows = lines.map(({ installment, amount, from, to, days, rate, penalty, sources }) => [
    installment,
    moneyCell(amount),
    dateCell(from),
    dateCell(to),
    days,
    percentCell(rate),
    moneyCell(penalty),
    rulings(sources),
  ]);
  return [HEADINGS, ...rows];
}
