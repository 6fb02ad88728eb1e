import { yearOf } from "../calendar/calendarDate";
import { shortDate } from "../calendar/writtenDate";
import type { Stage } from "../calculation/season/requestStage";
import { STATE_NAMES } from "../calculation/state";
import { isFiscalYear } from "../calculation/taxYear";
import { recordAsOf } from "../calculation/season/recordAsOf";
import { isHostError, hostError } from "../functions/cells/hostError";
import { isBlankOrZero, cellValue } from "../functions/cells/cellValue";
import { cellOfClient } from "../functions/season/cellOfClient";
import { rosterClient, type RosterClient } from "../functions/season/rosterClient";
import { rulebook } from "../rules/rulebook";
import { addressIn, columnOf, sentenceAtCell, type ClientRow } from "./clientRow";
import { rosterAnswers, settingCells, type PaneAnswer, type PaneSettings } from "./rosterAnswers";

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
const COSTS = [
  "Penalties and interest with extension",
  "Penalties and interest without extension",
] as const;

/** A cell of the row that cannot be read. */
export interface UnreadableCell {
  readonly address: string;
  readonly heading: string;
}

/** The cost of waiting: penalties and interest to the dates of the plan, with and without the extension. */
export interface WaitingCost {
  /** Such as "If filed and paid on 10/15/2026"; empty if the dates cannot be read. */
  readonly when: string;
  readonly withExtension: PaneAnswer;
  readonly without: PaneAnswer;
  /** Whether the extension counts by the record and the plan; `undefined` if they cannot be read. */
  readonly isExtended: boolean | undefined;
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

/** A client's row as ROSTER reads it, for what has no column of its own. */
export function rosterClientOf({ row }: ClientRow, settings: PaneSettings): RosterClient {
  return rosterClient(cellOfClient(row, settingCells(settings)), rulebook);
}

/** A value, or `undefined` where a cell of the row cannot be read. */
export function ifReadable<Value>(work: () => Value): Value | undefined {
  try {
    return work();
  } catch (thrown) {
    if (isHostError(hostError(thrown))) return undefined;
    throw thrown;
  }
}

function aboutOf({ given }: RosterClient): string {
  const year = ifReadable(() => given.taxYear);
  const state = ifReadable(() => given.state);
  const years =
    year &&
    (isFiscalYear(year)
      ? `year ending ${shortDate(year.closesOn ?? year.lastDay)}`
      : `tax year ${yearOf(year.lastDay)}`);
  return [years, state && (STATE_NAMES[state] ?? state)]
    .filter((text) => text !== undefined)
    .join(", ");
}

/** The row with the extended due date, a worksheet date, as the planned filing date if the list plans no other. */
export function withPlan(client: ClientRow, extended: number | undefined): ClientRow {
  const planned = ifReadable(() => isBlankOrZero(cellValue(client.row.cell("plannedFilingDate"))));
  if (planned !== true || extended === undefined) return client;
  const { row } = client;
  const cell: typeof row.cell = (field) =>
    field === "plannedFilingDate" ? extended : row.cell(field);
  return { ...client, row: { ...row, cell } };
}

/** When the return is filed and the balance paid, as the cost of waiting has it. */
function whenFiled(client: RosterClient): string {
  const record = recordAsOf(client.record(), client.given.asOf);
  const { filedOn, paidOn } = client.plan();
  const [filed, paid] = [shortDate(filedOn), shortDate(paidOn)];
  if (record.filedOn !== undefined)
    return `Filed on ${filed}${record.paidOn === undefined ? ", if" : " and"} paid on ${paid}`;
  return filed === paid
    ? `If filed and paid on ${filed}`
    : `If filed on ${filed} and paid on ${paid}`;
}

function waitingCost(
  client: ClientRow,
  extended: number | undefined,
  settings: PaneSettings
): WaitingCost {
  const { list, index, reading } = client;
  const planned = withPlan(client, extended);
  const isPlanMissing = planned !== client;
  const column = columnOf(reading, "plannedFilingDate");
  const cells = [...(list.rows[index] ?? [])];
  if (isPlanMissing) cells[column?.index ?? list.headings.length] = extended;
  const headings =
    isPlanMissing && !column ? [...list.headings, "Planned filing date"] : list.headings;
  const [answers] = rosterAnswers(headings, [cells], settings, COSTS, list.own);
  const none: PaneAnswer = { text: "", problem: "", value: undefined };
  const asCells = (answer = none): PaneAnswer => ({
    ...answer,
    problem: sentenceAtCell(answer.problem, client),
  });
  const read = rosterClientOf(planned, settings);
  return {
    when: ifReadable(() => whenFiled(read)) ?? "",
    withExtension: asCells(answers?.["Penalties and interest with extension"]),
    without: asCells(answers?.["Penalties and interest without extension"]),
    isExtended: ifReadable(() => read.plan().validExtension),
  };
}

/** The cells that ROSTER's column of unreadable cells names. */
export function unreadableCells(text: string, client: ClientRow): readonly UnreadableCell[] {
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
    unreadable: unreadableCells(answers.Unreadable.text, client),
    problems: [...problems],
  };
}
