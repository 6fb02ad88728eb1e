import type { ManifestElement } from "./manifestTree";

/**
 * Children of each element in the required order. "?" is optional, "*" means any number, "+" one or more. An element whose children
 * depend on its xsi:type is listed with that type after a slash. An element that is not listed has no children.
 *
 * From Microsoft's page "How to find the proper order of manifest elements" (develop/manifest-element-ordering), sections on
 * task pane add-ins. [MS-OWEMXML] sections 2 and 5 say which are optional. The list has only what an add-in of custom functions
 * with one ribbon button can need.
 */
const childrenInOrder: Readonly<Record<string, string>> = {
  OfficeApp:
    "Id AlternateId? Version ProviderName DefaultLocale DisplayName Description IconUrl HighResolutionIconUrl SupportUrl? " +
    "AppDomains? Hosts Requirements DefaultSettings Permissions VersionOverrides ExtendedOverrides?",
  AppDomains: "AppDomain+",
  Hosts: "Host+",
  Requirements: "Sets",
  Sets: "Set+",
  DefaultSettings: "SourceLocation",
  VersionOverrides:
    "Description? Requirements? Hosts Resources WebApplicationInfo? EquivalentAddins?",
  "Host/Workbook": "Runtimes AllFormFactors DesktopFormFactor?",
  Runtimes: "Runtime",
  AllFormFactors: "ExtensionPoint",
  "ExtensionPoint/CustomFunctions": "Script Page Metadata Namespace",
  Script: "SourceLocation",
  Page: "SourceLocation",
  Metadata: "SourceLocation",
  DesktopFormFactor: "GetStarted? FunctionFile? ExtensionPoint+",
  GetStarted: "Title Description LearnMoreUrl",
  "ExtensionPoint/PrimaryCommandSurface": "OfficeTab* CustomTab*",
  OfficeTab: "Group+",
  Group: "Label Icon Control+",
  Icon: "bt:Image+",
  "Control/Button": "Label Supertip Icon Action Enabled?",
  Supertip: "Title Description",
  "Action/ShowTaskpane": "TaskpaneId? SourceLocation Title?",
  "Action/ExecuteFunction": "FunctionName",
  Resources: "bt:Images bt:Urls bt:ShortStrings bt:LongStrings",
  "bt:Images": "bt:Image+",
  "bt:Urls": "bt:Url+",
  "bt:ShortStrings": "bt:String+",
  "bt:LongStrings": "bt:String+",
};

function childProblems(parent: ManifestElement, allowed: string): string[] {
  const places =
    allowed === ""
      ? []
      : allowed.split(" ").map((word) => /^(?<name>[\w:]+)(?<count>[?*+]?)$/.exec(word)?.groups);
  const names = places.map((place) => place?.["name"]);
  const problems: string[] = [];
  let latest = -1;
  for (const child of parent.children) {
    const place = names.indexOf(child.name);
    if (place < 0) problems.push(`<${child.name}> does not belong in <${parent.name}>.`);
    else if (place < latest)
      problems.push(`<${child.name}> must come before <${names[latest]}> in <${parent.name}>.`);
    else latest = place;
  }
  for (const place of places) {
    const times = parent.children.filter((child) => child.name === place?.["name"]).length;
    const count = place?.["count"] ?? "";
    if (times === 0 && (count === "" || count === "+"))
      problems.push(`<${parent.name}> lacks <${place?.["name"]}>.`);
    if (times > 1 && (count === "" || count === "?")) {
      problems.push(
        `<${place?.["name"]}> occurs ${times} times in <${parent.name}>, where once is allowed.`
      );
    }
  }
  return problems;
}

/**
 * Finds children that are missing, repeated, out of order or in the wrong place.
 *
 * @param element - Root of the part to check.
 * @returns One sentence for each problem.
 */
export function elementOrderProblems(element: ManifestElement): string[] {
  const type = element.attributes["xsi:type"];
  const allowed = childrenInOrder[`${element.name}/${type}`] ?? childrenInOrder[element.name] ?? "";
  return [...childProblems(element, allowed), ...element.children.flatMap(elementOrderProblems)];
}
