import type { EstimatedTaxPenalty } from "../../calculation/estimatedTax/estimatedTaxPenalty";
import { shortDate } from "../../calendar/writtenDate";
import { ZERO } from "../../money/dollars";
import type { Source } from "../../rules/source";
import {
  BLANK,
  dateCell,
  moneyCell,
  percentCell,
  rateCitation,
  type AnswerCell,
  type AnswerTable,
} from "../cells/answerCell";

const SMALL_BALANCE = "IRC section 6654(e)(1)";
const EARLY_RETURN = "IRC section 6654(h)";
const FARMERS_RETURN = "IRC section 6654(i)(1)(D)";
const NOT_CALCULATED_LAW = "IRC section 6654(e)(3), (g)(1), (k)(2)";

const HEADINGS = ["Installment", "Amount", "From", "Through", "Days", "Rate", "Penalty", "Source"];

/** The citation of a line's rate: the first and the last ruling where several quarters have one rate. */
function rulings(sources: readonly Source[]): string {
  const first = sources[0];
  const last = sources.at(-1);
  return first === last ? rateCitation(first) : [first, last].map(rateCitation).join(" to ");
}

/** A row of text and source, with an amount where it is the whole answer. */
const remark = (text: string, source: string, amount: AnswerCell = BLANK): AnswerTable[number] => [
  text,
  ...Array.from({ length: HEADINGS.length - 3 }, () => BLANK),
  amount,
  source,
];

const NOT_CALCULATED =
  "Not calculated: waivers for casualty, disaster or other unusual circumstances, or for retirement after age 62 or disability; short tax years; withholding on its actual dates, unless you enter it as payments.";

/**
 * The calculation of the estimated tax penalty: headings, then one row per line, or one row that says there is none. The exception
 * for an early return has a row below, and where there is a penalty the last row names what is not calculated.
 *
 * @param penalty - The penalty.
 * @param isExcepted - Too little tax remains after withholding for a penalty.
 * @param isFarmer - The exception for an early return is that of farmers and fishermen.
 */
export function estimatedTaxPenaltyTable(
  { lines, earlyReturnBy }: EstimatedTaxPenalty,
  isExcepted: boolean,
  isFarmer: boolean
): AnswerTable {
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
  const none = isExcepted
    ? remark("No penalty: small balance after withholding", SMALL_BALANCE, moneyCell(ZERO))
    : remark("No penalty", BLANK, moneyCell(ZERO));
  const early =
    earlyReturnBy === undefined
      ? []
      : [
          remark(
            `No penalty on the last installment: filed and paid by ${shortDate(earlyReturnBy)}`,
            isFarmer ? FARMERS_RETURN : EARLY_RETURN
          ),
        ];
  if (rows.length === 0) return [HEADINGS, none, ...early];
  return [HEADINGS, ...rows, ...early, remark(NOT_CALCULATED, NOT_CALCULATED_LAW)];
}
