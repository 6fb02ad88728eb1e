import { calendarDate, yearOf } from "../../calendar/calendarDate";
import { requireReach } from "../../rules/listTable";
import { NotInTableError } from "../../rules/notInTableError";
import type { Rulebook } from "../../rules/rulebook";
import type { Source } from "../../rules/source";
import type { State } from "../state";
import type { TaxYear } from "../taxYear";

/** Whose request is mailed, as the chart on the form tells them apart; by what is said of the residence. */
export type MailingResidence = State | "estate" | "nonresident";

/** An address with what it rests on. */
export interface PaperAddress {
  readonly lines: readonly string[];
  /** The weaker of the sources, where a private carrier needs two. */
  readonly source: Source;
}

/**
 * Where a paper request goes.
 *
 * With payment it goes to a post office box, which only the postal service reaches; a private carrier brings it, with payment or
 * without, to the street address of the center that the chart names without payment. The form prints no street address: which
 * center it is, is an inference.
 *
 * @param taxYear - Tax year of the form; a fiscal year takes the form of the year in which it begins.
 * @param residence - State, `foreign`, `estate` for a foreign estate or trust, `nonresident` for other 1040-NR and 1040-SS filers.
 * @param paidWithRequest - Whether a payment goes with it.
 * @param byCarrier - Whether a private carrier brings it.
 * @param rules - The chart and the street addresses.
 * @returns The address, name first.
 * @throws NotInTableError for an edition of the form that the chart does not cover, or a residence that it does not name.
 * @see Form 4868, chart of addresses; 26 U.S.C. 7502(f)
 *
 * @example
 * // 2025, TX, paying: Internal Revenue Service, P.O. Box 1302, Charlotte, NC 28201-1302
 */
export function mailingAddress(
  taxYear: TaxYear,
  residence: MailingResidence,
  paidWithRequest: boolean,
  byCarrier: boolean,
  rules: Pick<Rulebook, "mailingAddresses" | "serviceCenterStreets">
): PaperAddress {
  const chart = rules.mailingAddresses;
  const edition = yearOf(taxYear.firstDay);
  requireReach(chart, calendarDate(`${String(edition)}-12-31`));
  const row = chart.rows.find(
    (address) =>
      address.edition === edition &&
      address.residences.includes(residence) &&
      address.paidWithRequest === (paidWithRequest && !byCarrier)
  );
  if (!row)
    throw new NotInTableError(
      chart,
      `The chart of ${String(edition)} has no address for ${residence} (rules/${chart.id}.json). Check the form's instructions.`
    );
  if (!byCarrier) return { lines: row.lines, source: row.source };
  const street = rules.serviceCenterStreets.rows.find(({ center }) => center === row.center);
  if (!street) throw new RangeError(`no street address of the center ${String(row.center)}`);
  const weaker = row.source.confidence === "memory" ? row.source : street.source;
  return { lines: street.lines, source: weaker };
}
