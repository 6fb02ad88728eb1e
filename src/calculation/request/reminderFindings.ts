import { yearOf } from "../../calendar/calendarDate";
import { installmentDueDate } from "../dueDate/installmentDueDate";
import { isFiscalYear, yearAfter } from "../taxYear";
import type { CheckingRules, Finding, RequestToCheck } from "./requestToCheck";

/**
 * Findings on what hangs on the request: the state, disaster relief, the new year's first estimate.
 *
 * @param request - The request; its return is not filed.
 * @param rules - The states' rules, holidays, installments.
 * @returns The findings, in no order.
 * @see 26 U.S.C. 7508A(a), 6654(c)(2)
 */
export function reminderFindings(
  request: RequestToCheck,
  rules: CheckingRules
): readonly Finding[] {
  const { taxYear, dates, circumstances, asOf, firstInstallment } = request;
  const findings: Finding[] = [];
  const rule = isFiscalYear(taxYear)
    ? undefined
    : rules.stateExtensions.rows.find(({ state }) => state === circumstances.state);
  if (rule) {
    const { name, grant, condition, fromTaxYear = 0, sourceTaxYear, unsettled } = rule;
    const year = yearOf(taxYear.lastDay);
    const asksItself = !["automatic", "with the federal extension", "no return"].includes(grant);
    if (asksItself)
      findings.push({ check: "state asks for its own", about: `${name}: ${condition}` });
    const isOld = sourceTaxYear === undefined || sourceTaxYear < year;
    const isDoubtful = unsettled !== undefined || rule.source.confidence === "memory";
    if (year < fromTaxYear || (grant !== "no return" && (isOld || isDoubtful)))
      findings.push({ check: "state rule not sure", about: name });
  }
  const relieved = [dates.regular, dates.payment, dates.extended].find(({ moves }) =>
    moves.some(({ because }) => because === "disaster relief")
  );
  if (relieved) findings.push({ check: "relief moves dates", day: relieved.lastDay });
  const newYear = yearAfter(taxYear);
  if (newYear.lastDay <= rules.installments.knownThrough) {
    const first = installmentDueDate(newYear, 1, circumstances.relief, rules);
    const isPlanned = firstInstallment === undefined || firstInstallment.greaterThan(0);
    if (isPlanned && asOf <= first.lastDay)
      findings.push({ check: "first estimate due", day: first.lastDay, amount: firstInstallment });
  }
  return findings;
}
