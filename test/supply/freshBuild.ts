import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { copyProject } from "../projectCopy";

const script = fileURLToPath(new URL("buildAndTell.ts", import.meta.url));
const SOURCES = [
  "src",
  "rules",
  "package.json",
  "manifest.xml",
  "tsconfig.json",
  "webpack.config.js",
];
const HELP = path.join("src", "help", "writeHelp.ts");

/** A build made where nothing was built before. */
export interface FreshBuild {
  /** Every file of it, by its path in `dist`. */
  readonly files: ReadonlyMap<string, Buffer>;
  /** The packages that each script is made of, by the script's name. */
  readonly packages: Readonly<Record<string, readonly string[]>>;
}

/** All files of a folder, by their paths within. */
export function filesOf(folder: string): Map<string, Buffer> {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.join(entry.parentPath, entry.name));
  return new Map(
    files.map((file) => [path.relative(folder, file).replaceAll("\\", "/"), readFileSync(file)])
  );
}

/**
 * Builds parts of the add-in from a copy of its sources in a folder of the system's, and takes the copy away.
 *
 * @param within - Folders the copy lies in, so that paths differ in length.
 * @param parts - Names of webpack's parts; with both, the help is written too.
 * @param surroundings - Time zone and language.
 * @returns What was built.
 */
export function freshBuild(
  within: string,
  parts: readonly ("functions" | "addin")[],
  surroundings: Readonly<Record<string, string>>
): FreshBuild {
  const place = mkdtempSync(path.join(tmpdir(), "fresh-build-"));
  const folder = path.join(place, within);
  const run = (...words: string[]) =>
    execFileSync(process.execPath, ["--import", "tsx", ...words], {
      cwd: folder,
      env: { ...process.env, ...surroundings },
      encoding: "utf8",
    });
  try {
    copyProject(SOURCES, folder);
    const told = run(script, folder, ...parts);
    if (parts.length === 2) run(HELP);
    return {
      files: filesOf(path.join(folder, "dist")),
      packages: JSON.parse(told) as FreshBuild["packages"],
    };
  } finally {
    rmSync(place, { recursive: true, force: true });
  }
}
