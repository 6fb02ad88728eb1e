import { clientDates, type ClientDates } from "../calculation/dueDate/clientDates";
import type { Circumstances } from "../calculation/dueDate/dueDate";
import type { FilerType } from "../calculation/filerType";
import type { TaxYear } from "../calculation/taxYear";
import { remembered } from "../calendar/remembered";
import { rulebook } from "../rules/rulebook";
import { disasterPostponement, taxYear } from "./dayArguments";
import { filerType, state } from "./wordArguments";

/** The cells that say which client's dates are asked for. */
export interface ClientCells {
  readonly taxYear: unknown;
  readonly state: unknown;
  readonly filerType: unknown;
  readonly postponementBegins: unknown;
  readonly postponementEnds: unknown;
}

/** Whose dates, read from the cells. */
export interface Client {
  readonly taxYear: TaxYear;
  readonly filerType: FilerType;
  readonly circumstances: Circumstances;
}

/** Reads whose dates are asked for. */
export function client(cells: ClientCells): Client {
  return {
    taxYear: taxYear("taxYear", cells.taxYear),
    filerType: filerType("filerType", cells.filerType),
    circumstances: {
      state: state("state", cells.state),
      postponement: disasterPostponement(cells.postponementBegins, cells.postponementEnds),
    },
  };
}

/** The due dates of a client's return. */
export const datesOf = remembered(
  ({ taxYear: year, filerType: who, circumstances }: Client): ClientDates =>
    clientDates(year, who, circumstances, rulebook),
  ({ taxYear: year, filerType: who, circumstances: { state: residence = "", postponement } }) =>
    [year.lastDay, who, residence, postponement?.begins, postponement?.postponementEnds].join("|"),
  5_000
);
