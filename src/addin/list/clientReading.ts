import { hostError, isHostError } from "../../functions/cells/hostError";
import { cellOfClient } from "../../functions/season/cellOfClient";
import { rosterClient, type RosterClient } from "../../functions/season/rosterClient";
import { rulebook } from "../../rules/rulebook";
import type { ClientRow } from "./clientRow";
import { settingCells, type PaneSettings } from "./rosterAnswers";

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
