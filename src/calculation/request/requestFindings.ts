import type { Sourced } from "../../rules/listTable";
import type { CheckRule } from "../../rules/requestTables";
import { moneyFindings } from "./moneyFindings";
import { reminderFindings } from "./reminderFindings";
import type { CheckingRules, Finding, RequestToCheck } from "./requestToCheck";
import { routeFindings } from "./routeFindings";
import { standingFindings } from "./standingFindings";

/** A finding with its wording, remedy and source. */
export type WordedFinding = Finding &
  Pick<Sourced<CheckRule>, "gravity" | "what" | "remedy" | "source">;

/**
 * What is wrong or risky with a client's request on a day, gravest first.
 *
 * @param request - The request as the preparer keeps it.
 * @param rules - What the findings look at.
 * @returns The findings in the order of rules/request-checks.json; none when all is well or the return is filed.
 * @throws NotPublishedError for a rejected request whose days to send again are not held.
 * @see 26 CFR 1.6081-4; Form 4868
 */
export function requestFindings(
  request: RequestToCheck,
  rules: CheckingRules
): readonly WordedFinding[] {
  const { filedOn } = request.record;
  const isFiled = filedOn !== undefined && filedOn <= request.asOf;
  if (isFiled) return [];
  const found = [
    ...standingFindings(request, rules),
    ...routeFindings(request),
    ...moneyFindings(request, rules),
    ...reminderFindings(request, rules),
  ];
  return rules.requestChecks.rows.flatMap(({ check, gravity, what, remedy, source }) =>
    found
      .filter((finding) => finding.check === check)
      .map((finding) => ({ ...finding, gravity, what, remedy, source }))
  );
}
