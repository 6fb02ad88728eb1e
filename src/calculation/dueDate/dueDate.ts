import type { CalendarDate } from "../../calendar/calendarDate";
import { nextWorkday } from "../../calendar/nextWorkday";
import { requireReach } from "../../rules/listTable";
import type { Rulebook } from "../../rules/rulebook";
import type { Act } from "../../rules/schema/dateTables";
import type { Source } from "../../rules/source";
import type { State } from "../state";
import { postponedDate, type DisasterPostponement } from "./disasterPostponement";

/** One step by which the last day for an act moved, and why. */
export interface DateMove {
  readonly from: CalendarDate;
  readonly to: CalendarDate;
  readonly because: string;
  readonly source: Source;
}

/** When an act is due. */
export interface DueDate {
  readonly act: Act;
  /** The day the law names, any extension included. */
  readonly statutory: CalendarDate;
  /** The day from which months of delinquency and interest count once the act is late: weekends and holidays do not move it. */
  readonly countedFrom: CalendarDate;
  /** The last day on which the act is timely. */
  readonly lastDay: CalendarDate;
  readonly moves: readonly DateMove[];
  readonly source: Source;
}

/** What besides the tax year and the filer moves a client's dates. */
export interface Circumstances {
  readonly state?: State | undefined;
  readonly postponement?: DisasterPostponement | undefined;
}

/** The rules that move a date. */
export type MovingRules = Pick<Rulebook, "legalHolidays" | "nationwidePostponements">;

/**
 * Moves the day that the law names for an act: weekends and holidays, then postponements for everyone, then the client's own
 * disaster relief.
 *
 * Section 7503 only decides whether the act was timely; a date missed altogether counts from the day the law names
 * (26 CFR 301.6651-1(b)(3)). A postponement under section 7508A disregards the time, so that a missed date counts from its end.
 *
 * @param act - What is due. State holidays move returns and the tax payable with them, not installments (Rev. Rul. 2015-13).
 * @param statutory - The day the law names, any extension included.
 * @param source - The law that names it.
 * @param circumstances - Residence and disaster relief.
 * @param rules - Holidays and postponements.
 * @returns The due date with its moves.
 * @throws NotInTableError for a day whose holidays are not held.
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

  const state = act === "installment" ? undefined : circumstances.state;
  const workday = nextWorkday(statutory, legalHolidays.rows, state);
  if (workday.skipped.length > 0) {
    const reasons = workday.skipped.map((skipped) => skipped.because);
    move(workday.day, reasons.join(", "), legalHolidays.source);
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
    move(postponementEnds, "postponed for everyone", law);
    if (periodDisregarded) countedFrom = postponementEnds;
  }

  const { postponement } = circumstances;
  const relieved = postponement ? postponedDate(lastDay, postponement) : lastDay;
  if (relieved !== lastDay) move(relieved, "disaster relief", nationwidePostponements.source);
  // a period that ends on the workday after a weekend moves nothing, and yet its days do not count
  if (relieved === postponement?.postponementEnds) countedFrom = relieved;
  return { act, statutory, countedFrom, lastDay, moves, source };
}
