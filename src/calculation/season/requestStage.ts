import { laterDate, type CalendarDate } from "../../calendar/calendarDate";
import type { ClientDates } from "../dueDate/clientDates";
import { isTimelyRequest } from "../request/isTimelyRequest";
import { requestGivesTime } from "../request/requestGivesTime";
import { resendDeadline, type ResendRules } from "../request/resendDeadline";
import type { RequestRecord } from "./requestRecord";

/** Status of the request: not made; made, no proof yet; rejected; made, with proof; return filed; a deadline was missed. */
export const STAGES = [
  "not requested",
  "unconfirmed",
  "rejected",
  "extended",
  "filed",
  "past due",
] as const;

/** Status of the request. */
export type Stage = (typeof STAGES)[number];

/** What to do next. */
export type NextAct = "request or file" | "resend the request" | "file";

/** Which deadline was missed. */
export type MissedDate =
  "not requested on time" | "requested late" | "perfection period over" | "extended date missed";

/** Status of the request, and the deadline that decides it. */
export interface RequestStage {
  readonly stage: Stage;
  /** What to do next; nothing once the return is filed. */
  readonly act?: NextAct;
  /** Last day to do it, or the deadline that was missed. */
  readonly deadline?: CalendarDate;
  readonly missed?: MissedDate;
}

/**
 * Status of a client's request on a date. Later events do not count, so that an earlier date can be reviewed as it was.
 *
 * A late request gives no extension. A rejected request can be resent within the perfection period, or on paper by the deadline to
 * request the extension if a disaster postponement makes that the later date; then it counts as made on time. Where a request gives
 * no more time, the return is to be filed by the due date, whatever was requested.
 *
 * @param dates - The client's dates.
 * @param record - What was done, with dates.
 * @param asOf - The as-of date.
 * @param rules - Perfection period, methods.
 * @returns The status, what to do next and the deadline for it.
 * @throws NotInTableError for a rejected request if the perfection period is not in its table.
 * @see 26 CFR 1.6081-4; Pub. 1345
 */
export function requestStage(
  dates: ClientDates,
  record: RequestRecord,
  asOf: CalendarDate,
  rules: ResendRules
): RequestStage {
  const { regular, extended } = dates;
  const happened = (date: CalendarDate | undefined): date is CalendarDate =>
    date !== undefined && date <= asOf;
  const { requestedOn, confirmedOn, rejectedOn, filedOn } = record;
  const until = (
    stage: Stage,
    act: NextAct,
    lastDay: CalendarDate,
    missed: MissedDate
  ): RequestStage =>
    asOf <= lastDay
      ? { stage, act, deadline: lastDay }
      : { stage: "past due", act: "file", deadline: lastDay, missed };

  if (happened(filedOn)) return { stage: "filed" };
  const isConfirmed = happened(confirmedOn);
  if (!requestGivesTime(dates)) {
    const isRejected = happened(rejectedOn) && !(isConfirmed && confirmedOn >= rejectedOn);
    const made = isRejected ? "rejected" : isConfirmed ? "extended" : "unconfirmed";
    const stage = happened(requestedOn) ? made : "not requested";
    return until(stage, "file", extended.lastDay, "extended date missed");
  }
  const { lastDay } = regular;
  if (!happened(requestedOn))
    return until("not requested", "request or file", lastDay, "not requested on time");
  if (!isTimelyRequest(requestedOn, regular))
    return { stage: "past due", act: "file", deadline: lastDay, missed: "requested late" };
  const isSettled = isConfirmed && confirmedOn <= lastDay;
  if (happened(rejectedOn) && !(isSettled && confirmedOn >= rejectedOn)) {
    const byEFile = resendDeadline(regular, rejectedOn, rules);
    // Under a disaster postponement a paper request can follow the rejected one after the perfection period.
    const again = laterDate(byEFile, lastDay);
    const isAccepted = isConfirmed && confirmedOn >= rejectedOn;
    if (isAccepted && confirmedOn > again)
      return { stage: "past due", act: "file", deadline: again, missed: "perfection period over" };
    if (!isAccepted) {
      const next = asOf <= byEFile ? byEFile : again;
      return until("rejected", "resend the request", next, "perfection period over");
    }
  }
  const stage = isConfirmed ? "extended" : "unconfirmed";
  return until(stage, "file", extended.lastDay, "extended date missed");
}
