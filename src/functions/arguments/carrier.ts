import type { Carrier } from "../../calculation/request/clientRequest";
import { deliveryService } from "../../calculation/request/deliveryService";
import { servicesOfCarrier } from "../../calculation/request/servicesOfCarrier";
import { rulebook } from "../../rules/rulebook";
import { isBlankOrZero, shown, type CellValue } from "../cells/cellValue";
import { InputError } from "../cells/inputError";
import { plainText, readArgument, type CellKind } from "./argumentKind";
import { isPlaceholder } from "./placeholder";
import { yesNo, yesOrNo } from "./yesNo";

/** Names of the U.S. Postal Service and of what it carries, without periods. */
const UNITED_STATES_MAIL: readonly string[] = [
  "us mail",
  "usps",
  "us postal service",
  "mail",
  "certified mail",
  "registered mail",
];

const isUnitedStatesMail = (text: string): boolean =>
  UNITED_STATES_MAIL.includes(plainText(text.slice(0, 100)).replaceAll(".", ""));

/**
 * Refuses what does not say which service carries the request: a text such as `n/a`, and a carrier without the service, because only
 * some of its services are designated.
 */
function requireService(value: string, name: string, enter: string): void {
  if (isPlaceholder(value))
    throw new InputError(name, `${shown(value)} is not a carrier. ${enter}`);
  const services = servicesOfCarrier(value, rulebook);
  if (services.length === 0) return;
  throw new InputError(
    name,
    `${shown(value)} has no service level. Only these are designated: ${services.join(", ")}. Enter one of them.`
  );
}

function carrierOf(value: CellValue, name: string): Carrier | undefined {
  if (typeof value !== "string" || yesOrNo(value) !== undefined)
    return readArgument(yesNo, name, value) ? "designated" : undefined;
  if (isUnitedStatesMail(value)) return undefined;
  requireService(value, name, "Enter no for U.S. mail, or the carrier and its service.");
  return deliveryService(value, rulebook) ? "designated" : "not designated";
}

/** Who carries a paper request. A blank cell or no is U.S. mail. */
export const carrier: CellKind<Carrier | undefined> = {
  id: "carrier",
  title: "Carrier",
  description:
    "Blank, no or `USPS` for U.S. mail; yes for a private delivery service (PDS), or its name and service level, as the carrier writes it. The name of a carrier alone is not accepted if only some of its services are designated.",
  accepted: ['""', '"no"', '"U.S. mail"', '"yes"', '"UPS Next Day Air"'],
  notAccepted: ['"UPS"', '"n/a"'],
  takes: "cell",
  isEmpty: isBlankOrZero,
  whenBlank: { means: undefined },
  read: carrierOf,
};

/** Who carries a paper request, where a service that is not designated cannot be used. */
export const designatedCarrier: CellKind<Carrier | undefined> = {
  ...carrier,
  id: "designated-carrier",
  title: "Designated carrier",
  notAccepted: ['"UPS"', '"UPS Ground"'],
  read: (value, name) => {
    const by = carrierOf(value, name);
    if (by === "not designated")
      throw new InputError(
        name,
        `${shown(value)} is not a designated private delivery service, so mailing by it would not count as filing on time. Use U.S. mail or a designated service.`
      );
    return by;
  },
};

const ENTER_SERVICE = "Enter the carrier and its service level, such as UPS 2nd Day Air.";

/** The name of a private delivery service. A blank cell returns an error. */
export const service: CellKind<string> = {
  id: "service",
  title: "Service",
  description:
    "The carrier and its service level, as the carrier writes it. The name of a carrier alone returns an error that lists its designated services. A blank cell returns an error.",
  accepted: ['"UPS 2nd Day Air"', '"UPS Ground"'],
  notAccepted: ['"FedEx"', '"USPS"', '""'],
  takes: "cell",
  isEmpty: isBlankOrZero,
  whenBlank: { enter: ENTER_SERVICE },
  read: (value, name) => {
    const text = String(value);
    if (isUnitedStatesMail(text))
      throw new InputError(
        name,
        `${shown(value)} is U.S. mail, for which timely mailing counts as timely filing. ${ENTER_SERVICE}`
      );
    requireService(text, name, ENTER_SERVICE);
    return text;
  },
};
