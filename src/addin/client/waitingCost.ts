import { shortDate } from "../../calendar/writtenDate";
import { recordAsOf } from "../../calculation/season/recordAsOf";
import { cellValue, isBlankOrZero } from "../../functions/cells/cellValue";
import type { RosterClient } from "../../functions/season/rosterClient";
import { ifReadable, rosterClientOf } from "../list/clientReading";
import { columnOf, sentenceAtCell, type ClientRow } from "../list/clientRow";
import { rosterAnswers, type PaneAnswer, type PaneSettings } from "../list/rosterAnswers";

const COSTS = [
  "Penalties and interest with extension",
  "Penalties and interest without extension",
] as const;

/** The cost of waiting: penalties and interest to the dates of the plan, with and without the extension. */
export interface WaitingCost {
  /** Such as "If filed and paid on 10/15/2026"; empty if the dates cannot be read. */
  readonly when: string;
  readonly withExtension: PaneAnswer;
  readonly without: PaneAnswer;
  /** Whether the extension counts by the record and the plan; `undefined` if they cannot be read. */
  readonly isExtended: boolean | undefined;
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
  const record = recordAsOf(client.record(), client.given("asOf"));
  const { filedOn, paidOn } = client.plan();
  const [filed, paid] = [shortDate(filedOn), shortDate(paidOn)];
  if (record.filedOn !== undefined)
    return `Filed on ${filed}${record.paidOn === undefined ? ", if" : " and"} paid on ${paid}`;
  return filed === paid
    ? `If filed and paid on ${filed}`
    : `If filed on ${filed} and paid on ${paid}`;
}

/**
 * The cost of waiting of a client.
 *
 * @param client - The client's row.
 * @param extended - The extended due date, a worksheet date, to which the cost is counted if the list plans no other.
 * @param settings - Default tax year, as-of date, assumed rate.
 */
export function waitingCost(
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
