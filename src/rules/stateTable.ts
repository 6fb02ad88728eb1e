import states from "../../rules/state-extensions.json";
import { Decimal } from "../money/dollars";
import { oneOf, readListTable } from "./listTable";

/** How a state grants more time to file. */
export const GRANTS = [
  "automatic",
  "automatic if paid",
  "with the federal extension",
  "with the federal extension if paid",
  "own request",
  "no return",
] as const;

/** How a state grants more time to file. */
export type StateGrant = (typeof GRANTS)[number];

/** A state's rule on more time to file. */
export interface StateExtension {
  readonly state: string;
  readonly name: string;
  readonly grant: StateGrant;
  /** Month and day, such as 04-15, before any move; nothing where there is no return. */
  readonly dueDay: string | undefined;
  readonly extendedDay: string | undefined;
  /** Share of the state tax to be paid by the due date for the grant to stand. */
  readonly percentPaid: Decimal | undefined;
  /** First tax year the rule is for, where it is not older than the table. */
  readonly fromTaxYear: number | undefined;
  /** Tax year of the text that was read; nothing where it bears none. */
  readonly sourceTaxYear: number | undefined;
  /** Why the rule cannot be relied on as it stands. */
  readonly unsettled: string | undefined;
  readonly requestForm: string | undefined;
  readonly paymentForm: string | undefined;
  readonly condition: string;
  readonly additions: string | undefined;
  readonly interest: string | undefined;
  readonly note: string | undefined;
}

/** The states' rules. */
export const stateTable = {
  stateExtensions: readListTable(states, states.states, (row): StateExtension => ({
    state: row.state,
    name: row.name,
    grant: oneOf(GRANTS, row.grant),
    dueDay: row.dueDay,
    extendedDay: row.extendedDay,
    percentPaid: row.percentPaid === undefined ? undefined : new Decimal(row.percentPaid),
    fromTaxYear: row.fromTaxYear,
    sourceTaxYear: row.sourceTaxYear,
    unsettled: row.unsettled,
    requestForm: row.requestForm,
    paymentForm: row.paymentForm,
    condition: row.condition,
    additions: row.additions,
    interest: row.interest,
    note: row.note,
  })),
};
