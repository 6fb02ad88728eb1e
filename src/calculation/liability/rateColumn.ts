import type { FilingStatus } from "../filingStatus";

/** Columns of the rate schedules. */
export type RateColumn = Exclude<FilingStatus, "survivor">;

/**
 * The column of the rate schedules for a filing status: a surviving spouse uses the joint one.
 *
 * @see IRC section 1(a), (j)(2)
 */
export function rateColumn(status: FilingStatus): RateColumn {
  return status === "survivor" ? "joint" : status;
}
