import { cellValue, isBlankOrZero, shown } from "../cells/cellValue";
import { InputError } from "../cells/inputError";
import { pairedRows } from "../cells/pairedRows";
import { readRows } from "../cells/readRows";
import { plainText, type RangeKind } from "./argumentKind";

/** A heading of the user, and the heading that it means or "not used". */
export interface OwnHeading {
  readonly heading: string;
  readonly means: string;
  /** The argument and the row, as an error message names them. */
  readonly place: string;
}

/** The headings of the user for columns that are named otherwise, such as "Fed 1040 liab" for "Total tax", by their plain text. */
export type OwnHeadings = ReadonlyMap<string, OwnHeading>;

/** The headings of the user by their plain text. The last of two rows with the same heading counts. */
export function ownHeadingsOf(all: readonly OwnHeading[]): OwnHeadings {
  return new Map(all.map((one) => [plainText(one.heading), one]));
}

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

/** The most characters of the list's headings in a message. */
const MOST_QUOTED = 110;

/** The headings of a list in quotes, as many as a message has room for. */
function quoted(headings: readonly string[]): string {
  let [text, count] = ["", 0];
  for (const heading of headings) {
    const longer = text + (count === 0 ? "" : ", ") + shown(heading.trim().replace(/\s+/g, " "));
    if (longer.length > MOST_QUOTED) break;
    [text, count] = [longer, count + 1];
  }
  const more = headings.length - count;
  return more > 0 ? `${text} and ${String(more)} more.` : `${text}.`;
}

/** Refuses a heading of the user's own that the list does not have: its column would be read otherwise, or not at all. */
export function refuseAbsent(cells: readonly unknown[], own: OwnHeadings): void {
  if (own.size === 0) return;
  const present = cells
    .map((cell) => cellValue(cell))
    .filter((value) => typeof value === "string" && value.trim() !== "")
    .map(String);
  const names = new Set(present.map(plainText));
  readRows("headings", [...own.values()], ({ heading, place }) => {
    if (names.has(plainText(heading))) return;
    throw new InputError(
      place,
      `${shown(heading)} is not a heading of the list. Enter one of its headings: ${quoted(present)}`
    );
  });
}
