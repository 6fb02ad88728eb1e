import { atLeastZero, ZERO } from "../../money/dollars";
import type { Rulebook } from "../../rules/rulebook";
import { reasonableCauseTest } from "../penalty/reasonableCauseTest";
import { extensionInPlan } from "../season/extensionInPlan";
import type { ClientRequest, Issue } from "./clientRequest";
import { isTimelyRequest } from "./isTimelyRequest";
import type { ResendRules } from "./resendDeadline";

/**
 * Reminder of relief for a clean history, where a penalty for filing or paying late applies even if the client files and pays on the
 * as-of date.
 *
 * Both penalties are computed on the tax unpaid on the regular due date. The amount paid with the request counts only if the request
 * was made by then. The failure-to-pay penalty does not apply while the 90% reasonable-cause test can still be met.
 *
 * @param request - The request; its return is not filed.
 * @param rules - The 90% test, the perfection period, methods.
 * @returns One issue with the tax that was unpaid on the regular due date, in dollars, or none.
 * @throws NotInTableError for a rejected request if the perfection period is not in its table.
 * @see 26 U.S.C. 6651(a), (b)(1); 26 CFR 301.6651-1(c)(3); IRM 20.1.1.3.3.2.1
 */
export function reliefIssues(
  request: ClientRequest,
  rules: ResendRules & Pick<Rulebook, "reasonableCauseTest">
): readonly Issue[] {
  const { dates, totalTax = ZERO, payments, paidWithRequest, record, asOf } = request;
  const { regular, extended } = dates;
  if (asOf <= regular.lastDay) return [];
  const { requestedOn } = record;
  const isPaidOnTime = requestedOn !== undefined && isTimelyRequest(requestedOn, regular);
  const paid = isPaidOnTime ? payments.plus(paidWithRequest) : payments;
  const unpaidTax = atLeastZero(totalTax.minus(paid));
  if (unpaidTax.isZero()) return [];
  const validExtension = extensionInPlan(dates, record, asOf, rules);
  const isExcused = reasonableCauseTest(
    {
      validExtension,
      regular,
      extendedDue: extended,
      totalTax,
      unpaidTax,
      paidInFullOn: asOf,
      filedOn: asOf,
    },
    rules
  );
  const filingDue = validExtension ? extended : regular;
  const isLate = asOf > filingDue.lastDay;
  return isLate || !isExcused ? [{ check: "relief from penalties", amount: unpaidTax }] : [];
}
