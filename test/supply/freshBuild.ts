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
  "LICENSE",
  "manifest.xml",
  "tsconfig.json",
  "webpack.config.js",
];
const HELP = path.join("src", "help", "writeHelp.ts");

/** A build in a folder without earlier builds. */
export interface FreshBuild {
  /** Its files, by path in `dist`. */
  readonly files: ReadonlyMap<string, Buffer>;
  /** The packages in each script, by the name of the script. */
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
 * Builds the add-in from a copy of its sources in a temporary folder, and deletes the copy.
 *
 * @param within - Folders around the copy, so that paths differ in length.
 * @param withHelp - Whether the help is written too.
 * @param surroundings - Time zone and language.
 * @returns The build.
 */
export function freshBuild(
  within: string,
  withHelp: boolean,
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
    const told = run(script, folder);
    if (withHelp) run(HELP);
    return {
      files: filesOf(path.join(folder, "dist")),
      packages: JSON.parse(told) as FreshBuild["packages"],
    };
  } finally {
    rmSync(place, { recursive: true, force: true });
  }
}
