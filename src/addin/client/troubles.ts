import type { Stage } from "../../calculation/season/requestStage";
import { addressIn, clientRows, columnOf, sentenceAtCell, type ClientRow } from "../list/clientRow";
import { cellsNamedIn } from "./clientFacts";
import { STAGES_BY_URGENCY } from "./clientStatus";
import { rosterAnswers, type PaneSettings, type RosterAnswers } from "../list/rosterAnswers";
import type { PaneList } from "../list/paneList";
import { NotDone } from "../workbook/workbookHost";

const COLUMNS = [
  "Client",
  "Status",
  "Days left",
  "Next deadline",
  "Severity",
  "Most serious issue",
  "What to do",
  "Unreadable",
] as const;
/** Days left where there is no deadline: after all others. */
const NO_DEADLINE = 100_000;
type Answers = RosterAnswers<(typeof COLUMNS)[number]>;

/** A client with a problem or a risk, or a row that cannot be read. */
export interface Trouble {
  readonly name: string;
  readonly stage: Stage | undefined;
  readonly issue: string;
  /** The next deadline in words; empty if there is none. */
  readonly deadline: string;
  readonly whatToDo: string;
  /** The cell to go to: that of the name, or the first one that cannot be read. */
  readonly address: string;
}

/** The whole practice on the as-of date. */
export interface PracticeFacts {
  readonly clients: number;
  /** How many clients have each status, the most urgent first, without those that none has. */
  readonly counts: readonly { readonly stage: Stage | undefined; readonly count: number }[];
  /** The worst first. */
  readonly troubles: readonly Trouble[];
}

/** The order of the list: what is past due, other problems, rows that cannot be read, risks. */
function rankOf({ Status, Severity }: Answers, isUnreadable: boolean): number {
  if (Status.text === "past due") return 0;
  if (Severity.text === "problem") return 1;
  return isUnreadable ? 2 : 3;
}

function unreadableIssue(
  cells: readonly { readonly address: string; readonly heading: string }[]
): string {
  const named = cells.map(({ address, heading }) => `${address} (${heading})`);
  return `${named.length === 1 ? "Cell" : "Cells"} ${named.join(", ")} cannot be read`;
}

/** A client with a status, and the trouble if there is one. */
interface Judged {
  readonly stage: Stage | undefined;
  readonly trouble?: Trouble;
  readonly rank: number;
  readonly daysLeft: number;
}

function judged(client: ClientRow, row: Answers): Judged {
  const { list, index, reading } = client;
  const stage = row.Status.text === "" ? undefined : (row.Status.text as Stage);
  const cells = cellsNamedIn(row.Unreadable.text, client);
  const refusal = [row.Status, row["Next deadline"], row.Severity].find(
    ({ problem }) => problem !== ""
  );
  const isUnreadable = cells.length > 0 || refusal !== undefined;
  const isTrouble = row.Severity.text === "problem" || row.Severity.text === "risk";
  const rank = rankOf(row, isUnreadable);
  const daysLeft = row["Days left"].value ?? NO_DEADLINE;
  if (!isTrouble && !isUnreadable) return { stage, rank, daysLeft };
  const nameColumn = columnOf(reading, "client") ?? reading[0];
  const refused = sentenceAtCell(refusal?.problem ?? "", client);
  const issue = cells.length > 0 ? unreadableIssue(cells) : refused;
  const trouble: Trouble = {
    name: row.Client.text || `Row ${list.headingRow + 1 + index}`,
    stage,
    issue: isUnreadable ? issue : row["Most serious issue"].text,
    deadline: row["Next deadline"].text,
    whatToDo: isUnreadable
      ? "Correct the cell. Until then, this client may have other problems"
      : row["What to do"].text,
    address: cells[0]?.address ?? addressIn(list, index, nameColumn?.index ?? 0),
  };
  return { stage, trouble, rank, daysLeft };
}

function practiceOf(clients: readonly Judged[]): PracticeFacts {
  const order: readonly (Stage | undefined)[] = [...STAGES_BY_URGENCY, undefined];
  return {
    clients: clients.length,
    counts: order.flatMap((stage) => {
      const count = clients.filter((client) => client.stage === stage).length;
      return count === 0 ? [] : [{ stage, count }];
    }),
    troubles: clients
      .toSorted((one, other) => one.rank - other.rank || one.daysLeft - other.daysLeft)
      .flatMap(({ trouble }) => (trouble ? [trouble] : [])),
  };
}

/** Rows that are calculated at a time: few enough that nobody waits for them. */
const ROWS_AT_A_TIME = 10;

/**
 * The clients of a list that need attention, and how many have each status, some rows at a time.
 *
 * @param list - The client list.
 * @param settings - Default tax year, as-of date, assumed rate.
 * @returns `undefined` after each part but the last, then the facts of the practice, as ROSTER answers them.
 * @throws NotDone when the list cannot be read as a client list.
 */
export function* practiceInParts(
  list: PaneList,
  settings: PaneSettings
): Generator<undefined, PracticeFacts> {
  if (list.rows.length === 0) throw new NotDone("The list has no row below its headings.");
  const rows = clientRows(list, settings.taxYear);
  const clients: Judged[] = [];
  for (let from = 0; from < rows.length; from += ROWS_AT_A_TIME) {
    const part = list.rows.slice(from, from + ROWS_AT_A_TIME);
    const answers = rosterAnswers(list.headings, part, settings, COLUMNS, list.own);
    for (const [at, row] of answers.entries()) {
      const client = rows[from + at];
      if (client) clients.push(judged(client, row));
    }
    yield undefined;
  }
  return practiceOf(clients);
}
