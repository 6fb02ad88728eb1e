import { remembered } from "../../calendar/remembered";
import { shortDate } from "../../calendar/writtenDate";
import { clientDates, type ClientDates } from "../../calculation/dueDate/clientDates";
import type { DisasterPostponement } from "../../calculation/dueDate/disasterPostponement";
import type { Circumstances } from "../../calculation/dueDate/dueDate";
import type { FilerType } from "../../calculation/filerType";
import type { TaxYear } from "../../calculation/taxYear";
import { rulebook, type Rulebook } from "../../rules/rulebook";
import { InputError } from "../cells/inputError";
import { optional, type Given } from "./argumentKind";
import { date } from "./date";
import { state } from "./state";
import { taxYear } from "./taxYear";
import { filerType } from "./words";

/** Where the client lives and who files. */
export const residence = { state, filerType };
/** A disaster postponement period: both dates, or neither. */
export const postponement = {
  postponementBegins: optional(date),
  postponementEnds: optional(date),
};
/** The arguments that decide a client's dates. */
export const client = { taxYear, ...residence, ...postponement };

/** The rule tables that a client's dates depend on. */
export const dateTables = [
  "returnDueDate",
  "extensionOfTime",
  "legalHolidays",
  "nationwidePostponements",
] as const satisfies readonly (keyof Rulebook)[];

/**
 * The disaster postponement of a client.
 *
 * @returns `undefined` when neither date is entered.
 * @throws InputError when only one date is entered, or the period ends before it begins.
 */
export function postponementOf({
  postponementBegins: begins,
  postponementEnds: ends,
}: Given<typeof postponement>): DisasterPostponement | undefined {
  if (begins === undefined && ends === undefined) return undefined;
  if (begins === undefined)
    throw new InputError(
      "postponementBegins",
      "The cell is blank, but postponementEnds has a date. Enter both dates, or neither."
    );
  if (ends === undefined)
    throw new InputError(
      "postponementEnds",
      "The cell is blank, but postponementBegins has a date. Enter both dates, or neither."
    );
  if (ends < begins)
    throw new InputError(
      "postponementEnds",
      `${shortDate(ends)} is before the postponement begins on ${shortDate(begins)}. Correct one of the two dates.`
    );
  return { begins, ends };
}

/** What moves a client's dates, apart from the tax year and the filer type. */
export function circumstancesOf(
  given: Given<typeof postponement> & Pick<Given<typeof residence>, "state">
): Circumstances {
  return { state: given.state, postponement: postponementOf(given) };
}

/**
 * The dates that govern a client's return. The rows of a client list ask for the same few again and again.
 *
 * @throws InputError for a postponement of one date, and NotInTableError for a tax year that the tables do not cover.
 */
export function datesOf(given: Given<typeof client>): ClientDates {
  return knownDates(given.taxYear, given.filerType, circumstancesOf(given));
}

const MOST_REMEMBERED = 5_000;
const knownDates = remembered(
  (year: TaxYear, filer: FilerType, circumstances: Circumstances): ClientDates =>
    clientDates(year, filer, circumstances, rulebook),
  (year, filer, { state: home = "", postponement: period }) =>
    [year.lastDay, filer, home, period?.begins, period?.ends].join("|"),
  MOST_REMEMBERED
);
