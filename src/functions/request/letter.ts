import { shortDate } from "../../calendar/writtenDate";
import { charges } from "../../calculation/penalty/charges";
import { isTimelyRequest } from "../../calculation/request/isTimelyRequest";
import { ZERO } from "../../money/dollars";
import { optional } from "../arguments/argumentKind";
import { chargesTables, paidAtOnce } from "../arguments/chargesInput";
import { datesOf, postponement, residence } from "../arguments/client";
import { dateAfterYear } from "../arguments/date";
import { dollars } from "../arguments/dollars";
import { assumedRate } from "../arguments/percent";
import { taxYear } from "../arguments/taxYear";
import { text } from "../arguments/text";
import { letterLength } from "../arguments/words";
import { InputError } from "../cells/inputError";
import { rowFunction } from "../worksheetFunction";
import { letterSentences } from "./letterSentences";

const MEMO = rowFunction({
  arguments: {
    taxYear,
    totalTax: dollars,
    payments: dollars,
    paidWithRequest: optional(dollars, ZERO),
    length: letterLength,
    requestedOn: optional(dateAfterYear),
    plannedFilingDate: optional(dateAfterYear),
    stillNeeded: text,
    ...residence,
    assumedRate,
    ...postponement,
  },
  tables: chargesTables,
  law: ["IRC sections 6081, 6151(a), 6601 and 6651", "Form 4868 instructions"],
  examples: [
    {
      formula: "=EXT.MEMO(2025,20000,15000,5000)",
      answer:
        "We are requesting an extension of time, until October 15, 2026, to file your 2025 federal income tax return. An extension of time to file is not an extension of time to pay. Please pay $5,000.00 by April 15, 2026. If you can, pay electronically and mark it as an extension payment. Based on our estimate, that payment covers the tax. These amounts are estimates based on the information we have now. They are not a bill, and the return may show different amounts.",
    },
  ],
  calculate: (given, rules) => {
    const dates = datesOf(given);
    const { totalTax, payments, paidWithRequest, requestedOn } = given;
    const { lastDay } = dates.regular;
    if (requestedOn !== undefined && !isTimelyRequest(requestedOn, dates.regular))
      throw new InputError(
        "requestedOn",
        `${shortDate(requestedOn)} is after the deadline to request the extension, ${shortDate(lastDay)}. A late request gives no extension, so there is no letter.`
      );
    const until = given.plannedFilingDate ?? dates.extended.lastDay;
    const costOfWaiting = paidAtOnce({
      dates,
      totalTax,
      paidOnTime: payments.plus(paidWithRequest),
      paidOn: until,
      filedOn: until,
      validExtension: true,
      assumedRate: given.assumedRate,
    });
    const waiting =
      given.length === "full" ? { until, charges: charges(costOfWaiting, rules) } : undefined;
    return letterSentences({ ...given, dates, waiting }, given.length).join(" ");
  },
});

/**
 * Letter text for the client: new filing date, what to pay and by when, documents needed and, if chosen, the cost of waiting.
 *
 * @customfunction MEMO
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year. One cell or a column.
 * @param totalTax Estimated total tax, line 4, in dollars.
 * @param payments Total payments, line 5, without the amount paid with the request.
 * @param [paidWithRequest] Amount to pay with the request, line 7, in dollars. Blank is none.
 * @param [length] short (default) or full.
 * @param [requestedOn] Date the request was made; blank if you have not made it yet.
 * @param [plannedFilingDate] Date you plan to file the return and the client to pay the balance; blank is the extended due date.
 * @param [stillNeeded] What the client still has to send, in your words.
 * @param [state] Postal code or name of the state of residence, or foreign.
 * @param [filerType] Blank or resident; out of country (line 8); nonresident (Form 1040-NR, line 9).
 * @param [assumedRate] Annual interest rate for dates after the last published quarter: a percent such as 7%, or latest.
 * @param [postponementBegins] First date of the disaster postponement period announced for the client's address.
 * @param [postponementEnds] Last date of that period; deadlines inside the period move to this date.
 * @returns {any[][]} Text. Read it before you send it.
 */
export function memo(
  taxYear: unknown[][],
  totalTax: unknown[][],
  payments: unknown[][],
  paidWithRequest?: unknown[][],
  length?: unknown[][],
  requestedOn?: unknown[][],
  plannedFilingDate?: unknown[][],
  stillNeeded?: unknown[][],
  state?: unknown[][],
  filerType?: unknown[][],
  assumedRate?: unknown[][],
  postponementBegins?: unknown[][],
  postponementEnds?: unknown[][]
): unknown[][];
export function memo(...cells: unknown[]): unknown[][] {
  return MEMO.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const letterFunctions = { MEMO };
