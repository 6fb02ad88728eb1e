import { shortDate } from "../../calendar/writtenDate";
import { abroadDate } from "../../calculation/dueDate/abroadDate";
import { exchangeDate } from "../../calculation/dueDate/exchangeDate";
import { refundClaimDate } from "../../calculation/dueDate/refundClaimDate";
import { optional } from "../arguments/argumentKind";
import { circumstancesOf, dateTables, datesOf, postponement, residence } from "../arguments/client";
import { date, dateAfterYear } from "../arguments/date";
import { taxYear } from "../arguments/taxYear";
import { qualifyingTest } from "../arguments/words";
import { yesNo } from "../arguments/yesNo";
import { dateCell } from "../cells/answerCell";
import { InputError } from "../cells/inputError";
import { rowFunction } from "../worksheetFunction";

const EXCHANGEBY = rowFunction({
  arguments: {
    soldOn: date,
    taxYear,
    validExtension: yesNo,
    ...residence,
    ...postponement,
  },
  tables: [...dateTables, "likeKindExchange"],
  law: ["IRC section 1031(a)(3)(B)"],
  examples: [
    {
      formula: '=EXT.EXCHANGEBY("11/10/2025",2025)',
      answer: "4/15/2026",
      remark: "the due date comes before the 180 days end",
    },
    { formula: '=EXT.EXCHANGEBY("11/10/2025",2025,"yes")', answer: "5/9/2026" },
  ],
  note: "Weekends, holidays and a disaster postponement do not move the 180 days; read the announcement of the postponement. The 45 days to identify the replacement property are not calculated.",
  calculate: (given, rules) => {
    const { soldOn, taxYear: year } = given;
    const endsOn = year.closesOn ?? year.lastDay;
    if (soldOn < year.firstDay || soldOn > endsOn)
      throw new InputError(
        "soldOn",
        `${shortDate(soldOn)} is not in the tax year that ends on ${shortDate(endsOn)}. Enter the tax year of the sale, or correct the date.`
      );
    return dateCell(exchangeDate(soldOn, datesOf(given), given.validExtension, rules));
  },
});

/**
 * Last date to receive like-kind replacement property: 180 days after the sale, or the due date of the return if earlier.
 *
 * @customfunction EXCHANGEBY
 * @param soldOn Date the relinquished property was transferred. One cell or a column.
 * @param taxYear Tax year of the sale, such as 2025, or the last date of a fiscal year. One cell or a column.
 * @param [validExtension] Yes if a valid request was made on time; blank is no.
 * @param [state] Postal code or name of the state of residence, or foreign.
 * @param [filerType] Blank or resident; out of country (line 8); nonresident (Form 1040-NR, line 9).
 * @param [postponementBegins] First date of the disaster postponement period announced for the client's address.
 * @param [postponementEnds] Last date of that period; deadlines inside the period move to this date.
 * @returns {any[][]} A worksheet date.
 */
export function exchangeBy(
  soldOn: unknown[][],
  taxYear: unknown[][],
  validExtension?: unknown[][],
  state?: unknown[][],
  filerType?: unknown[][],
  postponementBegins?: unknown[][],
  postponementEnds?: unknown[][]
): unknown[][];
export function exchangeBy(...cells: unknown[]): unknown[][] {
  return EXCHANGEBY.answer(cells);
}

const REFUNDBY = rowFunction({
  arguments: {
    taxYear,
    filedOn: optional(dateAfterYear),
    validExtension: yesNo,
    ...residence,
    ...postponement,
  },
  tables: [...dateTables, "refundClaims"],
  law: [
    "IRC sections 6511(a), (b)(2)(A), 6513(a), (b) and 7508A(f)",
    "Rev. Rul. 2003-41",
    "Notice 2023-21",
  ],
  examples: [
    { formula: "=EXT.REFUNDBY(2022)", answer: "4/15/2026", remark: "the return is not filed yet" },
    { formula: '=EXT.REFUNDBY(2022,,"yes")', answer: "10/15/2026" },
    { formula: '=EXT.REFUNDBY(2022,"9/1/2023","yes")', answer: "9/1/2026" },
  ],
  note: "Weekends and holidays do not move the answer, because the earlier date is safe. A payment made after the due date of the return has its own period of two years, which is not calculated. An overpayment applied to the next year counts as a payment of that year.",
  calculate: (given, rules) => {
    const { taxYear: year, filerType, filedOn, validExtension } = given;
    const circumstances = circumstancesOf(given);
    return dateCell(
      refundClaimDate(year, filerType, circumstances, filedOn, validExtension, rules)
    );
  },
});

/**
 * Last date to claim a refund of withholding and estimated tax payments; a valid extension lengthens the lookback period.
 *
 * @customfunction REFUNDBY
 * @param taxYear Tax year, such as 2025, or the last date of a fiscal year. One cell or a column.
 * @param [filedOn] Date the return was filed; blank if it is not filed yet.
 * @param [validExtension] Yes if a valid request was made on time; blank is no.
 * @param [state] Postal code or name of the state of residence, or foreign.
 * @param [filerType] Blank or resident; out of country (line 8); nonresident (Form 1040-NR, line 9).
 * @param [postponementBegins] First date of the disaster postponement period announced for the client's address.
 * @param [postponementEnds] Last date of that period; it counts as an extension for claims after 12/26/2025.
 * @returns {any[][]} A worksheet date. Weekends and holidays do not move it.
 */
export function refundBy(
  taxYear: unknown[][],
  filedOn?: unknown[][],
  validExtension?: unknown[][],
  state?: unknown[][],
  filerType?: unknown[][],
  postponementBegins?: unknown[][],
  postponementEnds?: unknown[][]
): unknown[][];
export function refundBy(...cells: unknown[]): unknown[][] {
  return REFUNDBY.answer(cells);
}

const ABROADDATE = rowFunction({
  arguments: { firstFullDay: date, qualifyingTest },
  tables: ["form2350"],
  law: ["Form 2350 instructions, line 1", "Regulations section 1.911-7(c)"],
  examples: [
    { formula: '=EXT.ABROADDATE("6/11/2025","physical presence")', answer: "7/11/2026" },
    { formula: '=EXT.ABROADDATE("6/11/2025","bona fide residence")', answer: "1/31/2027" },
  ],
  note: "Enter the date on Form 2350, line 1, and file the form by the regular due date. The extension is for filing, not for payment. The 90 days for moving expenses are not calculated.",
  calculate: (given, rules) =>
    dateCell(abroadDate(given.firstFullDay, given.qualifyingTest, rules)),
});

/**
 * Extended due date to request on Form 2350: 12 months and 30 days after the client begins to qualify for the foreign earned income exclusion.
 *
 * @customfunction ABROADDATE
 * @param firstFullDay First full 24-hour day in a foreign country. One cell or a column.
 * @param qualifyingTest physical presence, or bona fide residence (counted from the next January 1).
 * @returns {any[][]} A worksheet date. Weekends and holidays do not move it.
 */
export function abroadDateOf(firstFullDay: unknown[][], qualifyingTest: unknown[][]): unknown[][];
export function abroadDateOf(...cells: unknown[]): unknown[][] {
  return ABROADDATE.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const claimsAndExchanges = { EXCHANGEBY, REFUNDBY, ABROADDATE };
