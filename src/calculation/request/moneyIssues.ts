import { upToCents, ZERO, type Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { IssueRules, Issue, ClientRequest } from "./clientRequest";

/** Dollars paid with the request, as planned until the regular due date, then only if the request was made by it. */
function paidByDueDate({ dates, asOf, record, paidWithRequest }: ClientRequest): Decimal {
  const { lastDay } = dates.regular;
  const { requestedOn } = record;
  const isMade = requestedOn !== undefined && requestedOn <= lastDay;
  return asOf <= lastDay || isMade ? paidWithRequest : ZERO;
}

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
  const { taxYear, totalTax, payments, priorYearTax, asOf } = request;
  const { payment, regular } = request.dates;
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
  const paid = payments.plus(paidByDueDate(request));
  const table = rules.reasonableCauseTest;
  const { shareToPay } = entryOn(table, table.knownThrough).figures;
  const missing = upToCents(totalTax.times(shareToPay).minus(paid));
  if (missing.greaterThan(0)) {
    const check = asOf > regular.lastDay ? "90% test missed" : "below 90% test";
    issues.push({ check, amount: missing, date: regular.lastDay });
  }
  const unpaid = totalTax.minus(paid);
  if (unpaid.greaterThan(0))
    issues.push({ check: "interest accrues", amount: unpaid, date: payment.lastDay });
  return issues;
}
