import { at } from "./manifestTree";
import type { ManifestElement } from "./manifestTree";

/** [MS-OWEMXML] 5.6, type UUID, without the urn and brace forms, which are not needed here. */
const guid = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/i;

/** [MS-OWEMXML] 5.6, type Version. */
const version = /^\d{1,5}(\.\d{1,5}){0,3}$/;

/** Microsoft's page "Permissions element" (manifest/permissions), task pane add-ins. */
const permissions = [
  "Restricted",
  "ReadDocument",
  "ReadAllDocument",
  "WriteDocument",
  "ReadWriteDocument",
];

/** [MS-OWEMXML] 2.3, types ShortString and LongString: maximum length of the texts outside <Resources>. */
const longestText: Readonly<Record<string, number>> = {
  ProviderName: 125,
  DisplayName: 125,
  Description: 250,
};

/** Page "Configure your Office Add-in to use a shared runtime", and "Custom functions requirement sets" (1.2 adds CustomFunctions.Error). */
const requiredSets: Readonly<Record<string, string>> = {
  SharedRuntime: "1.1",
  CustomFunctionsRuntime: "1.2",
};

function textProblems(app: ManifestElement): string[] {
  return Object.entries(longestText).flatMap(([name, limit]) =>
    at(app, name).flatMap(({ attributes, text }) => {
      const { length } = attributes["DefaultValue"] ?? text;
      return length >= 1 && length <= limit
        ? []
        : [`<${name}> has ${length} characters; 1 to ${limit} are allowed.`];
    })
  );
}

function requirementProblems(app: ManifestElement): string[] {
  const sets = at(app, "Requirements", "Sets", "Set");
  return Object.entries(requiredSets).flatMap(([name, least]) => {
    const set = sets.find(({ attributes }) => attributes["Name"] === name);
    if (set === undefined) return [`<Requirements> lacks the set ${name} ${least}.`];
    const stated = set.attributes["MinVersion"];
    return stated === least
      ? []
      : [`<Set Name="${name}"> states "${stated}", where ${least} is required.`];
  });
}

/**
 * Checks identity, texts, permissions, host and requirement sets.
 *
 * @param app - Root of the manifest.
 * @returns One sentence for each problem.
 */
export function baseElementProblems(app: ManifestElement): string[] {
  const textOf = (name: string) => at(app, name)[0]?.text ?? "";
  const problems = [...textProblems(app), ...requirementProblems(app)];
  if (app.name !== "OfficeApp" || app.attributes["xsi:type"] !== "TaskPaneApp") {
    problems.push(`The root is not <OfficeApp xsi:type="TaskPaneApp">.`);
  }
  if (!guid.test(textOf("Id"))) problems.push(`<Id> "${textOf("Id")}" is not a GUID.`);
  if (!version.test(textOf("Version"))) {
    problems.push(
      `<Version> "${textOf("Version")}" is not one to four numbers of one to five digits.`
    );
  }
  if (!permissions.includes(textOf("Permissions"))) {
    problems.push(
      `<Permissions> "${textOf("Permissions")}" is not a permission of a task pane add-in.`
    );
  }
  if (!at(app, "Hosts", "Host").some(({ attributes }) => attributes["Name"] === "Workbook")) {
    problems.push(`<Hosts> lacks <Host Name="Workbook">.`);
  }
  return problems;
}
