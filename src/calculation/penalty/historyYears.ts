import { compareDates } from "../../calendar/calendarDate";
import { includesYear, type TaxYear } from "../taxYear";
import { COUNTS_AGAINST_RELIEF, type PastPenalty, type PenaltyKind } from "./pastPenalty";

/** What is found for a year. */
export type HistoryFinding =
  | "no penalty"
  | PenaltyKind
  | "late and takes the relief"
  | "late as well"
  | "late in a later year"
  | "before the years looked at";

/** A year, what is found for it, and whether that speaks against relief. */
export interface HistoryYear {
  readonly taxYear: TaxYear;
  readonly isLookedAt: boolean;
  readonly finding: HistoryFinding;
  readonly counts: boolean;
}

/** The years that the relief of a tax year depends on. */
export interface HistoryYearsInput {
  readonly taxYear: TaxYear;
  readonly penalties: readonly PastPenalty[];
  readonly otherLateYears: readonly TaxYear[];
  /** The tax years before it that must be clean. */
  readonly lookedAt: readonly TaxYear[];
  /** The late year that takes the relief, if one does. */
  readonly takesRelief: TaxYear | undefined;
}

/**
 * What each year says about relief for a clean history.
 *
 * @param input - The years and penalties.
 * @returns The years looked at, the earliest first, with a row for each penalty or one that says there is none. Then the other years
 * that were given, the earliest first.
 * @see IRM 20.1.1.3.3.2.1(2) to (5)
 */
export function historyYears(input: HistoryYearsInput): readonly HistoryYear[] {
  const { taxYear, penalties, otherLateYears, lookedAt, takesRelief } = input;
  const ofPenalty = ({ taxYear: year, kind }: PastPenalty, isLookedAt: boolean): HistoryYear =>
    isLookedAt
      ? { taxYear: year, isLookedAt, finding: kind, counts: COUNTS_AGAINST_RELIEF[kind] }
      : { taxYear: year, isLookedAt, finding: "before the years looked at", counts: false };
  const ofLateYear = (year: TaxYear, isLookedAt: boolean): HistoryYear => {
    if (year.lastDay > taxYear.lastDay)
      return { taxYear: year, isLookedAt, finding: "late in a later year", counts: false };
    if (year === takesRelief)
      return { taxYear: year, isLookedAt, finding: "late and takes the relief", counts: true };
    const finding = isLookedAt ? "late as well" : "before the years looked at";
    return { taxYear: year, isLookedAt, finding, counts: isLookedAt };
  };
  const found = (isWanted: (year: TaxYear) => boolean, isLookedAt: boolean): HistoryYear[] => [
    ...penalties
      .filter((penalty) => isWanted(penalty.taxYear))
      .map((penalty) => ofPenalty(penalty, isLookedAt)),
    ...otherLateYears.filter(isWanted).map((year) => ofLateYear(year, isLookedAt)),
  ];
  const ofPeriod = (period: TaxYear): readonly HistoryYear[] => {
    const rows = found((year) => includesYear(period, year), true);
    if (rows.length > 0) return rows;
    return [{ taxYear: period, isLookedAt: true, finding: "no penalty", counts: false }];
  };
  const isOutside = (year: TaxYear): boolean =>
    !lookedAt.some((period) => includesYear(period, year));
  const others = found(isOutside, false).sort((one, other) =>
    compareDates(one.taxYear.lastDay, other.taxYear.lastDay)
  );
  return [...lookedAt.flatMap(ofPeriod), ...others];
}
