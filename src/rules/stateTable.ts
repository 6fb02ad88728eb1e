import states from "../../rules/state-extensions.json";
import { Decimal } from "../money/dollars";
import { readListTable } from "./listTable";
import type { Written } from "./schema/schemas";

/** The states' rules. */
export const stateTable = {
  stateExtensions: readListTable(
    states as Written["state-extensions"],
    "states",
    ({ percentPaid, ...row }) => ({
      ...row,
      percentPaid: percentPaid === undefined ? undefined : new Decimal(percentPaid),
    })
  ),
};

/** A state's rule on the extension of time to file. */
export type StateExtension = (typeof stateTable)["stateExtensions"]["rows"][number];
