import { addMonths } from "../../calendar/calendarDate";
import { refundClaimDate, type RefundClaimRules } from "../dueDate/refundClaimDate";
import { extensionInPlan } from "../season/extensionInPlan";
import type { ClientRequest, Issue } from "./clientRequest";
import type { ResendRules } from "./resendDeadline";

/** How early the preparer hears of the date. This is a choice, not a rule of law. */
const MONTHS_OF_WARNING = 12;

/**
 * Issue with a refund that is lost if the return is not filed by the last date to claim it.
 *
 * @param request - The request; its return is not filed.
 * @param rules - Refund claims, due dates, perfection period, methods.
 * @returns One issue from a year before the last date, with that date and the refund expected; otherwise none.
 * @throws NotInTableError for a rejected request if the perfection period is not in its table.
 * @see 26 U.S.C. 6511(a), (b)(2)(A), 6513(b), 7508A(f)
 */
export function refundClaimIssues(
  request: ClientRequest,
  rules: RefundClaimRules & ResendRules
): readonly Issue[] {
  const { taxYear, filerType, circumstances, dates, record, asOf, totalTax, payments } = request;
  if (totalTax === undefined || payments.lessThanOrEqualTo(totalTax)) return [];
  const isExtended = extensionInPlan(dates, record, asOf, rules);
  const lastDay = refundClaimDate(taxYear, filerType, circumstances, undefined, isExtended, rules);
  if (asOf < addMonths(lastDay, -MONTHS_OF_WARNING)) return [];
  const check = asOf <= lastDay ? "refund claim near" : "refund claim passed";
  return [{ check, date: lastDay, amount: payments.minus(totalTax) }];
}
