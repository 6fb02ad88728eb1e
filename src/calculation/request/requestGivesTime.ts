import type { ClientDates } from "../dueDate/clientDates";

/**
 * Whether a request for the extension gives more time to file.
 *
 * It gives none where a disaster postponement moves the regular due date to the extended due date or past it. Both due dates are then
 * the end of the postponement, with or without a request.
 *
 * @param dates - The client's dates.
 * @returns Whether the extended due date is later than the regular due date.
 * @see 26 U.S.C. 6081(a), 7508A(a); 26 CFR 301.7508A-1(b)(4)
 *
 * @example
 * // tax year 2024, postponement from 2025-01-07 to 2025-10-15: both due dates are 2025-10-15 //=> false
 */
export function requestGivesTime({ regular, extended }: ClientDates): boolean {
  return extended.lastDay > regular.lastDay;
}
