import { ownColumns } from "../workbook/fillPlan";
import { writtenBefore } from "./listColumns";
import { meaningsIn, passed } from "./ownList";
import type { OwnHeading } from "./rosterAnswers";
import type { SelectedList } from "../workbook/workbookHost";

/** A list as the pane reads it. */
export interface PaneList extends SelectedList {
  /** The meanings that the user has chosen for headings, as the formulas of the list tool have them. */
  readonly own?: readonly OwnHeading[];
}

/**
 * A list without the answers that this add-in has written into it, which are not what the user has entered, and with error cells as
 * the functions get them.
 *
 * @param list - The list as the host gives it.
 */
export function paneList(list: SelectedList): PaneList {
  const answers = new Set(ownColumns(list));
  return {
    ...list,
    headings: list.headings.map((heading, index) => (answers.has(index) ? "" : heading)),
    rows: list.rows.map((row) => row.map(passed)),
    own: meaningsIn(list, writtenBefore(list)?.own ?? []),
  };
}
