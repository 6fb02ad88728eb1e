import { NotDone } from "./workbookHost";

/** Whether a host gives a cell as empty. A space is an entry of the user. */
export function hasNoEntry(cell: unknown): boolean {
  return cell === "" || cell === null || cell === undefined;
}

/**
 * Refuses to write into a cell that is not as it was read before, or that has a formula.
 *
 * @param address - Such as B7.
 * @param now - What the cell shows.
 * @param was - What was read before.
 * @param hasFormula - Whether a formula fills the cell.
 * @throws NotDone in these cases.
 */
export function refuseChangedCell(
  address: string,
  now: unknown,
  was: unknown,
  hasFormula: boolean
): void {
  if (now !== was && !(hasNoEntry(now) && hasNoEntry(was)))
    throw new NotDone(`Cell ${address} has changed meanwhile. Read the list again.`);
  if (hasFormula) throw new NotDone(`Cell ${address} has a formula. Change the formula instead.`);
}
