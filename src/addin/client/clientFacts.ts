import { yearOf } from "../../calendar/calendarDate";
import { shortDate } from "../../calendar/writtenDate";
import type { Stage } from "../../calculation/season/requestStage";
import { STATE_NAMES } from "../../calculation/state";
import { isFiscalYear } from "../../calculation/taxYear";
import type { RosterClient } from "../../functions/season/rosterClient";
import { ifReadable, rosterClientOf } from "../list/clientReading";
import { addressIn, sentenceAtCell, type ClientRow } from "../list/clientRow";
import { rosterAnswers, type PaneAnswer, type PaneSettings } from "../list/rosterAnswers";
import { waitingCost, type WaitingCost } from "./waitingCost";

const COLUMNS = [
  "Client",
  "Regular due date",
  "Extended due date",
  "Payment due date",
  "Balance due",
  "Pay now",
  "Method",
  "Status",
  "Days left",
  "Next deadline",
  "Severity",
  "Most serious issue",
  "What to do",
  "State due date",
  "State extended due date",
  "Confirm first",
  "Unreadable",
] as const;

/** A cell of the row that cannot be read. */
export interface UnreadableCell {
  readonly address: string;
  readonly heading: string;
}

/** What the pane shows of a client. */
export interface ClientFacts {
  readonly name: string;
  /** Tax year and state, such as "tax year 2025, New York"; empty if they cannot be read. */
  readonly about: string;
  /** `undefined` if the record cannot be read. */
  readonly stage: Stage | undefined;
  readonly answers: Readonly<Record<(typeof COLUMNS)[number], PaneAnswer>>;
  readonly waiting: WaitingCost;
  readonly unreadable: readonly UnreadableCell[];
  /** Why a date or an amount above is not shown, a sentence each. */
  readonly problems: readonly string[];
}

function aboutOf({ given }: RosterClient): string {
  const year = ifReadable(() => given("taxYear"));
  const state = ifReadable(() => given("state"));
  const years =
    year &&
    (isFiscalYear(year)
      ? `year ending ${shortDate(year.closesOn ?? year.lastDay)}`
      : `tax year ${yearOf(year.lastDay)}`);
  return [years, state && (STATE_NAMES[state] ?? state)]
    .filter((text) => text !== undefined)
    .join(", ");
}

/** The cells that ROSTER's column of unreadable cells names. */
export function cellsNamedIn(text: string, client: ClientRow): readonly UnreadableCell[] {
  const { list, index, reading } = client;
  return reading
    .filter(({ field }) => field !== undefined)
    .filter(({ heading }) => `; ${text}`.includes(`; ${heading.trim()}: `))
    .map((one) => ({ address: addressIn(list, index, one.index), heading: one.heading.trim() }));
}

/**
 * What the pane shows of a client on the as-of date. All of it is calculated by the worksheet functions.
 *
 * @param client - The client's row.
 * @param settings - Default tax year, as-of date, assumed rate.
 * @returns The facts; what cannot be calculated has a sentence that names the cell.
 */
export function clientFacts(client: ClientRow, settings: PaneSettings): ClientFacts {
  const { list, index } = client;
  const [given] = rosterAnswers(
    list.headings,
    [list.rows[index] ?? []],
    settings,
    COLUMNS,
    list.own
  );
  const answers = Object.fromEntries(
    COLUMNS.map((heading) => {
      const answer = given?.[heading] ?? { text: "", problem: "", value: undefined };
      return [heading, { ...answer, problem: sentenceAtCell(answer.problem, client) }];
    })
  ) as unknown as ClientFacts["answers"];
  const waiting = waitingCost(client, answers["Extended due date"].value, settings);
  const shown = [
    answers["Regular due date"],
    answers["Extended due date"],
    answers["Balance due"],
    answers["Pay now"],
    answers.Status,
    answers["Next deadline"],
    waiting.withExtension,
    waiting.without,
  ];
  const problems = new Set(shown.map(({ problem }) => problem).filter((text) => text !== ""));
  return {
    name: answers.Client.text || `Row ${list.headingRow + 1 + index}`,
    about: aboutOf(rosterClientOf(client, settings)),
    stage: answers.Status.text === "" ? undefined : (answers.Status.text as Stage),
    answers,
    waiting,
    unreadable: cellsNamedIn(answers.Unreadable.text, client),
    problems: [...problems],
  };
}
