import { requestStage } from "../season/requestStage";
import type { Issue, ClientRequest } from "./clientRequest";
import { requestGivesTime } from "./requestGivesTime";
import type { ResendRules } from "./resendDeadline";

/**
 * Issues with the status of the request: made on time, proof received, resent after a rejection, return filed on time. Where a request
 * gives no more time, only that is reported.
 *
 * @param request - The request; its return is not filed.
 * @param rules - Perfection period, methods.
 * @returns The issues, in no order.
 * @throws NotInTableError for a rejected request if the perfection period is not in its table.
 */
export function statusIssues(request: ClientRequest, rules: ResendRules): readonly Issue[] {
  const { dates, record, asOf } = request;
  const { stage, missed, deadline } = requestStage(dates, record, asOf, rules);
  if (missed !== undefined) return [{ check: missed, date: deadline }];
  if (!requestGivesTime(dates)) return [{ check: "request gives no time", date: deadline }];
  if (stage === "rejected") return [{ check: "perfection period open", date: deadline }];
  return stage === "unconfirmed" ? [{ check: "no proof", date: record.requestedOn }] : [];
}
