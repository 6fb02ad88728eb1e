import { XMLParser, XMLValidator } from "fast-xml-parser";

/** One element of a manifest, with its children in the order of the file. */
export interface ManifestElement {
  /** As written, with the prefix: "bt:Image". */
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly ManifestElement[];
  readonly text: string;
}

type OrderedNode = Record<string, unknown>;

const parser = new XMLParser({
  preserveOrder: true,
  ignoreAttributes: false,
  attributeNamePrefix: "",
  parseTagValue: false,
  parseAttributeValue: false,
  ignoreDeclaration: true,
});

function toElement(node: OrderedNode): ManifestElement {
  const [name, content] = Object.entries(node).find(([key]) => key !== ":@") ?? ["", []];
  const nodes = content as OrderedNode[];
  return {
    name,
    attributes: (node[":@"] ?? {}) as Record<string, string>,
    children: nodes.filter((child) => !("#text" in child)).map(toElement),
    text: nodes
      .map((child) => child["#text"])
      .filter((text) => typeof text === "string")
      .join("")
      .trim(),
  };
}

/**
 * Reads a manifest as a tree.
 *
 * @param xml - Text of the manifest.
 * @returns The root element, or a sentence that says why the text is not XML.
 */
export function manifestTree(xml: string): ManifestElement | string {
  const verdict = XMLValidator.validate(xml);
  if (verdict !== true) return `The manifest is not well-formed XML: ${verdict.err.msg}`;
  const root = (parser.parse(xml) as OrderedNode[]).find((node) => !("#text" in node));
  return root === undefined
    ? "The manifest is not well-formed XML: it has no element."
    : toElement(root);
}

/**
 * Every element of a tree, the root first, in the order of the file.
 *
 * @param element - Where to start.
 * @returns The element itself and all below it.
 */
export function elementsOf(element: ManifestElement): ManifestElement[] {
  return [element, ...element.children.flatMap(elementsOf)];
}

/**
 * Elements reached from one element by following child names.
 *
 * @param element - Where to start.
 * @param path - Child names from the outside in.
 * @returns All elements at the end of the path.
 */
export function at(element: ManifestElement, ...path: readonly string[]): ManifestElement[] {
  return path.reduce<ManifestElement[]>(
    (found, name) =>
      found.flatMap(({ children }) => children.filter((child) => child.name === name)),
    [element]
  );
}
