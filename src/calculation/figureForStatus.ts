import type { FilingStatus } from "./filingStatus";

/** Figures of a rule table by filing status: `others` is for every status that is not named. */
export type FiguresByStatus<Figure> = Readonly<Partial<Record<FilingStatus, Figure>>> & {
  readonly others: Figure;
};

/**
 * The figure that a rule table has for a filing status.
 *
 * @param figures - The table's figures.
 * @param status - Filing status.
 * @returns The figure of the status, or that of all others if the table does not name it.
 */
export function figureForStatus<Figure>(
  figures: FiguresByStatus<Figure>,
  status: FilingStatus
): Figure {
  return figures[status] ?? figures.others;
}
