import { isFiscalYear } from "../taxYear";
import type { ClientRequest, Issue } from "./clientRequest";
import { methodDeadline } from "./methodDeadline";
import { requestGivesTime } from "./requestGivesTime";
import { resendDeadline, type ResendRules } from "./resendDeadline";

/**
 * Issue with an electronic request after the electronic methods have closed, while the client's disaster postponement keeps paper open.
 *
 * It applies to a request that was made then and to one that is still planned. A rejected request that was not resent is taken to be
 * resent by e-file unless another method is recorded.
 *
 * @param request - The request; its return is not filed.
 * @param rules - Methods, perfection period.
 * @returns One issue with the date the method closed, or none.
 * @throws NotInTableError for a rejected request if the perfection period is not in its table.
 * @see IR-2025-41; Pub. 1345, rejected returns
 */
export function closedMethodIssues(request: ClientRequest, rules: ResendRules): readonly Issue[] {
  const { taxYear, dates, record, asOf } = request;
  const { regular } = dates;
  const { requestedOn, confirmedOn, rejectedOn } = record;
  const isRejected = rejectedOn !== undefined && rejectedOn <= asOf;
  const isResent = isRejected && confirmedOn !== undefined && confirmedOn >= rejectedOn;
  const resentOn = isResent ? confirmedOn : undefined;
  const lastMadeOn = isRejected ? resentOn : requestedOn;
  const isMade = lastMadeOn !== undefined && lastMadeOn <= asOf;
  const madeOn = isMade ? lastMadeOn : asOf;

  const method = request.method ?? (isRejected && !isMade ? "e-file" : undefined);
  if (method === undefined || method === "paper" || isFiscalYear(taxYear)) return [];
  if (!requestGivesTime(dates)) return [];
  const closesOn = methodDeadline(method, regular, rules);
  if (madeOn <= closesOn || madeOn > regular.lastDay) return [];
  if (method === "electronic payment")
    return [{ check: "electronic payment closed", date: closesOn }];
  const deadline = isRejected ? resendDeadline(regular, rejectedOn, rules) : closesOn;
  return madeOn > deadline ? [{ check: "e-file closed", date: deadline }] : [];
}
