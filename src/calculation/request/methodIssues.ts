import { isFiscalYear } from "../taxYear";
import type { Issue, ClientRequest } from "./clientRequest";

/**
 * Issues with the method of the request and with line 8.
 *
 * @param request - The request; its return is not filed.
 * @returns The issues, in no order.
 * @see Form 4868, when to file, private delivery services, line 8; 26 U.S.C. 7502(f)
 */
export function methodIssues(request: ClientRequest): readonly Issue[] {
  const { taxYear, method, carrier, paidWithRequest, line8Checked, filerType } = request;
  const issues: Issue[] = [];
  const isPaying = paidWithRequest.greaterThan(0);
  if (method !== undefined && method !== "paper" && isFiscalYear(taxYear))
    issues.push({ check: "fiscal year not on paper", details: method });
  if (method === "electronic payment" && !isPaying) issues.push({ check: "no electronic payment" });
  const isPaper = method === undefined || method === "paper";
  if (isPaper && carrier !== undefined) {
    if (isPaying) issues.push({ check: "carrier to a P.O. box" });
    if (carrier === "not designated") issues.push({ check: "carrier not designated" });
  }
  if (line8Checked === true && filerType !== "out of country")
    issues.push({ check: "line 8 checked", details: filerType });
  if (line8Checked === false && filerType === "out of country")
    issues.push({ check: "line 8 not checked" });
  return issues;
}
