import { charges } from "../../calculation/penalty/charges";
import { ZERO } from "../../money/dollars";
import type { Rulebook } from "../../rules/rulebook";
import { optional, type Given } from "../arguments/argumentKind";
import { chargesTables } from "../arguments/chargesInput";
import { datesOf, postponement, residence } from "../arguments/client";
import { date, dateAfterYear } from "../arguments/date";
import { dollars } from "../arguments/dollars";
import { assumedRate } from "../arguments/percent";
import { record, recordOf } from "../arguments/record";
import { taxYear } from "../arguments/taxYear";
import { text } from "../arguments/text";
import { letterLength } from "../arguments/words";
import { rowFunction, tableFunction } from "../worksheetFunction";
import { letterFacts } from "./letterFacts";
import { letterParagraphs, type LetterParagraph } from "./letterParagraphs";

const letterArguments = {
  taxYear,
  totalTax: dollars,
  payments: dollars,
  paidWithRequest: optional(dollars, ZERO),
  asOf: date,
  ...record,
  paidOn: optional(date),
  plannedFilingDate: optional(dateAfterYear),
  plannedPaymentDate: optional(dateAfterYear),
  length: letterLength,
  stillNeeded: text,
  ...residence,
  assumedRate,
  ...postponement,
};
const letterTables = [...chargesTables, "perfectionPeriod", "requestMethods"] as const;
const LAW = [
  "IRC sections 6081, 6151(a), 6601 and 6651",
  "Regulations section 1.6081-4",
  "Form 4868 instructions",
  "Pub. 1345, rejected returns",
];

/** The paragraphs of the letter, with the cost in the full letter only. */
function paragraphsOf(
  given: Given<typeof letterArguments>,
  rules: Pick<Rulebook, (typeof letterTables)[number]>
): readonly LetterParagraph[] {
  const input = { ...given, dates: datesOf(given), record: recordOf(given) };
  const facts = letterFacts(input, rules);
  const cost = given.length === "full" ? charges(facts.plan, rules).total : undefined;
  return letterParagraphs(facts, { cost, stillNeeded: given.stillNeeded });
}

const MEMO = rowFunction({
  arguments: letterArguments,
  tables: letterTables,
  law: LAW,
  examples: [
    {
      formula: '=EXT.MEMO(2025,20000,15000,5000,"4/10/2026")',
      answer:
        "We plan to request, by April 15, 2026, an extension of time to file your 2025 federal income tax return. With the extension, the return will be due October 15, 2026. An extension of time to file is not an extension of time to pay. Please pay $5,000.00 by April 15, 2026. If you can, pay electronically and mark it as an extension payment. Based on our estimate, that payment covers the tax. These amounts are estimates based on the information we have now. They are not a bill, and the return may show different amounts.",
    },
    {
      formula:
        '=EXT.MEMO(2025,20000,15000,,"5/1/2026","4/14/2026",,"4/15/2026",,,"6/1/2026",,"full")',
      answer:
        "Your 2025 federal income tax return was due April 15, 2026. The IRS rejected the request for an extension that we made on April 14, 2026, and no corrected request was made by April 20, 2026. You do not have an extension. The return is late and should be filed as soon as possible. We estimate your total tax at $20,000.00 and your payments so far at $15,000.00. Based on our estimate, $5,000.00 is unpaid, and the payment due date was April 15, 2026. Interest accrues on it until it is paid. Penalties and interest increase until the return is filed and the tax is paid. If you file and pay the balance on June 1, 2026, we expect about $542.27 in penalties and interest. Filing and paying earlier reduces this amount. These amounts are estimates based on the information we have now. They are not a bill, and the return may show different amounts.",
      remark: "the request was rejected and not resent in time",
    },
  ],
  note: "The letter follows the record through the as-of date, as STAGE does. It states the extended due date as a fact only with proof of the request. With length full, it adds the penalties and interest that follow from the record and the planned dates, as CHARGES calculates them. The payment with the request counts as paid by the payment due date, or on the date of a later request. A balance whose planned payment date has passed counts as paid, and the letter says so.",
  calculate: (given, rules) =>
    paragraphsOf(given, rules)
      .flatMap(({ sentences }) => sentences)
      .join(" "),
});

/**
 * Letter text for the client as of a date: status of the extension, what to pay and by when, documents needed and, if chosen, the cost.
 *
 * @customfunction MEMO
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year. One cell or a column.
 * @param totalTax Estimated total tax, line 4, in dollars.
 * @param payments Total payments, line 5, without the amount paid with the request.
 * @param paidWithRequest Amount paid with the request, line 7. Blank is none.
 * @param asOf As-of date. Anything that happened later is ignored.
 * @param [requestedOn] Date the request was first made; an electronic extension payment is a request.
 * @param [confirmedOn] Date you received proof: acceptance, payment confirmation or mailing receipt; if rejected, the date you resent the request.
 * @param [rejectedOn] Date the e-filed request was rejected.
 * @param [filedOn] Date the return was filed.
 * @param [paidOn] Date the balance was paid in full.
 * @param [plannedFilingDate] Date you plan to file the return; blank is the extended due date, or the as-of date without an extension.
 * @param [plannedPaymentDate] Date the client plans to pay the balance; blank is the filing date.
 * @param [length] short (default) or full.
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
  paidWithRequest: unknown[][],
  asOf: unknown[][],
  requestedOn?: unknown[][],
  confirmedOn?: unknown[][],
  rejectedOn?: unknown[][],
  filedOn?: unknown[][],
  paidOn?: unknown[][],
  plannedFilingDate?: unknown[][],
  plannedPaymentDate?: unknown[][],
  length?: unknown[][],
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

const MEMOLINES = tableFunction({
  arguments: letterArguments,
  tables: letterTables,
  law: LAW,
  examples: [
    {
      formula: '=EXT.MEMOLINES(2025,20000,15000,5000,"4/10/2026")',
      answer:
        "An extension of time to file is not an extension of time to pay. Please pay $5,000.00 by April 15, 2026. If you can, pay electronically and mark it as an extension payment. Based on our estimate, that payment covers the tax.",
      remark: "the second paragraph",
    },
  ],
  note: "The sentences are those of MEMO. Wrap the text of the cells, and add a greeting above and your name below.",
  calculate: (given, rules) => [
    ["Topic", "Paragraph"],
    ...paragraphsOf(given, rules).map(({ topic, sentences }) => [topic, sentences.join(" ")]),
  ],
});

/**
 * Table of the letter that MEMO writes, one paragraph per row, for a letter that you print or copy.
 *
 * @customfunction MEMOLINES
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year.
 * @param totalTax Estimated total tax, line 4, in dollars.
 * @param payments Total payments, line 5, without the amount paid with the request.
 * @param paidWithRequest Amount paid with the request, line 7. Blank is none.
 * @param asOf As-of date. Anything that happened later is ignored.
 * @param [requestedOn] Date the request was first made; an electronic extension payment is a request.
 * @param [confirmedOn] Date you received proof: acceptance, payment confirmation or mailing receipt; if rejected, the date you resent the request.
 * @param [rejectedOn] Date the e-filed request was rejected.
 * @param [filedOn] Date the return was filed.
 * @param [paidOn] Date the balance was paid in full.
 * @param [plannedFilingDate] Date you plan to file the return; blank is the extended due date, or the as-of date without an extension.
 * @param [plannedPaymentDate] Date the client plans to pay the balance; blank is the filing date.
 * @param [length] short (default) or full.
 * @param [stillNeeded] What the client still has to send, in your words.
 * @param [state] Postal code or name of the state of residence, or foreign.
 * @param [filerType] Blank or resident; out of country (line 8); nonresident (Form 1040-NR, line 9).
 * @param [assumedRate] Annual interest rate for dates after the last published quarter: a percent such as 7%, or latest.
 * @param [postponementBegins] First date of the disaster postponement period announced for the client's address.
 * @param [postponementEnds] Last date of that period; deadlines inside the period move to this date.
 * @returns {any[][]} A row of headings, then one row per paragraph. Fills several cells; not for use inside an Excel table.
 */
export function memoLines(
  taxYear: unknown,
  totalTax: unknown,
  payments: unknown,
  paidWithRequest: unknown,
  asOf: unknown,
  requestedOn?: unknown,
  confirmedOn?: unknown,
  rejectedOn?: unknown,
  filedOn?: unknown,
  paidOn?: unknown,
  plannedFilingDate?: unknown,
  plannedPaymentDate?: unknown,
  length?: unknown,
  stillNeeded?: unknown,
  state?: unknown,
  filerType?: unknown,
  assumedRate?: unknown,
  postponementBegins?: unknown,
  postponementEnds?: unknown
): unknown[][];
export function memoLines(...cells: unknown[]): unknown[][] {
  return MEMOLINES.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const letterFunctions = { MEMO, MEMOLINES };
