import { plainText } from "../../functions/arguments/argumentKind";
import { ownHeadingsOf, type OwnHeadings } from "../../functions/arguments/ownHeadings";
import { ownColumns } from "../workbook/fillPlan";
import type { OwnHeading } from "./rosterAnswers";
import type { SelectedList } from "../workbook/workbookHost";

/** The codes of errors as Excel gives them to a page: as text. */
const ERROR = /^#(?:N\/A|VALUE!|REF!|NAME\?|DIV\/0!|NUM!|NULL!|SPILL!|CALC!|BUSY!|GETTING_DATA)$/;

/** A cell as Excel passes it to a function: an error is no text. */
export function passed(cell: unknown): unknown {
  return typeof cell === "string" && ERROR.test(cell) ? { type: "Error", basicValue: cell } : cell;
}

/**
 * The list as the user has it: the columns up to the first one that this add-in has written, whose formulas refer to those before it.
 *
 * @param list - The list as the host gives it.
 * @returns The list, with error cells as the functions get them.
 */
export function usersOwn(list: SelectedList): SelectedList {
  const [end = list.headings.length] = ownColumns(list);
  return {
    ...list,
    headings: list.headings.slice(0, end),
    rows: list.rows.map((row) => row.slice(0, end).map(passed)),
    formulas: list.formulas.map((row) => row.slice(0, end)),
  };
}

/** The headings of the user to the right of the columns that this add-in has written, which are not read. */
export function headingsBeyond(list: SelectedList): readonly string[] {
  const own = ownColumns(list);
  const [first = list.headings.length] = own;
  return list.headings
    .map((heading, index) => ({ text: String(heading).trim(), index }))
    .filter(({ text, index }) => index > first && text !== "" && !own.includes(index))
    .map(({ text }) => text);
}

/** The meanings that the user has chosen, as the functions take them. */
export function ownMeanings(own: readonly OwnHeading[]): OwnHeadings {
  return ownHeadingsOf(own.map(([heading, means]) => ({ heading, means, place: "headings" })));
}

/** The meanings of headings that a list still has: the user may have changed a heading after choosing. */
export function meaningsIn(
  { headings }: SelectedList,
  own: readonly OwnHeading[]
): readonly OwnHeading[] {
  const present = new Set(headings.map((heading) => plainText(String(heading))));
  return own.filter(([heading]) => present.has(plainText(heading)));
}
