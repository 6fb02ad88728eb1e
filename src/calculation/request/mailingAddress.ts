import { NotInTableError } from "../../rules/notInTableError";
import type { Rulebook } from "../../rules/rulebook";
import type { Source } from "../../rules/source";
import type { State } from "../state";
import type { TaxYear } from "../taxYear";
import { formEdition } from "./formEdition";

/** Who mails the request, as the chart on the form distinguishes filers. */
export type MailingResidence = State | "estate" | "nonresident";

/** An address with its source. */
export interface PaperAddress {
  readonly lines: readonly string[];
  /** The less certain of the two sources of an address for a private delivery service. */
  readonly source: Source;
}

/**
 * Mailing address of a paper request.
 *
 * A request with payment goes to a P.O. box, where only U.S. mail is delivered. A private delivery service delivers a request, with
 * or without payment, to the street address of the center that the chart names for requests without payment. The form prints no
 * street addresses, so the choice of that center is an inference.
 *
 * @param taxYear - Tax year of the form; a fiscal year takes the form of the year in which it begins.
 * @param residence - State, `foreign`, `estate` for a foreign estate or trust, `nonresident` for other 1040-NR and 1040-SS filers.
 * @param paidWithRequest - Whether a payment is enclosed.
 * @param byDeliveryService - Whether a private delivery service delivers it.
 * @param rules - The chart and the street addresses.
 * @returns The address, name first.
 * @throws NotInTableError for an edition of the form that the table does not cover, or a residence that the chart does not name.
 * @see Form 4868, chart of addresses; 26 U.S.C. 7502(f)
 *
 * @example
 * // 2025, TX, with payment: Internal Revenue Service, P.O. Box 1302, Charlotte, NC 28201-1302
 */
export function mailingAddress(
  taxYear: TaxYear,
  residence: MailingResidence,
  paidWithRequest: boolean,
  byDeliveryService: boolean,
  rules: Pick<Rulebook, "mailingAddresses" | "serviceCenterStreets">
): PaperAddress {
  const chart = rules.mailingAddresses;
  const edition = formEdition(taxYear, chart);
  const row = chart.rows.find(
    (address) =>
      address.edition === edition &&
      address.residences.includes(residence) &&
      address.paidWithRequest === (paidWithRequest && !byDeliveryService)
  );
  if (!row)
    throw new NotInTableError(
      chart,
      `The chart of ${String(edition)} has no address for ${residence} (rules/${chart.id}.json). Check the form's instructions.`
    );
  if (!byDeliveryService) return { lines: row.lines, source: row.source };
  const street = rules.serviceCenterStreets.rows.find(({ center }) => center === row.center);
  if (!street) throw new RangeError(`no street address of the center ${String(row.center)}`);
  const weaker = row.source.confidence === "memory" ? row.source : street.source;
  return { lines: street.lines, source: weaker };
}
