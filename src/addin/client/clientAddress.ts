import { isHostError } from "../../functions/cells/hostError";
import { mailingFunctions } from "../../functions/request/mailing";
import { shownCell } from "../answers/liveAnswer";
import { sentenceAtCell, type ClientRow } from "../list/clientRow";
import { settingCells, type PaneSettings } from "../list/rosterAnswers";
import { cellOfClient } from "../../functions/season/cellOfClient";
import { NotDone } from "../workbook/workbookHost";

/** The address to mail a paper request to. */
export interface ClientAddress {
  readonly lines: readonly string[];
  /** Where the address was read. */
  readonly source: string;
  /** Why to confirm the address before it is used; empty if it was read in the official text. */
  readonly confirm: string;
}

const CAVEAT = / \(([^()]*)\)$/;
const CAVEATS: Readonly<Record<string, string>> = {
  "secondary source": "It was read in a secondary source.",
  "unverified: check the official text": "It was not read in a published text.",
};

/**
 * The mailing address for a client's request on paper, as MAILTO answers it.
 *
 * @param client - The client's row.
 * @param settings - Default tax year, as-of date, assumed rate.
 * @throws NotDone when the address is not in the tables, or a cell that decides it cannot be read.
 */
export function clientAddress(client: ClientRow, settings: PaneSettings): ClientAddress {
  const cell = cellOfClient(client.row, settingCells(settings));
  const cells = ["taxYear", "state", "paidWithRequest", "carrier", "filerType"].map((name) => [
    [cell(name)],
  ]);
  try {
    const [, ...rows] = mailingFunctions.MAILTO.answer([...cells, [["yes"]]]);
    const cited = shownCell(rows[0]?.[1]).text;
    const [, caveat = ""] = CAVEAT.exec(cited) ?? [];
    const confirm = CAVEATS[caveat] ?? "";
    return {
      lines: rows.map(([line]) => shownCell(line).text),
      source: confirm === "" ? cited : cited.replace(CAVEAT, ""),
      confirm,
    };
  } catch (thrown) {
    if (!isHostError(thrown)) throw thrown;
    throw new NotDone(sentenceAtCell((thrown as { message?: string }).message ?? "", client));
  }
}
