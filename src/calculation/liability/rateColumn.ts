import type { RateColumn } from "../../rules/liabilityTables";
import type { FilingStatus } from "../filingStatus";

/**
 * The column of the rate schedules for a filing status: a surviving spouse uses the joint one.
 *
 * @see 26 U.S.C. 1(a), (j)(2)
 */
export function rateColumn(status: FilingStatus): RateColumn {
  return status === "survivor" ? "joint" : status;
}
