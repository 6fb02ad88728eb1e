import { clientDates, type ClientDates } from "../calculation/dueDate/clientDates";
import type { Circumstances } from "../calculation/dueDate/dueDate";
import type { FilerType } from "../calculation/filerType";
import type { TaxYear } from "../calculation/taxYear";
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

/** Dates already worked out: a client list asks for the same few over and over. */
const worked = new Map<string, ClientDates>();
const MOST_KEPT = 5_000;

/** The dates that govern a client's return. */
export function datesOf({ taxYear: year, filerType: who, circumstances }: Client): ClientDates {
  const { state: residence = "", postponement } = circumstances;
  const key = [
    year.lastDay,
    who,
    residence,
    postponement?.begins,
    postponement?.postponementEnds,
  ].join("|");
  const known = worked.get(key);
  if (known) return known;
  const dates = clientDates(year, who, circumstances, rulebook);
  if (worked.size >= MOST_KEPT) worked.clear();
  worked.set(key, dates);
  return dates;
}
