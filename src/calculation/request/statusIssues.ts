import { requestStage } from "../season/requestStage";
import type { IssueRules, Issue, ClientRequest } from "./clientRequest";

/**
 * Findings on where the request stands: asked in time, arrived, sent again, filed in time.
 *
 * @param request - The request; its return is not filed.
 * @param rules - Days to send a rejected request again.
 * @returns The findings, in no order.
 * @throws NotInTableError for a rejected request whose days to send again are not held.
 */
export function statusIssues(
  request: ClientRequest,
  rules: Pick<IssueRules, "perfectionPeriod">
): readonly Issue[] {
  const { dates, record, asOf } = request;
  const { stage, missed, lastDay } = requestStage(dates, record, asOf, rules);
  if (missed !== undefined) return [{ check: missed, day: lastDay }];
  if (stage === "rejected") return [{ check: "perfection period open", day: lastDay }];
  return stage === "unconfirmed" ? [{ check: "no proof", day: record.requestedOn }] : [];
}
