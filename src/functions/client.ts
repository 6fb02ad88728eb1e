import { clientDates, type ClientDates } from "../calculation/dueDate/clientDates";
import type { Circumstances } from "../calculation/dueDate/dueDate";
import type { Filer } from "../calculation/filer";
import type { TaxYear } from "../calculation/taxYear";
import { rulebook } from "../rules/rulebook";
import { disasterRelief, taxYear } from "./dayArguments";
import { filer, state } from "./wordArguments";

/** The cells that say which client's dates are asked for. */
export interface ClientCells {
  readonly taxYear: unknown;
  readonly state: unknown;
  readonly filer: unknown;
  readonly reliefBegins: unknown;
  readonly postponedTo: unknown;
}

/** Whose dates, read from the cells. */
export interface Client {
  readonly taxYear: TaxYear;
  readonly filer: Filer;
  readonly circumstances: Circumstances;
}

/** Reads whose dates are asked for. */
export function client(cells: ClientCells): Client {
  return {
    taxYear: taxYear("taxYear", cells.taxYear),
    filer: filer("filer", cells.filer),
    circumstances: {
      state: state("state", cells.state),
      relief: disasterRelief(cells.reliefBegins, cells.postponedTo),
    },
  };
}

/** Dates already worked out: a client list asks for the same few over and over. */
const worked = new Map<string, ClientDates>();
const MOST_KEPT = 5_000;

/** The dates that govern a client's return. */
export function datesOf({ taxYear: year, filer: who, circumstances }: Client): ClientDates {
  const { state: residence = "", relief } = circumstances;
  const key = [year.lastDay, who, residence, relief?.begins, relief?.postponedTo].join("|");
  const known = worked.get(key);
  if (known) return known;
  const dates = clientDates(year, who, circumstances, rulebook);
  if (worked.size >= MOST_KEPT) worked.clear();
  worked.set(key, dates);
  return dates;
}
