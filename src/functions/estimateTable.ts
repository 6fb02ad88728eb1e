import type { EstimatedTaxPenalty } from "../calculation/estimatedTax/estimatedTaxPenalty";
import { ZERO } from "../money/dollars";
import type { Source } from "../rules/source";
import { dayCell, EMPTY, fractionCell, moneyCell, rateCitation, type AnswerTable } from "./results";

/** Headings of the working of the addition for underpaid estimates. */
export const ESTIMATE_HEADINGS = [
  "Installment",
  "Amount",
  "From",
  "To",
  "Days",
  "Rate",
  "Addition",
  "Source",
] as const;

/** The law behind the rate of a line: the first and the last ruling where quarters at one rate are one period. */
function rulings(sources: readonly Source[]): string {
  const first = sources[0];
  const last = sources.at(-1);
  return first === last ? rateCitation(first) : [first, last].map(rateCitation).join(" to ");
}

/** The working as cells: a row a line, or one row saying that nothing is charged. */
export function estimateTable({ lines }: EstimatedTaxPenalty): AnswerTable {
  if (lines.length === 0) {
    return [["Nothing charged", EMPTY, EMPTY, EMPTY, EMPTY, EMPTY, moneyCell(ZERO), EMPTY]];
  }
  return lines.map(({ installment, amount, from, to, days, rate, penalty: addition, sources }) => [
    installment,
    moneyCell(amount),
    dayCell(from),
    dayCell(to),
    days,
    fractionCell(rate),
    moneyCell(addition),
    rulings(sources),
  ]);
}
