import type { Rulebook } from "../../rules/rulebook";

/** A private delivery service as listed. */
type DeliveryService = Rulebook["privateDeliveryServices"]["rows"][number];

/** Letters and digits of a name, for comparing names. */
function lettersAndDigits(text: string): string {
  return text.toLowerCase().replace(/[^a-z0-9]/g, "");
}

/**
 * The designated private delivery service with a name, if there is one.
 *
 * Mailing on time counts as filing on time only with the listed PDS service levels, not with the carrier's other services. A service
 * level that only one carrier has can be named without the carrier.
 *
 * @param name - Carrier and service level, in any case, spacing and punctuation.
 * @param rules - The designated services.
 * @returns The service as listed, or `undefined` if it is not designated.
 * @see 26 U.S.C. 7502(f); Notice 2016-30
 */
export function deliveryService(
  name: string,
  rules: Pick<Rulebook, "privateDeliveryServices">
): DeliveryService | undefined {
  const wanted = lettersAndDigits(name);
  const services = rules.privateDeliveryServices.rows;
  const shortCarrier = (carrier: string): string => carrier.split(" ")[0] ?? carrier;
  const whole = services.find(
    ({ carrier, service }) =>
      wanted === lettersAndDigits(carrier + service) ||
      wanted === lettersAndDigits(shortCarrier(carrier) + service)
  );
  if (whole) return whole;
  const byServiceAlone = services.filter(({ service }) => lettersAndDigits(service) === wanted);
  return byServiceAlone.length === 1 && /[a-z]{3}/.test(wanted) ? byServiceAlone[0] : undefined;
}
