import type { Carrier } from "../../calculation/request/clientRequest";
import { deliveryService } from "../../calculation/request/deliveryService";
import { rulebook } from "../../rules/rulebook";
import { isBlankOrZero, shown, type CellValue } from "../cells/cellValue";
import { InputError } from "../cells/inputError";
import { readArgument, type CellKind } from "./argumentKind";
import { yesNo, yesOrNo } from "./yesNo";

function carrierOf(value: CellValue, name: string): Carrier | undefined {
  if (typeof value !== "string" || yesOrNo(value) !== undefined)
    return readArgument(yesNo, name, value) ? "designated" : undefined;
  return deliveryService(value, rulebook) ? "designated" : "not designated";
}

/** Who carries a paper request. A blank cell or no is U.S. mail. */
export const carrier: CellKind<Carrier | undefined> = {
  id: "carrier",
  title: "Carrier",
  description:
    "Blank or no for U.S. mail; yes for a private delivery service (PDS), or its name and service level, as the carrier writes it.",
  accepted: ['""', '"no"', '"yes"', '"UPS Next Day Air"'],
  notAccepted: [],
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
  notAccepted: ['"UPS Ground"'],
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

/** The name of a private delivery service. A blank cell returns an error. */
export const service: CellKind<string> = {
  id: "service",
  title: "Service",
  description:
    "The carrier and its service level, as the carrier writes it. A blank cell returns an error.",
  accepted: ['"UPS 2nd Day Air"', '"UPS Ground"'],
  notAccepted: ['""'],
  takes: "cell",
  isEmpty: isBlankOrZero,
  whenBlank: { enter: "Enter the carrier and its service level, such as UPS 2nd Day Air." },
  read: String,
};
