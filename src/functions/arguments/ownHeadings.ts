import { cellValue, isBlankOrZero, shown } from "../cells/cellValue";
import { InputError } from "../cells/inputError";
import { pairedRows } from "../cells/pairedRows";
import { readRows } from "../cells/readRows";
import type { RangeKind } from "./argumentKind";
import { ownHeadingsOf, type OwnHeading, type OwnHeadings } from "./readHeadings";

/** The user's own headings: rows of two cells, the heading in the list and the heading that it means. */
export const ownHeadings: RangeKind<OwnHeadings> = {
  id: "own-headings",
  title: "Own headings",
  description:
    "A range of two columns: a heading of your list, and beside it the heading that it means, such as Total tax. It is for headings that are not read, or not read as you mean them; beside a heading that is not to be used, enter `not used`. A heading that the list does not have is refused. Blank rows are ignored.",
  accepted: ['{"Fed liab 1040","Total tax";"Memo","not used"}'],
  notAccepted: ['{"Fed liab 1040"}'],
  takes: "range",
  whenBlank: { means: new Map() },
  read: (range, name) => {
    const pairs = pairedRows(name, range, "your heading and its meaning");
    const own = readRows(name, pairs, ({ place, first, second }): readonly OwnHeading[] => {
      const [heading, meaning] = [cellValue(first), cellValue(second)];
      if (isBlankOrZero(heading) && isBlankOrZero(meaning)) return [];
      if (isBlankOrZero(heading) || isBlankOrZero(meaning))
        throw new InputError(
          place,
          `${shown(isBlankOrZero(heading) ? meaning : heading)} has no heading beside it. Enter your heading and the heading that it means.`
        );
      return [{ heading: String(heading), means: String(meaning), place }];
    });
    return ownHeadingsOf(own.flat());
  },
};
