import type { Stage } from "../calculation/season/requestStage";
import { addressIn, clientRows, columnOf, sentenceAtCell } from "./clientRow";
import { unreadableCells } from "./clientFacts";
import { STAGES_BY_URGENCY } from "./clientStatus";
import { rosterAnswers, type PaneSettings, type RosterAnswers } from "./rosterAnswers";
import type { PaneList } from "./paneList";
import { NotDone } from "./workbookHost";

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

/**
 * The clients of a list that need attention, and how many have each status.
 *
 * @param list - The client list.
 * @param settings - Default tax year, as-of date, assumed rate.
 * @returns The facts of the practice, as ROSTER answers them.
 * @throws NotDone when the list cannot be read as a client list.
 */
export function practiceFacts(list: PaneList, settings: PaneSettings): PracticeFacts {
  if (list.rows.length === 0) throw new NotDone("The list has no row below its headings.");
  const answers = rosterAnswers(list.headings, list.rows, settings, COLUMNS, list.own);
  const counts = new Map<Stage | undefined, number>();
  const found: { trouble: Trouble; rank: number; daysLeft: number }[] = [];
  for (const [index, client] of clientRows(list, settings.taxYear).entries()) {
    const row = answers[index];
    if (!client || !row) continue;
    const stage = row.Status.text === "" ? undefined : (row.Status.text as Stage);
    counts.set(stage, (counts.get(stage) ?? 0) + 1);
    const cells = unreadableCells(row.Unreadable.text, client);
    const refusal = [row.Status, row["Next deadline"], row.Severity].find(
      ({ problem }) => problem !== ""
    );
    const isUnreadable = cells.length > 0 || refusal !== undefined;
    const isTrouble = row.Severity.text === "problem" || row.Severity.text === "risk";
    if (!isTrouble && !isUnreadable) continue;
    const nameColumn = columnOf(client.reading, "client") ?? client.reading[0];
    const refused = sentenceAtCell(refusal?.problem ?? "", client);
    const issue = cells.length > 0 ? unreadableIssue(cells) : refused;
    found.push({
      trouble: {
        name: row.Client.text || `Row ${list.headingRow + 1 + index}`,
        stage,
        issue: isUnreadable ? issue : row["Most serious issue"].text,
        deadline: row["Next deadline"].text,
        whatToDo: isUnreadable
          ? "Correct the cell. Until then, this client may have other problems"
          : row["What to do"].text,
        address: cells[0]?.address ?? addressIn(list, index, nameColumn?.index ?? 0),
      },
      rank: rankOf(row, isUnreadable),
      daysLeft: row["Days left"].value ?? NO_DEADLINE,
    });
  }
  const order: readonly (Stage | undefined)[] = [...STAGES_BY_URGENCY, undefined];
  return {
    clients: [...counts.values()].reduce((sum, count) => sum + count, 0),
    counts: order.flatMap((stage) => {
      const count = counts.get(stage);
      return count === undefined ? [] : [{ stage, count }];
    }),
    troubles: found
      .toSorted((one, other) => one.rank - other.rank || one.daysLeft - other.daysLeft)
      .map(({ trouble }) => trouble),
  };
}
