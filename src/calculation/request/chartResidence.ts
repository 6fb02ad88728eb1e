import type { FilerType } from "../filerType";
import { FOREIGN } from "../state";
import type { MailingResidence } from "./mailingAddress";

/**
 * The residence under which the chart of addresses on the form lists a client.
 *
 * A foreign estate or trust and a filer of Form 1040-NR have lines of their own, whatever the state. A taxpayer out of the country uses
 * the line for a foreign address.
 *
 * @param residence - The state, `foreign`, `estate` or `nonresident`; `undefined` if not known.
 * @param filerType - Type of filer.
 * @returns The residence, or `undefined` where neither tells it.
 * @see Form 4868, Where To File a Paper Form 4868
 *
 * @example
 * chartResidence("TX", "out of country") //=> "foreign"
 */
export function chartResidence(
  residence: MailingResidence | undefined,
  filerType: FilerType
): MailingResidence | undefined {
  if (residence === "estate" || residence === "nonresident") return residence;
  switch (filerType) {
    case "nonresident":
      return "nonresident";
    case "out of country":
      return FOREIGN;
    case "resident":
      return residence;
  }
}
