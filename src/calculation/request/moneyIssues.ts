import { upToCents } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { IssueRules, Issue, ClientRequest } from "./clientRequest";

/**
 * Findings on the dollars of the request: the estimate, the payments, what will stay unpaid.
 *
 * @param request - The request; its return is not filed.
 * @param rules - The share that the presumption asks for.
 * @returns The findings, in no order.
 * @see Form 4868, lines 4 to 7; 26 CFR 301.6651-1(c)(3); 26 U.S.C. 6601(a)
 */
export function moneyIssues(
  request: ClientRequest,
  rules: Pick<IssueRules, "reasonableCauseTest">
): readonly Issue[] {
  const { dates, totalTax, payments, paidWithRequest, priorYearTax } = request;
  if (totalTax === undefined) return [{ check: "estimate blank" }];
  const issues: Issue[] = [];
  if (totalTax.isZero() && priorYearTax?.greaterThan(0))
    issues.push({ check: "zero estimate after tax last year", amount: priorYearTax });
  if (payments.greaterThan(totalTax))
    issues.push({ check: "refund expected", amount: payments.minus(totalTax) });
  const paid = payments.plus(paidWithRequest);
  const presumption = rules.reasonableCauseTest;
  const { shareToPay } = entryOn(presumption, presumption.knownThrough).figures;
  const short = upToCents(totalTax.times(shareToPay).minus(paid));
  if (short.greaterThan(0))
    issues.push({
      check: "below 90% test",
      amount: short,
      day: dates.payment.lastDay,
    });
  const unpaid = totalTax.minus(paid);
  if (unpaid.greaterThan(0))
    issues.push({ check: "interest accrues", amount: unpaid, day: dates.payment.lastDay });
  return issues;
}
