import { at, elementsOf } from "./manifestTree";
import type { ManifestElement } from "./manifestTree";

function residsOf(elements: readonly ManifestElement[]): { owner: string; resid: string }[] {
  return elements.map(({ name, attributes }) => ({
    owner: `<${name}>`,
    resid: attributes["resid"] ?? "",
  }));
}

function pageReferences(host: ManifestElement): { owner: string; resid: string }[] {
  const actions = elementsOf(host).filter(({ name }) => name === "Action");
  return [
    ...at(host, "AllFormFactors", "ExtensionPoint", "Page").map((page) => ({
      owner: "<Page>",
      resid: at(page, "SourceLocation")[0]?.attributes["resid"] ?? "",
    })),
    ...residsOf(at(host, "DesktopFormFactor", "FunctionFile")),
    ...actions.flatMap((action) =>
      at(action, "SourceLocation").map(({ attributes }) => ({
        owner: "<Action>",
        resid: attributes["resid"] ?? "",
      }))
    ),
  ];
}

/** Microsoft's page "Naming guidelines for custom functions" (excel/custom-functions-naming): begins with a letter; letters, digits, periods, underscores. */
const namespacePattern = /^[A-Za-z][A-Za-z0-9._]*$/;

function namespaceProblems(app: ManifestElement, host: ManifestElement): string[] {
  const resid = at(host, "AllFormFactors", "ExtensionPoint", "Namespace")[0]?.attributes["resid"];
  const strings = at(app, "VersionOverrides", "Resources", "bt:ShortStrings", "bt:String");
  const value = strings.find(({ attributes }) => attributes["id"] === resid)?.attributes[
    "DefaultValue"
  ];
  return value === undefined || namespacePattern.test(value)
    ? []
    : [
        `<Namespace> "${value}" does not begin with a letter or has more than letters, digits, periods and underscores.`,
      ];
}

/**
 * Checks that everything runs in one shared runtime and that the functions have a valid namespace: "The shared runtime won't load if the resid uses different values in the
 * manifest" (Microsoft's page "Configure your Office Add-in to use a shared runtime").
 *
 * @param app - Root of the manifest.
 * @returns One sentence for each problem.
 */
export function sharedRuntimeProblems(app: ManifestElement): string[] {
  const host = at(app, "VersionOverrides", "Hosts", "Host").find(
    ({ attributes }) => attributes["xsi:type"] === "Workbook"
  );
  if (host === undefined) return [`<VersionOverrides> lacks <Host xsi:type="Workbook">.`];
  const runtime = at(host, "Runtimes", "Runtime")[0];
  if (runtime === undefined) return [];
  const { resid, lifetime } = runtime.attributes;
  const elsewhere = pageReferences(host).filter((reference) => reference.resid !== resid);
  return [
    ...(lifetime === "long"
      ? []
      : [`<Runtime> has the lifetime "${lifetime}", where "long" is required.`]),
    ...elsewhere.map(
      ({ owner, resid: other }) =>
        `${owner} names the resource "${other}", not the runtime's "${resid}".`
    ),
    ...namespaceProblems(app, host),
  ];
}
