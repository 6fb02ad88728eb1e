import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { deliveryService } from "../../../src/calculation/request/deliveryService";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/private-delivery-services.json";
import { RUNS } from "../arbitrary";

const nameOf = (written: string): string | undefined => {
  const found = deliveryService(written, rulebook);
  return found && `${found.carrier} ${found.service}`;
};
const listed = published.cases.flatMap(({ inputs, expected }) =>
  expected.map((service) => [inputs.carrier, service] as const)
);

// Notice 2016-30, list of services.
describe("a designated private delivery service", () => {
  it.each(listed)("is %s %s", (carrier, service) => {
    expect(nameOf(`${carrier} ${service}`)).toBe(`${carrier} ${service}`);
  });

  it("is one of the list and no more", () => {
    const held = rulebook.privateDeliveryServices.rows.map((row) => [row.carrier, row.service]);
    expect(held).toEqual(listed);
  });

  it.each([
    ["UPS Ground"],
    ["UPS 3 Day Select"],
    ["UPS Worldwide"],
    ["FedEx Ground"],
    ["FedEx Express Saver"],
    ["FedEx Home Delivery"],
    ["DHL Express"],
    ["DHL eCommerce 9:00"],
    ["FedEx Next Day Air"],
    ["UPS"],
    ["FedEx"],
    ["DHL"],
    ["a courier"],
    ["2nd Day Air UPS"],
    [""],
    ["-"],
  ])("is not %s", (written) => {
    expect(nameOf(written)).toBeUndefined();
  });

  // Ways to write one: common practice, no source.
  it.each([
    ["fedex 2day", "FedEx 2 Day"],
    ["UPS 2nd Day Air AM", "UPS 2nd Day Air A.M."],
    ["UPS 2nd-Day Air", "UPS 2nd Day Air"],
    ["DHL 12:00", "DHL Express 12:00"],
    ["DHL Express 1200", "DHL Express 12:00"],
    ["DHL Import Express 12:00", "DHL Express Import Express 12:00"],
    ["Priority Overnight", "FedEx Priority Overnight"],
    ["Next Day Air Saver", "UPS Next Day Air Saver"],
    ["Import Express Worldwide", "DHL Express Import Express Worldwide"],
  ])("may be written %s", (written, name) => {
    expect(nameOf(written)).toBe(name);
  });

  it.each([["9:00"], ["10:30"], ["1200"]])("is not known by an hour alone: %s", (written) => {
    expect(nameOf(written)).toBeUndefined();
  });

  it("is not known by a service alone that two carriers have", () => {
    const twice = {
      privateDeliveryServices: {
        ...rulebook.privateDeliveryServices,
        rows: rulebook.privateDeliveryServices.rows.flatMap((row) => [
          row,
          { ...row, carrier: `${row.carrier} again` },
        ]),
      },
    };
    expect(deliveryService("Priority Overnight", twice)).toBeUndefined();
    expect(deliveryService("FedEx Priority Overnight", twice)?.carrier).toBe("FedEx");
  });

  it("is known in any case, spacing and punctuation, and not with a word more", () => {
    const separator = fc.constantFrom(" ", "  ", "-", ", ", ": ");
    fc.assert(
      fc.property(fc.constantFrom(...listed), separator, ([carrier, service], between) => {
        const name = `${carrier} ${service}`;
        expect(nameOf(` ${name.toUpperCase().replace(/ /g, between)}.`)).toBe(name);
        expect(nameOf(`${name} Ground`)).toBeUndefined();
      }),
      RUNS
    );
  });
});
