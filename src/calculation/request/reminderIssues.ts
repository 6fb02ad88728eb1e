import { yearOf } from "../../calendar/calendarDate";
import { installmentDueDate } from "../dueDate/installmentDueDate";
import { isFiscalYear, yearAfter } from "../taxYear";
import type { IssueRules, Issue, ClientRequest } from "./clientRequest";

/**
 * Findings on what hangs on the request: the state, disaster relief, the new year's first estimate.
 *
 * @param request - The request; its return is not filed.
 * @param rules - The states' rules, holidays, installments.
 * @returns The findings, in no order.
 * @see 26 U.S.C. 7508A(a), 6654(c)(2)
 */
export function reminderIssues(request: ClientRequest, rules: IssueRules): readonly Issue[] {
  const { taxYear, dates, circumstances, asOf, firstInstallment } = request;
  const issues: Issue[] = [];
  const rule = isFiscalYear(taxYear)
    ? undefined
    : rules.stateExtensions.rows.find(({ state }) => state === circumstances.state);
  if (rule) {
    const { name, grant, condition, fromTaxYear = 0, sourceTaxYear, unsettled } = rule;
    const year = yearOf(taxYear.lastDay);
    const asksItself = !["automatic", "with the federal extension", "no return"].includes(grant);
    if (asksItself)
      issues.push({ check: "state asks for its own request", about: `${name}: ${condition}` });
    const isOld = sourceTaxYear === undefined || sourceTaxYear < year;
    const isDoubtful = unsettled !== undefined || rule.source.confidence === "memory";
    if (year < fromTaxYear || (grant !== "no return" && (isOld || isDoubtful)))
      issues.push({ check: "state rule unverified", about: name });
  }
  const relieved = [dates.regular, dates.payment, dates.extended].find(({ moves }) =>
    moves.some(({ because }) => because === "disaster relief")
  );
  if (relieved) issues.push({ check: "postponement moves dates", day: relieved.lastDay });
  const newYear = yearAfter(taxYear);
  if (newYear.lastDay <= rules.installments.knownThrough) {
    const first = installmentDueDate(newYear, 1, circumstances.postponement, rules);
    const isPlanned = firstInstallment === undefined || firstInstallment.greaterThan(0);
    if (isPlanned && asOf <= first.lastDay)
      issues.push({ check: "first installment due", day: first.lastDay, amount: firstInstallment });
  }
  return issues;
}
