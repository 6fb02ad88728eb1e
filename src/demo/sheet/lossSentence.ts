import { type PackageParts, partText } from "../workbook/workbookPackage";

const PARTS: readonly (readonly [pattern: RegExp, what: string])[] = [
  [/vbaProject\.bin$/, "macros"],
  [/comments\d*\.xml$|threadedComment/, "comments"],
  [/\/charts?\//, "charts"],
  [/\/drawings\//, "drawings"],
  [/pivot/i, "pivot tables"],
  [/ctrlProps|activeX|embeddings/, "controls"],
  [/slicer|timeline/i, "slicers"],
  [/tables\/[^/]+\.xml$/, "tables"],
  [/printerSettings/, "printer settings"],
  [/externalLink/, "links to other workbooks"],
];
const ELEMENTS: readonly (readonly [pattern: RegExp, what: string])[] = [
  [/<(?:\w+:)?conditionalFormatting\b/, "conditional formats"],
  [/<(?:\w+:)?dataValidations?\b/, "drop-down lists and other data validation"],
  [/<(?:\w+:)?autoFilter\b/, "filters"],
  [/<(?:\w+:)?sheetProtection\b/, "protection"],
  [/<(?:\w+:)?(?:pageSetup|headerFooter)\b/, "page setup"],
];

/**
 * What a file may lose when it is made anew, because more was changed in the grid than the content of cells.
 *
 * @param parts - The parts of the file.
 * @returns One sentence; undefined if the file has nothing to lose.
 */
export function lossSentence(parts: PackageParts): string | undefined {
  const names = [...parts.keys()];
  const sheets = names.filter((name) => /\/worksheets\/[^/]+\.xml$/.test(name));
  const texts = sheets.map((name) => partText(parts, name));
  const lost = [
    ...PARTS.filter(([pattern]) => names.some((name) => pattern.test(name))),
    ...ELEMENTS.filter(([pattern]) => texts.some((text) => pattern.test(text))),
  ].map(([, what]) => what);
  if (lost.length === 0) return undefined;
  return `You changed styles, sizes, sheets, names, or the place of cells, so a new file is made. It may lose these contents of the workbook, or parts of them: ${lost.join(", ")}. Save the copy?`;
}
