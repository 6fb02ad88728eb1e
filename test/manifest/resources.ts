import { at, elementsOf } from "./manifestTree";
import type { ManifestElement } from "./manifestTree";

interface ResourceKind {
  readonly list: string;
  readonly limit: number;
  /** Elements that may refer to a resource of this kind. */
  readonly usedBy: readonly string[];
}

/**
 * Lists of resources, the maximum length of their values, and the elements that may refer to them.
 * From Microsoft's reference page "Resources element" (manifest/resources) and [MS-OWEMXML] 5.6, types ShortString, LongString, URL.
 */
const kinds: readonly ResourceKind[] = [
  { list: "bt:Images", limit: 2048, usedBy: ["bt:Image"] },
  {
    list: "bt:Urls",
    limit: 2048,
    usedBy: ["SourceLocation", "Runtime", "FunctionFile", "LearnMoreUrl"],
  },
  { list: "bt:ShortStrings", limit: 125, usedBy: ["Label", "Title", "Namespace"] },
  { list: "bt:LongStrings", limit: 250, usedBy: ["Description"] },
];

/** "can have a maximum of 32 characters": page "Resources element"; [MS-OWEMXML] 5.6, type ReferenceId. */
const longestId = 32;

function identifierProblems(all: readonly ManifestElement[]): string[] {
  return all.flatMap(({ name, attributes }) =>
    (["id", "resid"] as const).flatMap((key) => {
      const value = attributes[key];
      if (value === undefined || (value.length >= 1 && value.length <= longestId)) return [];
      return [
        `The ${key} "${value}" of <${name}> has ${value.length} characters; 1 to ${longestId} are allowed.`,
      ];
    })
  );
}

// "An id must be unique within the manifest": page "Resources element".
function repeatedIds(all: readonly ManifestElement[]): string[] {
  const ids = all.flatMap(({ attributes }) => attributes["id"] ?? []);
  const repeated = new Set(ids.filter((id, index) => ids.indexOf(id) !== index));
  return [...repeated].map((id) => `The id "${id}" is the id of more than one element.`);
}

function valueProblems(resources: ManifestElement): string[] {
  return kinds.flatMap(({ list, limit }) =>
    at(resources, list).flatMap(({ children }) =>
      children.flatMap(({ name, attributes }) => {
        const { id, DefaultValue: value = "" } = attributes;
        if (value.length >= 1 && value.length <= limit) return [];
        return [
          `The value of <${name} id="${id}"> has ${value.length} characters; 1 to ${limit} are allowed in <${list}>.`,
        ];
      })
    )
  );
}

// What a resid may refer to: the reference pages of the elements ("must be set to the value of the id attribute of …").
function referenceProblems(resources: ManifestElement, all: readonly ManifestElement[]): string[] {
  return all.flatMap(({ name, attributes }) => {
    const resid = attributes["resid"];
    const kind = kinds.find(({ usedBy }) => usedBy.includes(name));
    if (resid === undefined || kind === undefined) return [];
    const known = at(resources, kind.list).some(({ children }) =>
      children.some((child) => child.attributes["id"] === resid)
    );
    return known ? [] : [`The resid "${resid}" of <${name}> is not defined in <${kind.list}>.`];
  });
}

// This is no rule of the platform, but an unused resource is a mistake.
function unusedResources(resources: ManifestElement, all: readonly ManifestElement[]): string[] {
  const used = new Set(all.map(({ attributes }) => attributes["resid"]));
  return resources.children.flatMap(({ children }) =>
    children
      .filter(({ attributes }) => !used.has(attributes["id"]))
      .map(({ name, attributes }) => `<${name} id="${attributes["id"]}"> is not used.`)
  );
}

/**
 * Checks ids, references and resource values.
 *
 * @param app - Root of the manifest.
 * @returns One sentence for each problem.
 */
export function resourceProblems(app: ManifestElement): string[] {
  const all = elementsOf(app);
  const resources = at(app, "VersionOverrides", "Resources")[0];
  const about = resources
    ? [valueProblems(resources), referenceProblems(resources, all), unusedResources(resources, all)]
    : [];
  return [...identifierProblems(all), ...repeatedIds(all), ...about.flat()];
}
