import type { Rulebook } from "../../rules/rulebook";

/** A private delivery service as listed. */
type DeliveryService = Rulebook["privateDeliveryServices"]["rows"][number];

/** A name as it is compared: letters and digits only. */
function bare(text: string): string {
  return text.toLowerCase().replace(/[^a-z0-9]/g, "");
}

/**
 * The designated private delivery service of a name, if it is one.
 *
 * Only the listed service levels carry the rule that mailing in time is filing in time; the carrier's other services do not. A
 * service that only one carrier has may be named alone.
 *
 * @param name - Carrier and service, in any case, spacing and punctuation.
 * @param rules - The designated services.
 * @returns The service as listed, or `undefined` when it is none.
 * @see 26 U.S.C. 7502(f); Notice 2016-30
 */
export function deliveryService(
  name: string,
  rules: Pick<Rulebook, "privateDeliveryServices">
): DeliveryService | undefined {
  const wanted = bare(name);
  const services = rules.privateDeliveryServices.rows;
  const shortCarrier = (carrier: string): string => carrier.split(" ")[0] ?? carrier;
  const whole = services.find(
    ({ carrier, service }) =>
      wanted === bare(carrier + service) || wanted === bare(shortCarrier(carrier) + service)
  );
  if (whole) return whole;
  const byServiceAlone = services.filter(({ service }) => bare(service) === wanted);
  return byServiceAlone.length === 1 && /[a-z]{3}/.test(wanted) ? byServiceAlone[0] : undefined;
}
