import { upToCents } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { CheckingRules, Finding, RequestToCheck } from "./requestToCheck";

/**
 * Findings on the dollars of the request: the estimate, the payments, what will stay unpaid.
 *
 * @param request - The request; its return is not filed.
 * @param rules - The share that the presumption asks for.
 * @returns The findings, in no order.
 * @see Form 4868, lines 4 to 7; 26 CFR 301.6651-1(c)(3); 26 U.S.C. 6601(a)
 */
export function moneyFindings(
  request: RequestToCheck,
  rules: Pick<CheckingRules, "extensionPaymentPresumption">
): readonly Finding[] {
  const { dates, totalTax, payments, paying, priorTax } = request;
  if (totalTax === undefined) return [{ check: "estimate blank" }];
  const findings: Finding[] = [];
  if (totalTax.isZero() && priorTax?.greaterThan(0))
    findings.push({ check: "zero beside last year", amount: priorTax });
  if (payments.greaterThan(totalTax))
    findings.push({ check: "estimate below payments", amount: payments.minus(totalTax) });
  const paid = payments.plus(paying);
  const presumption = rules.extensionPaymentPresumption;
  const { shareToPay } = entryOn(presumption, presumption.knownThrough).figures;
  const short = upToCents(totalTax.times(shareToPay).minus(paid));
  if (short.greaterThan(0))
    findings.push({
      check: "paying less than protects",
      amount: short,
      day: dates.payment.lastDay,
    });
  const unpaid = totalTax.minus(paid);
  if (unpaid.greaterThan(0))
    findings.push({ check: "interest", amount: unpaid, day: dates.payment.lastDay });
  return findings;
}
