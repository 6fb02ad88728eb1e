import { at, elementsOf } from "./manifestTree";
import type { ManifestElement } from "./manifestTree";

const elementsWithAddress = [
  "IconUrl",
  "HighResolutionIconUrl",
  "SupportUrl",
  "SourceLocation",
  "bt:Image",
  "bt:Url",
];

/** Required pixel sizes of a button or group icon, and further sizes that a host accepts. Source: Microsoft's page "Icon element" (manifest/icon). */
const requiredSizes = ["16", "32", "80"];
const furtherSizes = ["20", "24", "40", "48", "64"];

interface Address {
  readonly owner: string;
  readonly url: string;
}

function addressesIn(app: ManifestElement): Address[] {
  return elementsOf(app).flatMap(({ name, attributes, text }) => {
    const { id, DefaultValue: url } = attributes;
    if (name === "AppDomain") return [{ owner: "<AppDomain>", url: text }];
    if (url === undefined || !elementsWithAddress.includes(name)) return [];
    return [{ owner: id === undefined ? `<${name}>` : `<${name} id="${id}">`, url }];
  });
}

/**
 * Addresses that are not https, or that name a file of the add-in which is not served.
 *
 * "You must use Secure Sockets Layer (SSL) for all URLs": Microsoft's page "Resources element" (manifest/resources). The
 * same page, section Images, requires that icons can be downloaded and cached.
 *
 * @param app - Root of the manifest.
 * @param served - Whether the address of the add-in serves a path such as "icons/icon-16.png".
 * @returns One sentence for each problem.
 */
export function addressProblems(app: ManifestElement, served: (path: string) => boolean): string[] {
  const page = at(app, "DefaultSettings", "SourceLocation")[0]?.attributes["DefaultValue"] ?? "";
  const home = page.slice(0, page.lastIndexOf("/") + 1);
  return addressesIn(app).flatMap(({ owner, url }) => {
    if (!url.startsWith("https://")) return [`The address "${url}" of ${owner} is not https.`];
    if (url.length > 2048)
      return [`The address of ${owner} has ${url.length} characters; 1 to 2048 are allowed.`];
    if (home === "" || !url.startsWith(home) || owner === "<AppDomain>") return [];
    const path = url.slice(home.length).replace(/[?#].*$/, "");
    return served(path) ? [] : [`The file "${path}" of ${owner} is not served.`];
  });
}

/**
 * Icons that lack a size or have one that the host does not accept.
 *
 * @param app - Root of the manifest.
 * @returns One sentence for each problem.
 */
export function iconSizeProblems(app: ManifestElement): string[] {
  const overrides = at(app, "VersionOverrides").flatMap(elementsOf);
  const owners = overrides.filter(({ children }) => children.some(({ name }) => name === "Icon"));
  return owners.flatMap((owner) => {
    const named = `<Icon> of <${owner.name} id="${owner.attributes["id"]}">`;
    const sizes = at(owner, "Icon", "bt:Image").map(({ attributes }) => attributes["size"] ?? "");
    const missing = requiredSizes.filter((size) => !sizes.includes(size));
    const unknown = sizes.filter(
      (size) => !requiredSizes.includes(size) && !furtherSizes.includes(size)
    );
    return [
      ...missing.map((size) => `${named} lacks the size ${size}.`),
      ...unknown.map((size) => `${named} has the size "${size}", which the host does not accept.`),
    ];
  });
}
