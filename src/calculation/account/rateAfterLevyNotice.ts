import { addDays, type CalendarDate } from "../../calendar/calendarDate";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { LevyNoticeRate } from "../penalty/failureToPayPenalty";

/**
 * Failure-to-pay rate after a levy notice: that of each month of delinquency that begins more than ten days after the notice.
 *
 * The ten days count from the date of the notice, as the statute says. A demand for immediate payment in jeopardy, which raises the
 * rate on its own date, is not calculated.
 *
 * @param levyNoticeOn - Date of the notice under section 6331(d); `undefined` if there is none.
 * @param rules - The days and the rate.
 * @returns The rate and the date after which a month must begin; `undefined` without a notice.
 * @throws NotInTableError for a notice before the table.
 * @see 26 U.S.C. 6651(d), 6331(d)
 *
 * @example
 * // levy notice of July 5, 2026, tax due April 15: the month that begins on July 16 has 1%
 */
export function rateAfterLevyNotice(
  levyNoticeOn: CalendarDate | undefined,
  rules: Pick<Rulebook, "levyNotice">
): LevyNoticeRate | undefined {
  if (levyNoticeOn === undefined) return undefined;
  const { figures, source } = entryOn(rules.levyNotice, levyNoticeOn);
  return {
    after: addDays(levyNoticeOn, figures.days.toNumber()),
    monthlyRate: figures.monthlyRate,
    source,
  };
}
