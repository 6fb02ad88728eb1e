import type { CalendarDate } from "../../calendar/calendarDate";
import type { Rulebook } from "../../rules/rulebook";
import type { ClientDates } from "../dueDate/clientDates";
import { resendDeadline } from "../request/resendDeadline";
import type { RequestRecord } from "./requestRecord";

/** Where a client stands: nothing asked yet; asked without proof; sent back; asked with proof; filed; a date let pass. */
export const STAGES = [
  "not requested",
  "unconfirmed",
  "rejected",
  "extended",
  "filed",
  "past due",
] as const;

/** Where a client stands. */
export type Stage = (typeof STAGES)[number];

/** What is to be done next. */
export type NextAct = "ask" | "resend" | "file";

/** Which date was let pass. */
export type MissedDate =
  "not requested on time" | "requested late" | "perfection period over" | "extended date missed";

/** Where a client stands, and the day that decides. */
export interface RequestStage {
  readonly stage: Stage;
  /** What is to be done; nothing once the return is filed. */
  readonly act?: NextAct;
  /** The last day to do it; the day that was missed, where one was. */
  readonly lastDay?: CalendarDate;
  readonly missed?: MissedDate;
}

/**
 * Where a client stands on a day. What happened later than that day does not count, so that a season can be looked at again as it
 * was.
 *
 * A request made after the last day to ask gives no extension. A rejected one is open for the days to send
 * again; sent again and accepted within them it counts as made.
 *
 * @param dates - The client's dates.
 * @param record - What was done when.
 * @param asOf - The day.
 * @param rules - Days to send a rejected request again.
 * @returns Stage, next act and its last day.
 * @throws NotInTableError for a rejected request whose days to send again are not held.
 * @see 26 CFR 1.6081-4; Pub. 1345
 */
export function requestStage(
  dates: ClientDates,
  record: RequestRecord,
  asOf: CalendarDate,
  rules: Pick<Rulebook, "perfectionPeriod">
): RequestStage {
  const { regular, extended } = dates;
  const happened = (day: CalendarDate | undefined): day is CalendarDate =>
    day !== undefined && day <= asOf;
  const { requestedOn, confirmedOn, rejectedOn, filedOn } = record;
  const until = (
    stage: Stage,
    act: NextAct,
    lastDay: CalendarDate,
    missed: MissedDate
  ): RequestStage =>
    asOf <= lastDay ? { stage, act, lastDay } : { stage: "past due", act: "file", lastDay, missed };

  if (happened(filedOn)) return { stage: "filed" };
  const { lastDay } = regular;
  if (!happened(requestedOn))
    return until("not requested", "ask", lastDay, "not requested on time");
  if (requestedOn > lastDay)
    return { stage: "past due", act: "file", lastDay, missed: "requested late" };
  const isConfirmed = happened(confirmedOn);
  const isSettled = isConfirmed && confirmedOn <= lastDay;
  if (happened(rejectedOn) && !(isSettled && confirmedOn >= rejectedOn)) {
    const again = resendDeadline(regular, rejectedOn, rules);
    const isAccepted = isConfirmed && confirmedOn >= rejectedOn;
    if (isAccepted && confirmedOn > again)
      return { stage: "past due", act: "file", lastDay: again, missed: "perfection period over" };
    if (!isAccepted) return until("rejected", "resend", again, "perfection period over");
  }
  const stage = isConfirmed ? "extended" : "unconfirmed";
  return until(stage, "file", extended.lastDay, "extended date missed");
}
