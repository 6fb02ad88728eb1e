import { unreadableInRow } from "../../functions/season/unreadableCells";
import type { RosterHeading } from "../../functions/season/rosterColumns";
import { addressIn, clientRows, columnOf, sentenceAtCell, type ClientRow } from "./clientRow";
import { rosterClientOf } from "./clientReading";
import { oneLine } from "./listReading";
import {
  rosterAnswers,
  type OwnHeading,
  type PaneSettings,
  type RosterAnswers,
} from "./rosterAnswers";
import type { SelectedList } from "../workbook/workbookHost";

/** A cell of a list that cannot be read. */
export interface ListFault {
  /** Such as B7. */
  readonly address: string;
  /** Whose row it is; the number of the row if it has no name. */
  readonly client: string;
  readonly heading: string;
  /** What is wrong, and what to enter. */
  readonly sentence: string;
}

/** What the clients of a list owe, and what of it is not known. */
export interface ListTotals {
  readonly clients: number;
  /** In dollars and cents. */
  readonly balanceDue: number;
  /** In dollars and cents. */
  readonly suggestedPayment: number;
  /** Rows whose balance due or suggested payment cannot be calculated. */
  readonly leftOut: number;
  /** Rows whose name begins with Total. */
  readonly totalRows: number;
}

/** The cells that cannot be read, and the totals of the rest. */
export interface ListCheck {
  readonly faults: readonly ListFault[];
  readonly totals: ListTotals;
}

const COLUMNS = [
  "Client",
  "Balance due",
  "Suggested payment",
  "Unreadable",
] as const satisfies readonly RosterHeading[];
const CENTS = 100;
const ROWS_AT_ONCE = 5_000;

/** What ROSTER answers for a row with the total of the list. */
const IS_TOTAL = "a total, not a client";

function faultsOf(client: ClientRow, name: string, settings: PaneSettings): ListFault[] {
  const { list, index, reading } = client;
  const cells = unreadableInRow(
    rosterClientOf(client, settings),
    reading,
    (at) => list.rows[index]?.[at]
  );
  return cells.map((cell) => ({
    address: addressIn(list, index, cell.reading.index),
    client: name,
    heading: oneLine(cell.reading.heading),
    sentence:
      cell.sentence === "" ? `The cell has the error ${cell.content}. Correct it.` : cell.sentence,
  }));
}

/** The fault of a row whose amounts are missing: a blank cell where one is needed. */
function missingAmount(client: ClientRow, name: string, problem: string): ListFault {
  const { list, index, reading } = client;
  const isTax = problem.startsWith("totalTax");
  const column = columnOf(reading, isTax ? "totalTax" : "payments") ?? reading[0];
  const sentence = sentenceAtCell(problem, client).replace(/^Cell [A-Z]+\d+ \([^)]*\): /, "");
  return {
    address: addressIn(list, index, column?.index ?? 0),
    client: name,
    heading: oneLine(column?.heading ?? ""),
    sentence,
  };
}

/** The answers for every row, of which ROSTER takes only so many at once. */
function allAnswers(
  { headings, rows }: SelectedList,
  settings: PaneSettings,
  own: readonly OwnHeading[]
): readonly RosterAnswers<(typeof COLUMNS)[number]>[] {
  const answers: RosterAnswers<(typeof COLUMNS)[number]>[] = [];
  for (let row = 0; row < rows.length; row += ROWS_AT_ONCE)
    answers.push(
      ...rosterAnswers(headings, rows.slice(row, row + ROWS_AT_ONCE), settings, COLUMNS, own)
    );
  return answers;
}

/**
 * Checks the cells of a list and adds up what its clients owe.
 *
 * @param list - The list, without columns of this add-in.
 * @param settings - What applies to every client.
 * @param own - The meanings that the user has chosen for headings.
 * @throws NotDone when the headings cannot be read.
 */
export function listCheck(
  list: SelectedList,
  settings: PaneSettings,
  own: readonly OwnHeading[]
): ListCheck {
  const answers = allAnswers(list, settings, own);
  const faults: ListFault[] = [];
  let [clients, balanceDue, suggestedPayment, leftOut] = [0, 0, 0, 0];
  for (const [index, client] of clientRows(list, settings.taxYear, own).entries()) {
    const row = answers[index];
    if (!client || !row) continue;
    clients += 1;
    const name = row.Client.text || `Row ${list.headingRow + 1 + index}`;
    const found = row.Unreadable.text === "" ? [] : faultsOf(client, name, settings);
    const [balance, payment] = [row["Balance due"], row["Suggested payment"]];
    const problem = balance.problem || payment.problem;
    if (problem !== "" && found.length === 0) found.push(missingAmount(client, name, problem));
    faults.push(...found);
    if (balance.value === undefined || payment.value === undefined) leftOut += 1;
    else {
      balanceDue += Math.round(balance.value * CENTS);
      suggestedPayment += Math.round(payment.value * CENTS);
    }
  }
  const totalRows = answers.filter(({ Unreadable }) => Unreadable.text === IS_TOTAL).length;
  return {
    faults,
    totals: {
      clients,
      balanceDue: balanceDue / CENTS,
      suggestedPayment: suggestedPayment / CENTS,
      leftOut,
      totalRows,
    },
  };
}
