import { describe, expect, it } from "vitest";
import { servicesOfCarrier } from "../../../src/calculation/request/servicesOfCarrier";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/private-delivery-services.json";

// Notice 2016-30, list of services.
describe("the designated services of a carrier", () => {
  it.each(published.cases)("are those of the list: $inputs.carrier", ({ inputs, expected }) => {
    const [first = ""] = inputs.carrier.split(" ");
    for (const name of [inputs.carrier, inputs.carrier.toLowerCase(), ` ${first.toUpperCase()}. `])
      expect(servicesOfCarrier(name, rulebook)).toEqual(expected);
  });

  it.each(["UPS Ground", "UPS Next Day Air", "a courier", "USPS", ""])(
    "are none for %j, which is not a carrier alone",
    (name) => {
      expect(servicesOfCarrier(name, rulebook)).toEqual([]);
    }
  );
});
