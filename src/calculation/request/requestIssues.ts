import type { Rulebook } from "../../rules/rulebook";
import { closedMethodIssues } from "./closedMethodIssues";
import { moneyIssues } from "./moneyIssues";
import { refundClaimIssues } from "./refundClaimIssues";
import { reminderIssues } from "./reminderIssues";
import { reliefIssues } from "./reliefIssues";
import type { IssueRules, Issue, ClientRequest } from "./clientRequest";
import { methodIssues } from "./methodIssues";
import { stateIssues } from "./stateIssues";
import { statusIssues } from "./statusIssues";

/** An issue with its text, what to do, and its source. */
export type WordedIssue = Issue &
  Pick<Rulebook["requestIssues"]["rows"][number], "severity" | "what" | "remedy" | "source">;

/**
 * Issues with a client's request on a date, the most severe first.
 *
 * @param request - The request as the preparer recorded it.
 * @param rules - The rules that the issues need.
 * @returns The issues in the order of rules/request-issues.json; none if the return is filed.
 * @throws NotInTableError for a rejected request if the perfection period is not in its table.
 * @see 26 CFR 1.6081-4; Form 4868
 */
export function requestIssues(request: ClientRequest, rules: IssueRules): readonly WordedIssue[] {
  const { filedOn } = request.record;
  const isFiled = filedOn !== undefined && filedOn <= request.asOf;
  if (isFiled) return [];
  const found = [
    ...statusIssues(request, rules),
    ...methodIssues(request),
    ...closedMethodIssues(request, rules),
    ...moneyIssues(request, rules),
    ...reliefIssues(request, rules),
    ...refundClaimIssues(request, rules),
    ...stateIssues(request, rules),
    ...reminderIssues(request, rules),
  ];
  const worded: WordedIssue[] = [];
  for (const row of rules.requestIssues.rows)
    for (const issue of found)
      if (issue.check === row.check) {
        const { check, severity, what, remedy, source } = row;
        const { date, amount, details } = issue;
        worded.push({ check, date, amount, details, severity, what, remedy, source });
      }
  return worded;
}
