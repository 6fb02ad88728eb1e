import { charges } from "../calculation/penalty/charges";
import { isTimelyRequest } from "../calculation/request/isTimelyRequest";
import { InputError } from "../inputError";
import { ZERO } from "../money/dollars";
import { rulebook } from "../rules/rulebook";
import { cellValue, isBlankOrZero } from "./cells";
import { paidAtOnce } from "./chargeArguments";
import { client, datesOf } from "./client";
import { optionalDay, requireAfterTaxYear } from "./dayArguments";
import { memoSentences } from "./memoSentences";
import { assumedRate as readAssumedRate, money, optionalMoney } from "./moneyArguments";
import { answerRows } from "./rows";
import { memoLength } from "./wordArguments";

const LONGEST_TEXT = 2_000;

/** Words of the preparer, without the full stop that the sentence around them sets. */
function textOf(name: string, cell: unknown): string {
  const value = cellValue(cell);
  if (isBlankOrZero(value)) return "";
  const text = String(value).trim();
  if (text.length > LONGEST_TEXT)
    throw new InputError(
      name,
      `has ${String(text.length)} characters; say it in ${String(LONGEST_TEXT)} or fewer`
    );
  return text.replace(/[\s.]+$/, "");
}

/**
 * The sentences for the client, in plain English: what is asked and until when, what it does not do, what to pay by when, what waiting costs, what is missing.
 *
 * @customfunction MEMO
 * @param taxYear Tax year such as 2025, or the last day of a fiscal year; one cell or a column.
 * @param totalTax Estimated total tax in dollars, line 4.
 * @param payments Withholding, estimates and credits in dollars, line 5.
 * @param [paidWithRequest] Dollars to pay with the request; blank is nothing.
 * @param [length] short (the default) or full.
 * @param [requestedOn] Day the request was made; blank while it is still to be made.
 * @param [plannedFilingDate] Day the return is planned to be filed and the rest paid, for what waiting costs in the full memo; blank is the extended due date.
 * @param [missing] What the client still has to send, in your words.
 * @param [state] Postal code of the state of residence, or foreign.
 * @param [filerType] Blank or resident; abroad; nonresident.
 * @param [assumedRate] Interest rate for days beyond the last published quarter: a fraction a year such as 7%, or latest.
 * @param [postponementBegins] First day of a disaster-relief period announced for the client's address.
 * @param [postponementEnds] Day to which that relief postpones what falls inside it.
 * @returns {any[][]} Text, with its caution; read it before you send it.
 * @throws `#VALUE!` for an argument that cannot be read; `#N/A` for a tax year that is not held and, in the full memo, an interest rate that is not published.
 * @see 26 U.S.C. 6081, 6151(a), 6601, 6651; Form 4868
 * @example =EXT.MEMO(2025,20000,15000,5000) begins: We are asking for more time to file your 2025 federal income tax return, until October 15, 2026.
 */
export function memo(
  taxYear: unknown[][],
  totalTax: unknown[][],
  payments: unknown[][],
  paidWithRequest?: unknown[][],
  length?: unknown[][],
  requestedOn?: unknown[][],
  plannedFilingDate?: unknown[][],
  missing?: unknown[][],
  state?: unknown[][],
  filerType?: unknown[][],
  assumedRate?: unknown[][],
  postponementBegins?: unknown[][],
  postponementEnds?: unknown[][]
): unknown[][] {
  const given = {
    ...{
      taxYear,
      totalTax,
      payments,
      paidWithRequest,
      length,
      requestedOn,
      plannedFilingDate,
      missing,
    },
    ...{ state, filerType, assumedRate, postponementBegins, postponementEnds },
  };
  return answerRows(given, (cells) => {
    const who = client(cells);
    const dates = datesOf(who);
    const tax = money("totalTax", cells.totalTax);
    const paid = money("payments", cells.payments);
    const sent = optionalMoney("paidWithRequest", cells.paidWithRequest) ?? ZERO;
    const size = memoLength("length", cells.length);
    const until =
      optionalDay("plannedFilingDate", cells.plannedFilingDate) ?? dates.extended.lastDay;
    requireAfterTaxYear("plannedFilingDate", until, who.taxYear);
    const requestedOn = optionalDay("requestedOn", cells.requestedOn);
    if (requestedOn !== undefined) requireAfterTaxYear("requestedOn", requestedOn, who.taxYear);
    if (requestedOn !== undefined && !isTimelyRequest(requestedOn, dates.regular))
      throw new InputError(
        "requestedOn",
        `${requestedOn} is after the last day to ask, ${dates.regular.lastDay}; a late request gives no extension to write about`
      );
    const costOfWaiting = () =>
      charges(
        paidAtOnce({
          dates,
          totalTax: tax,
          paidOnTime: paid.plus(sent),
          paidOn: until,
          filedOn: until,
          validExtension: true,
          assumedRate: readAssumedRate("assumedRate", cells.assumedRate),
        }),
        rulebook
      );
    const sentences = memoSentences(
      {
        taxYear: who.taxYear,
        dates,
        totalTax: tax,
        payments: paid,
        paidWithRequest: sent,
        requestedOn,
        missing: textOf("missing", cells.missing),
        waiting: size === "full" ? { until, charges: costOfWaiting() } : undefined,
      },
      size
    );
    return sentences.join(" ");
  });
}
