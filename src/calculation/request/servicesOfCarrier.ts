import type { Rulebook } from "../../rules/rulebook";

const letters = (text: string): string => text.toLowerCase().replace(/[^a-z0-9]/g, "");

/**
 * The designated services of a carrier, for a name that is the carrier alone. Whether mailing on time by that carrier counts as filing
 * on time depends on the service.
 *
 * @param name - In any case, spacing and punctuation, with or without a word such as Express.
 * @param rules - The designated services.
 * @returns The service levels; none if the name is not a carrier's, or names a service too.
 * @see 26 U.S.C. 7502(f); Notice 2016-30
 *
 * @example
 * servicesOfCarrier("dhl", rules)[0] //=> "9:00"
 */
export function servicesOfCarrier(
  name: string,
  rules: Pick<Rulebook, "privateDeliveryServices">
): readonly string[] {
  const wanted = letters(name);
  return rules.privateDeliveryServices.rows
    .filter(({ carrier }) => {
      const [first = carrier] = carrier.split(" ");
      return wanted === letters(carrier) || wanted === letters(first);
    })
    .map(({ service }) => service);
}
