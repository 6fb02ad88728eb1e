import type { CalendarDate } from "../../calendar/calendarDate";
import { MONEY_FORMAT } from "../../functions/cells/answerCell";
import { isHostError } from "../../functions/cells/hostError";
import { withFormattedNumbers } from "../../functions/cells/numberFormats";
import { rosterFunctions } from "../../functions/season/roster";
import type { RosterHeading } from "../../functions/season/rosterColumns";
import { shownCell } from "../answers/liveAnswer";
import { withoutArgument } from "./clientRow";
import { NotDone } from "../workbook/workbookHost";

/** What applies to every client of a list. */
export interface PaneSettings {
  /** The tax year of clients whose list has no column for it. */
  readonly taxYear: number;
  readonly asOf: CalendarDate;
  /** The interest rate for dates after the last published quarter, as entered; empty for none. */
  readonly assumedRate: string;
}

/** An answer as the pane shows it: its text, or the sentence of the error. */
export interface PaneAnswer {
  /** Empty for a blank answer or an error. */
  readonly text: string;
  /** Empty if there is no error. */
  readonly problem: string;
  /** The number behind the text; `undefined` for a text. */
  readonly value: number | undefined;
}

function paneAnswer(cell: unknown): PaneAnswer {
  const { text, kind } = shownCell(cell);
  if (kind === "error") {
    const { code, message } = cell as { readonly code?: string; readonly message?: string };
    const problem = message ?? `A cell of this row has the error ${code ?? ""}. Correct that cell.`;
    return { text: "", problem, value: undefined };
  }
  const { basicValue } =
    typeof cell === "object" ? (cell as { basicValue?: number }) : { basicValue: undefined };
  const value = typeof cell === "number" ? cell : basicValue;
  const isMoney =
    typeof cell === "object" && (cell as { numberFormat?: string }).numberFormat === MONEY_FORMAT;
  return { text: isMoney ? `$${text}` : text, problem: "", value };
}

/** A heading of the user, and the heading that it means or "not used". */
export type OwnHeading = readonly [heading: string, means: string];

function ownRange(own: readonly OwnHeading[]): readonly OwnHeading[] | null {
  return own.length === 0 ? null : own;
}

/** The answers of ROSTER for one client, by their headings. */
export type RosterAnswers<Heading extends RosterHeading> = Readonly<Record<Heading, PaneAnswer>>;

/** The arguments of the whole list, as ROSTER takes them. */
export function settingCells({ taxYear, asOf, assumedRate }: PaneSettings): {
  readonly taxYear: number;
  readonly asOf: number;
  readonly assumedRate: string | null;
} {
  const rate = assumedRate.trim();
  return { taxYear, asOf, assumedRate: rate === "" ? null : rate };
}

/**
 * What ROSTER answers for the clients of a list.
 *
 * @param headings - The headings of the list.
 * @param rows - The rows of the list.
 * @param settings - What applies to every client.
 * @param columns - The headings of the wanted answers.
 * @param own - The user's own headings, each with the heading that it means.
 * @returns The answers of each row.
 * @throws NotDone when the list cannot be read as a client list.
 */
export function rosterAnswers<Heading extends RosterHeading>(
  headings: readonly unknown[],
  rows: readonly (readonly unknown[])[],
  settings: PaneSettings,
  columns: readonly Heading[],
  own: readonly OwnHeading[] = []
): readonly RosterAnswers<Heading>[] {
  const { taxYear, asOf, assumedRate } = settingCells(settings);
  const cells = [
    [headings, ...rows],
    [[taxYear]],
    [[asOf]],
    [[assumedRate]],
    [columns],
    ownRange(own),
  ];
  try {
    const [, ...answers] = withFormattedNumbers("double", () =>
      rosterFunctions.ROSTER.answer(cells)
    );
    return answers.map(
      (row) =>
        Object.fromEntries(
          columns.map((heading, index) => [heading, paneAnswer(row[index])])
        ) as unknown as RosterAnswers<Heading>
    );
  } catch (thrown) {
    if (!isHostError(thrown)) throw thrown;
    throw new NotDone(withoutArgument((thrown as { message?: string }).message ?? ""));
  }
}
