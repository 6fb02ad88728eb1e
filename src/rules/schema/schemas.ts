import { z } from "zod";
import { agreementTables } from "./agreementTables";
import { dateTables } from "./dateTables";
import { liabilityTables } from "./liabilityTables";
import { date, id, text } from "./parts";
import { penaltyTables } from "./penaltyTables";
import { requestTables } from "./requestTables";
import { stateTable } from "./stateTable";

/** The schema of each table of rules/, by its id. */
export const schemas = {
  ...dateTables,
  ...penaltyTables,
  ...agreementTables,
  ...requestTables,
  ...stateTable,
  ...liabilityTables,
};

/** The content of each table of rules/ as it is written, by its id. */
export type Written = { readonly [Id in keyof typeof schemas]: z.infer<(typeof schemas)[Id]> };

/** The schema of rules/sources.json. */
export const sources = z.strictObject({
  documents: z.record(
    id,
    z.strictObject({ cite: text, title: text, publisher: text, seenIn: text, read: date })
  ),
});
