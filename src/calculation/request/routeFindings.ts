import { isFiscalYear } from "../taxYear";
import type { Finding, RequestToCheck } from "./requestToCheck";

/**
 * Findings on the way the request goes in, and on line 8.
 *
 * @param request - The request; its return is not filed.
 * @returns The findings, in no order.
 * @see Form 4868, when to file, private delivery services, line 8; 26 U.S.C. 7502(f)
 */
export function routeFindings(request: RequestToCheck): readonly Finding[] {
  const { taxYear, route, carrier, paying, outOfCountry, filer } = request;
  const findings: Finding[] = [];
  const isPaying = paying.greaterThan(0);
  if (route !== undefined && route !== "paper" && isFiscalYear(taxYear))
    findings.push({ check: "fiscal year not on paper", about: route });
  if (route === "electronic payment" && !isPaying) findings.push({ check: "no payment to mark" });
  const goesByMail = route === undefined || route === "paper";
  if (goesByMail && carrier !== undefined) {
    if (isPaying) findings.push({ check: "carrier to a post office box" });
    if (carrier === "not designated") findings.push({ check: "carrier not designated" });
  }
  if (outOfCountry === true && filer !== "abroad")
    findings.push({ check: "abroad ticked", about: filer });
  if (outOfCountry === false && filer === "abroad") findings.push({ check: "abroad not ticked" });
  return findings;
}
