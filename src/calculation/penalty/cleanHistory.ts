import { compareDates } from "../../calendar/calendarDate";
import type { Rulebook } from "../../rules/rulebook";
import { includesYear, yearsBefore, type TaxYear } from "../taxYear";
import { cleanHistoryRule, type CleanHistoryRule } from "./cleanHistoryRule";
import { historyYears, type HistoryYear } from "./historyYears";
import { COUNTS_AGAINST_RELIEF, type PastPenalty } from "./pastPenalty";

/** The penalties that a client's relief depends on. */
export interface CleanHistoryInput {
  /** The year whose penalties relief would remove. */
  readonly taxYear: TaxYear;
  /** Penalties of the years before it. */
  readonly penalties: readonly PastPenalty[];
  /** Other years whose penalties relief would remove as well. */
  readonly otherLateYears: readonly TaxYear[];
}

/** Whether relief is likely, and why. */
export interface CleanHistory {
  readonly isLikely: boolean;
  readonly rule: CleanHistoryRule;
  readonly years: readonly HistoryYear[];
}

/**
 * Whether relief for a clean history is likely for the penalties of a tax year, and what each year says about it.
 *
 * The tax years before it must have no penalty that was not reversed in full, other than the estimated tax penalty, and no earlier
 * relief for a clean history. The relief covers one year: of several late years the earliest that meets the conditions takes it. The
 * manual also disregards a small penalty, but the amount is not public, so every unreversed penalty counts here.
 *
 * @param input - The tax year, the earlier penalties, the other late years.
 * @param rules - The relief that applies to the tax year.
 * @returns Whether relief is likely, which is never a promise, and the years.
 * @throws NotInTableError for a tax year that the table does not cover.
 * @see IRM 20.1.1.3.3.2.1(2) to (5)
 *
 * @example
 * // tax year 2025, unreversed penalty in 2024: not likely; in 2021: likely
 */
export function cleanHistory(
  input: CleanHistoryInput,
  rules: Pick<Rulebook, "cleanHistoryRelief">
): CleanHistory {
  const { taxYear, penalties, otherLateYears } = input;
  const rule = cleanHistoryRule(taxYear, rules);
  const lateYears = [...otherLateYears, taxYear].sort((one, other) =>
    compareDates(one.lastDay, other.lastDay)
  );
  const isClean = (period: TaxYear): boolean =>
    !lateYears.some((year) => includesYear(period, year)) &&
    !penalties.some(
      (past) => COUNTS_AGAINST_RELIEF[past.kind] && includesYear(period, past.taxYear)
    );
  const takesRelief = lateYears.find((year) =>
    yearsBefore(year, rule.lookBackYears).every(isClean)
  );
  const lookedAt = yearsBefore(taxYear, rule.lookBackYears);
  return {
    isLikely: takesRelief === taxYear,
    rule,
    years: historyYears({ ...input, lookedAt, takesRelief }),
  };
}
