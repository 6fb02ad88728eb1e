import { upToCents } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { IssueRules, Issue, ClientRequest } from "./clientRequest";

/**
 * Issues with the amounts of the request: the estimate, the payments, the tax that will remain unpaid.
 *
 * @param request - The request; its return is not filed.
 * @param rules - The share of the tax for the 90% test, and of last year's tax at which an estimate is reviewed.
 * @returns The issues, in no order.
 * @throws NotInTableError for a tax year before those for which estimates are reviewed.
 * @see Form 4868, lines 4 to 7; 26 CFR 301.6651-1(c)(3); 26 U.S.C. 6601(a); Crocker v. Commissioner, 92 T.C. 899
 */
export function moneyIssues(
  request: ClientRequest,
  rules: Pick<IssueRules, "reasonableCauseTest" | "estimateReview">
): readonly Issue[] {
  const { taxYear, dates, totalTax, payments, paidWithRequest, priorYearTax } = request;
  if (totalTax === undefined) return [{ check: "estimate blank" }];
  const issues: Issue[] = [];
  if (totalTax.isZero() && priorYearTax?.greaterThan(0))
    issues.push({ check: "zero estimate after tax last year", amount: priorYearTax });
  else if (priorYearTax?.greaterThan(0)) {
    const { shareOfPriorYearTax } = entryOn(rules.estimateReview, taxYear.lastDay).figures;
    if (totalTax.lessThanOrEqualTo(priorYearTax.times(shareOfPriorYearTax)))
      issues.push({ check: "low estimate beside last year", amount: priorYearTax });
  }
  if (payments.greaterThan(totalTax))
    issues.push({ check: "refund expected", amount: payments.minus(totalTax) });
  if (totalTax.isZero() && !priorYearTax?.greaterThan(0)) issues.push({ check: "zero estimate" });
  const paid = payments.plus(paidWithRequest);
  const table = rules.reasonableCauseTest;
  const { shareToPay } = entryOn(table, table.knownThrough).figures;
  const stillNeeded = upToCents(totalTax.times(shareToPay).minus(paid));
  if (stillNeeded.greaterThan(0))
    issues.push({
      check: "below 90% test",
      amount: stillNeeded,
      date: dates.payment.lastDay,
    });
  const unpaid = totalTax.minus(paid);
  if (unpaid.greaterThan(0))
    issues.push({ check: "interest accrues", amount: unpaid, date: dates.payment.lastDay });
  return issues;
}
