import { shortDate } from "../../calendar/writtenDate";
import { installmentAgreements } from "../../calculation/account/installmentAgreements";
import type { DueDate } from "../../calculation/dueDate/dueDate";
import { returnDueDate } from "../../calculation/dueDate/returnDueDate";
import type { TaxYear } from "../../calculation/taxYear";
import type { CalendarDate } from "../../calendar/calendarDate";
import type { Rulebook } from "../../rules/rulebook";
import { optional } from "../arguments/argumentKind";
import { dateTables } from "../arguments/client";
import { date } from "../arguments/date";
import { dollars, dollarsUnlessZero } from "../arguments/dollars";
import { count } from "../arguments/number";
import { assumedRate } from "../arguments/percent";
import { taxYear } from "../arguments/taxYear";
import { yesNo } from "../arguments/yesNo";
import { InputError } from "../cells/inputError";
import { tableFunction } from "../worksheetFunction";
import { agreementTable } from "./agreementTable";

const MOST_MONTHS = 120;

/**
 * The date from which the months of the failure-to-pay penalty count: the due date of a resident, or the date of the agreement if the
 * tax year is not given.
 *
 * @throws InputError if the agreement is not after the due date.
 */
function penaltyDue(
  year: TaxYear | undefined,
  agreementOn: CalendarDate,
  rules: Pick<Rulebook, (typeof dateTables)[number]>
): Pick<DueDate, "countedFrom" | "lastDay"> {
  if (year === undefined) return { countedFrom: agreementOn, lastDay: agreementOn };
  const due = returnDueDate(year, "resident", {}, rules);
  if (agreementOn > due.lastDay) return due;
  throw new InputError(
    "agreementOn",
    `${shortDate(agreementOn)} is not after the payment due date, ${shortDate(due.lastDay)}. Check the date and the tax year.`
  );
}

const AGREEMENT = tableFunction({
  arguments: {
    owed: dollars,
    filedOnTime: yesNo,
    agreementOn: date,
    unpaidTax: dollarsUnlessZero,
    taxYear: optional(taxYear),
    months: count(MOST_MONTHS),
    assumedRate,
  },
  tables: [
    ...dateTables,
    "installmentAgreements",
    "installmentAgreementFees",
    "failureToPay",
    "underpaymentRate",
  ],
  law: ["IRC sections 6159, 6601 and 6651(h)"],
  examples: [
    {
      formula: '=EXT.AGREEMENT(12000,"yes","6/1/2026",11000,2025,24,"7%")',
      answer: "Simple payment plan",
    },
  ],
  note: "Open is yes if the balance and the number of payments are within the limits of the source. Check the other conditions yourself. The monthly payment covers the balance, the failure-to-pay penalty and interest, but not the setup fee. Without a tax year, penalty months before the agreement do not count toward the maximum of 25%. A short-term payment plan is assumed not to halve the penalty. A row marked as contradicted is shown because the sources disagree.",
  calculate: (given, rules) => {
    const { owed, agreementOn, filedOnTime } = given;
    const unpaidTax = given.unpaidTax ?? owed;
    if (unpaidTax.greaterThan(owed))
      throw new InputError(
        "unpaidTax",
        `${unpaidTax.toFixed()} is more than the ${owed.toFixed()} owed. Enter the tax without penalties and interest, or leave the cell blank.`
      );
    const due = penaltyDue(given.taxYear, agreementOn, rules);
    const months = given.months === 0 ? undefined : given.months;
    const found = installmentAgreements({ owed, unpaidTax, agreementOn, months }, rules);
    const balance = {
      owed,
      unpaidTax,
      agreementOn,
      due,
      filedOnTime,
      assumedRate: given.assumedRate,
    };
    return agreementTable(found, balance, rules);
  },
});

/**
 * Table of payment plans and installment agreements for a balance: limits, terms, monthly payments and setup fees.
 *
 * @customfunction AGREEMENT
 * @param owed Tax, penalties and interest owed on the date of the agreement, in dollars.
 * @param filedOnTime Yes if the return was filed by its due date, including extensions; blank is no.
 * @param agreementOn Date the IRS accepts the agreement; setup fees are those in effect on this date.
 * @param [unpaidTax] Tax included in that balance, without penalties and interest; blank or 0 is the whole balance.
 * @param [taxYear] Tax year of the balance, for its earlier penalty months; blank if the balance covers several years.
 * @param [months] Number of monthly payments, at most 120; blank is the longest term of each kind.
 * @param [assumedRate] Annual interest rate for dates after the last published quarter: a percent such as 7%, or latest.
 * @returns {any[][]} A row of headings, then kinds of agreement, then setup fees. Fills several cells; not for use inside an Excel table.
 */
export function agreement(
  owed: unknown,
  filedOnTime: unknown,
  agreementOn: unknown,
  unpaidTax?: unknown,
  taxYear?: unknown,
  months?: unknown,
  assumedRate?: unknown
): unknown[][];
export function agreement(...cells: unknown[]): unknown[][] {
  return AGREEMENT.answer(cells);
}

/** The functions of this file by their worksheet names. */
export const agreementFunctions = { AGREEMENT };
