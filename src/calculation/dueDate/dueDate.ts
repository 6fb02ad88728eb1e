import type { CalendarDate } from "../../calendar/calendarDate";
import { nextWorkday } from "../../calendar/nextWorkday";
import { requireReach } from "../../rules/listTable";
import type { Rulebook } from "../../rules/rulebook";
import type { Act } from "../../rules/schema/dateTables";
import type { Source } from "../../rules/source";
import type { State } from "../state";
import { postponedDate, type DisasterPostponement } from "./disasterPostponement";

/** One move of the last day for an act, and the reason. */
export interface DateMove {
  readonly from: CalendarDate;
  readonly to: CalendarDate;
  readonly because: string;
  readonly source: Source;
}

/** When an act is due. */
export interface DueDate {
  readonly act: Act;
  /** The date the law names, including any extension. */
  readonly statutory: CalendarDate;
  /** The date from which months of delinquency and interest count if the act is late. Weekends and holidays do not move it. */
  readonly countedFrom: CalendarDate;
  /** The last day on which the act is on time. */
  readonly lastDay: CalendarDate;
  readonly moves: readonly DateMove[];
  readonly source: Source;
}

/** What moves a client's dates, other than the tax year and the filer type. */
export interface Circumstances {
  readonly state?: State | undefined;
  readonly postponement?: DisasterPostponement | undefined;
}

/** Acts that are done at an office whose state holidays count with the client's (Rev. Rul. 2015-13). */
const MOVED_BY_STATE_HOLIDAYS: readonly Act[] = ["return", "extended return", "payment"];

/** The rules that move a date. */
export type MovingRules = Pick<Rulebook, "legalHolidays" | "nationwidePostponements">;

/**
 * Moves the date that the law names for an act: for weekends and holidays, then for nationwide postponements, then for the
 * client's own disaster postponement.
 *
 * Section 7503 only decides whether the act was on time. If the deadline is missed, penalties and interest count from the date
 * the law names (26 CFR 301.6651-1(b)(3)). Section 7508A disregards the postponement period, so they then count from its end.
 *
 * @param act - What is due. State holidays move returns and the tax due with them, not installments (Rev. Rul. 2015-13). Gift tax
 *   returns and reports go to one office for all states, so the holidays of the client's state do not move them.
 * @param statutory - The date the law names, including any extension.
 * @param source - The law that names the date.
 * @param circumstances - Residence and disaster postponement.
 * @param rules - Holidays and postponements.
 * @returns The due date with its moves.
 * @throws NotInTableError for a date that the holiday table does not cover.
 * @see 26 U.S.C. 7503, 7508A
 */
export function dueDate(
  act: Act,
  statutory: CalendarDate,
  source: Source,
  circumstances: Circumstances,
  rules: MovingRules
): DueDate {
  const { legalHolidays, nationwidePostponements } = rules;
  requireReach(legalHolidays, statutory);
  const moves: DateMove[] = [];
  let lastDay = statutory;
  let countedFrom = statutory;
  const move = (to: CalendarDate, because: string, law: Source): void => {
    moves.push({ from: lastDay, to, because, source: law });
    lastDay = to;
  };

  const state = MOVED_BY_STATE_HOLIDAYS.includes(act) ? circumstances.state : undefined;
  const workday = nextWorkday(statutory, legalHolidays.rows, state);
  if (workday.skipped.length > 0) {
    const reasons = workday.skipped.map((skipped) => skipped.because);
    move(workday.date, reasons.join(", "), legalHolidays.source);
  }

  for (const postponement of nationwidePostponements.rows) {
    const {
      dueFrom,
      dueThrough,
      postponementEnds,
      acts,
      periodDisregarded,
      source: law,
    } = postponement;
    if (!acts.includes(act) || lastDay < dueFrom || lastDay > dueThrough) continue;
    move(postponementEnds, "nationwide postponement", law);
    if (periodDisregarded) countedFrom = postponementEnds;
  }

  const { postponement } = circumstances;
  const postponed = postponement ? postponedDate(lastDay, postponement) : lastDay;
  if (postponed !== lastDay)
    move(postponed, "disaster postponement", nationwidePostponements.source);
  // A period that ends on the workday after a weekend moves nothing, but its days are disregarded.
  if (postponed === postponement?.ends) countedFrom = postponed;
  return { act, statutory, countedFrom, lastDay, moves, source };
}
