import { plainText } from "../../functions/arguments/argumentKind";
import { CLIENT_LIST_HEADINGS } from "../../functions/arguments/clientListHeadings";
import {
  meaningsOf,
  NOT_USED,
  readHeadings,
  type HeadingReading,
} from "../../functions/arguments/readHeadings";
import { InputError } from "../../functions/cells/inputError";
import { headingInWords } from "../../functions/season/rosterHeadings";
import { withoutArgument } from "./clientRow";
import { ownMeanings } from "./ownList";
import type { OwnHeading } from "./rosterAnswers";
import type { SelectedList } from "../workbook/workbookHost";

/** What a heading can be read as if it is a part of the payments. */
export const PART_OF_PAYMENTS = "Other payments";
/** What the user can choose for a heading. */
export const MEANINGS: readonly string[] = [
  NOT_USED,
  ...Object.values(CLIENT_LIST_HEADINGS).map(([heading]) => heading),
  PART_OF_PAYMENTS,
];

/** How a heading of the list is read. */
export interface ReadHeading {
  readonly heading: string;
  /** One of {@link MEANINGS}. */
  readonly readAs: string;
  /** Such as "Check: it looks like money"; empty for none. */
  readonly remark: string;
}

/** How the headings of a list are read. */
export interface ListReading {
  readonly headings: readonly ReadHeading[];
  /** Why the list cannot be read, in a sentence; empty if it can. */
  readonly problem: string;
}

/** A heading in one line. */
export const oneLine = (heading: string): string => heading.trim().replace(/\s+/g, " ");

/**
 * How ROSTER reads the headings of a list.
 *
 * @param list - The list, without columns of this add-in.
 * @param taxYear - The tax year of the list.
 * @param own - The meanings that the user has chosen.
 */
export function listReading(
  list: SelectedList,
  taxYear: number,
  own: readonly OwnHeading[]
): ListReading {
  const meanings = ownMeanings(own);
  const words = (readings: readonly HeadingReading[]): ReadHeading[] =>
    readings.map((one) => {
      const [heading, readAs, remark] = headingInWords(list, one);
      return { heading: oneLine(heading), readAs: one.isPart ? PART_OF_PAYMENTS : readAs, remark };
    });
  try {
    const readings = readHeadings("clientList", list.headings, taxYear, meanings);
    return { headings: words(readings), problem: "" };
  } catch (thrown) {
    if (!(thrown instanceof InputError)) throw thrown;
    const readings = meaningsOf("clientList", list.headings, taxYear, meanings);
    return { headings: words(readings), problem: withoutArgument(thrown.message) };
  }
}

/** The user's meanings with another one for a heading. */
export function withMeaning(
  own: readonly OwnHeading[],
  heading: string,
  means: string
): readonly OwnHeading[] {
  return [...own.filter(([other]) => plainText(other) !== plainText(heading)), [heading, means]];
}
