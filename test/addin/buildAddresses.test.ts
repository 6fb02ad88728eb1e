import { describe, expect, it } from "vitest";

interface Addresses {
  readonly address?: string;
  readonly officeAddress?: string;
  readonly officeHost?: string;
  readonly officeOrigins?: string;
  readonly problem?: string;
}
const { buildAddresses } = (await import(
  new URL("../../src/addin/buildAddresses.js", import.meta.url).href
)) as { buildAddresses: (environment: Readonly<Record<string, string>>) => Addresses };

/** OfficeDev/office-js-docs-pr, pull request 5882, 2026-09-10. */
const PRESENT = "https://officeapis.public.onecdn.static.microsoft/1/office.js";
/** The same documentation until then. */
const FORMER = "https://appsforoffice.microsoft.com/lib/1/hosted/office.js";
/** OfficeDev/office-js-docs-pr, docs/publish/government-cloud-guidance.md, 1/28/2025. */
const GCC_HIGH = "https://appsforoffice.gcch.cdn.office.net/appsforoffice/lib/1/hosted/office.js";
const PUBLIC_ORIGINS =
  "https://officeapis.public.onecdn.static.microsoft https://appsforoffice.microsoft.com";

describe("the address of the add-in", () => {
  it.each([
    [undefined, "https://localhost:3000/"],
    ["https://addin.example/ext", "https://addin.example/ext/"],
    ["https://addin.example/ext/", "https://addin.example/ext/"],
    ["https://addin.example", "https://addin.example/"],
  ])("%s is %s", (given, address) => {
    const environment = given === undefined ? {} : { ADDIN_ADDRESS: given };
    expect(buildAddresses(environment).address).toBe(address);
  });

  it.each(["http://addin.example/", "addin.example/ext", "", "https://addin.example/?a=b"])(
    "%j is not accepted",
    (given) => {
      expect(buildAddresses({ ADDIN_ADDRESS: given })).toEqual({
        problem: `ADDIN_ADDRESS: "${given}" is not an https address. Enter the folder where the add-in is served, such as https://your.server/extension/.`,
      });
    }
  );
});

describe("the address of office.js", () => {
  it.each([
    ["none", {}, PRESENT, PUBLIC_ORIGINS],
    ["the former one", { OFFICE_ADDRESS: FORMER }, FORMER, PUBLIC_ORIGINS],
    [
      "that of a government cloud",
      { OFFICE_ADDRESS: GCC_HIGH },
      GCC_HIGH,
      "https://appsforoffice.gcch.cdn.office.net",
    ],
  ])("with %s given: tag, policy and text follow it", (_given, environment, address, origins) => {
    const { officeAddress, officeOrigins, officeHost } = buildAddresses(environment);
    expect({ officeAddress, officeOrigins }).toEqual({
      officeAddress: address,
      officeOrigins: origins,
    });
    expect(officeHost).toBe(new URL(address).host);
  });

  it.each(["http://appsforoffice.microsoft.com/lib/1/hosted/office.js", "https://a.example/"])(
    "%j is not accepted",
    (given) => {
      expect(buildAddresses({ OFFICE_ADDRESS: given })).toEqual({
        problem: `OFFICE_ADDRESS: "${given}" is not an https address of office.js. Enter an address such as ${PRESENT}.`,
      });
    }
  );
});
