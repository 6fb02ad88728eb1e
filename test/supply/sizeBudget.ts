/** Bytes for each part of the build: a file, a folder, or all files with one extension. */
const BUDGET: Readonly<Record<string, number>> = {
  "functions.js": 454_000,
  "addin.js": 222_000,
  "outside.js": 380,
  "functions.json": 116_000,
  "addin.html": 1_800,
  "addin.css": 13_200,
  "manifest.xml": 6_200,
  "icons/": 3_000,
  "help/": 800_000,
  ".LICENSE.txt": 9_900,
};

/** The parts of the build, each with the most bytes it may have. Raise a budget by a little when something is added on purpose. */
export const sizeBudget: readonly (readonly [part: string, bytes: number])[] =
  Object.entries(BUDGET);

/** Whether a built file belongs to a part: it is that file, is in that folder, or has that extension. */
export function isPartOf(part: string, file: string): boolean {
  if (part.endsWith("/")) return file.startsWith(part);
  return part.startsWith(".") ? file.endsWith(part) : file === part;
}
