import { installmentDueDate } from "../dueDate/installmentDueDate";
import { yearAfter } from "../taxYear";
import type { IssueRules, Issue, ClientRequest } from "./clientRequest";
import { requestGivesTime } from "./requestGivesTime";

/**
 * Reminders: a disaster postponement, the first estimated tax installment of the new year.
 *
 * @param request - The request; its return is not filed.
 * @param rules - Holidays, installments.
 * @returns The issues, in no order.
 * @see 26 U.S.C. 7508A(a), 6654(c)(2), (j)(2)
 */
export function reminderIssues(request: ClientRequest, rules: IssueRules): readonly Issue[] {
  const { taxYear, filerType, dates, circumstances, asOf, firstInstallment } = request;
  const issues: Issue[] = [];
  const postponed = [dates.regular, dates.payment, dates.extended].find(({ moves }) =>
    moves.some(({ because }) => because === "disaster postponement")
  );
  if (postponed && requestGivesTime(dates))
    issues.push({ check: "postponement moves dates", date: postponed.lastDay });
  const newYear = yearAfter(taxYear);
  if (newYear.lastDay <= rules.installments.knownThrough) {
    const first = installmentDueDate(newYear, filerType, 1, circumstances.postponement, rules);
    const isPlanned = firstInstallment === undefined || firstInstallment.greaterThan(0);
    if (isPlanned && asOf <= first.lastDay)
      issues.push({
        check: "first installment due",
        date: first.lastDay,
        amount: firstInstallment,
      });
  }
  return issues;
}
