import states from "../../rules/state-extensions.json";
import { Decimal } from "../money/dollars";
import { readListTable } from "./listTable";
import type { TablesOf } from "./readOnDemand";
import type { Written } from "./schema/schemas";
import { readSource } from "./source";

/** Reads the states' rules, each with its terms. */
export const stateReaders = {
  stateExtensions: () =>
    readListTable(states as Written["state-extensions"], "states", ({ terms, ...row }) => ({
      ...row,
      terms: terms.map(({ percentPaid, source, confidence, ...term }) => ({
        ...term,
        percentPaid: percentPaid === undefined ? undefined : new Decimal(percentPaid),
        source: readSource({ source, confidence }),
      })),
    })),
};

/** A state's rule on the extension of time to file. Its own source is that of its dates. */
export type StateExtension = TablesOf<typeof stateReaders>["stateExtensions"]["rows"][number];

/** One term of a state's rule. */
export type StateTerm = StateExtension["terms"][number];
