import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { TASKS } from "../functions/catalog";

const source = new URL("../", import.meta.url);
const FUNCTIONS = "functions";
const CALCULATION = "calculation";
const LONGEST_LINE = 126;

const textOf = (file: string): string => readFileSync(new URL(`${file}.ts`, source), "utf8");

/** The files that a file imports values from, below src and without the ending. */
function importsOf(file: string): readonly string[] {
  const imports = textOf(file).matchAll(/^import (?!type )[^;]*? from "(\.[^"]+)";$/gm);
  return [...imports].map(([, target = ""]) => path.posix.join(path.posix.dirname(file), target));
}

/** The calculation files that a file of src/functions uses, directly or through another file of its task. */
function calculationsOf(file: string, seen = new Set<string>()): readonly string[] {
  if (seen.has(file)) return [];
  seen.add(file);
  if (file.startsWith(`${CALCULATION}/`)) {
    const calculation = file.slice(CALCULATION.length + 1);
    // The words shared by all tasks, such as the filing statuses, are in src/calculation itself.
    return calculation.includes("/") ? [calculation] : [];
  }
  if (!TASKS.some(({ folder }) => file.startsWith(`${FUNCTIONS}/${folder}/`))) return [];
  return importsOf(file).flatMap((target) => calculationsOf(target, seen));
}

/** Text broken into lines at spaces, the later ones indented. */
function wrapped(text: string): string {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const line = lines.at(-1);
    if (line === undefined || `${line} ${word}`.length > LONGEST_LINE)
      lines.push(line === undefined ? word : `  ${word}`);
    else lines[lines.length - 1] = `${line} ${word}`;
  }
  return lines.join("\n");
}

/**
 * The map of the worksheet functions: for each file of src/functions its functions and the files of src/calculation it uses.
 *
 * @returns A list in Markdown, in the order of the tasks.
 */
export function functionMap(): string {
  const entries = TASKS.flatMap(({ folder, functions }) => {
    const files = readdirSync(new URL(`${FUNCTIONS}/${folder}`, source)).map((file) =>
      path.posix.join(folder, file.replace(/\.ts$/, ""))
    );
    return files.flatMap((file) => {
      const text = textOf(`${FUNCTIONS}/${file}`);
      const ids = Object.keys(functions).filter((id) => text.includes(`@customfunction ${id}\n`));
      if (ids.length === 0) return [];
      const calculations = calculationsOf(`${FUNCTIONS}/${file}`).join(", ");
      return wrapped(
        `- **${file}** (${ids.join(", ")})${calculations === "" ? "" : `: ${calculations}`}`
      );
    });
  });
  return entries.join("\n");
}

const MARKS = /(<!-- map: npm run map -->)[\s\S]*?(<!-- end of map -->)/;

/**
 * Puts the map of today between the marks of a text.
 *
 * @throws RangeError for a text without the marks.
 */
export function withMap(text: string): string {
  if (!MARKS.test(text)) throw new RangeError("The text has no marks for the map.");
  return text.replace(
    MARKS,
    (_all, begin: string, end: string) => `${begin}\n\n${functionMap()}\n\n${end}`
  );
}
