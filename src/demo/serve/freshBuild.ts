import { execFileSync } from "node:child_process";
import { existsSync, readdirSync, statSync, utimesSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../../..", import.meta.url));
const inDist = (name: string): string => path.join(root, "dist", name);
const webpack = path.join(root, "node_modules", "webpack", "bin", "webpack.js");
const builtFrom = ["src", "rules", "package.json", "manifest.xml", "webpack.config.js"];
const demo = path.join(root, "src", "demo");

/** A part of the build. */
export interface Build {
  /** The files that its steps write last. */
  readonly written: readonly string[];
  /** Parts of src that it does not use. */
  readonly without: readonly string[];
  readonly steps: readonly (readonly string[])[];
}

/** The add-in and its help. */
export const addinBuild: Build = {
  written: [inDist("functions.json"), inDist("help/index.html")],
  without: [demo],
  steps: [[webpack], ["--import", "tsx", path.join("src", "help", "writeHelp.ts")]],
};
/** The demo sheet. */
export const sheetBuild: Build = {
  written: [inDist("sheet/index.html")],
  without: ["serve", "terminal"].map((part) => path.join(demo, part)),
  steps: [[webpack, "--env", "sheet"]],
};

/** When a file, or the newest file or folder in a folder, was written. Removing a file changes the time of its folder. */
function writtenAt(place: string, without: readonly string[]): number {
  if (without.includes(place)) return 0;
  const found = statSync(place);
  if (!found.isDirectory()) return found.mtimeMs;
  const inside = readdirSync(place).map((name) => writtenAt(path.join(place, name), without));
  return Math.max(found.mtimeMs, ...inside);
}

/** Whether a part is not built, or one of its source files is newer than the build. */
export function isStale({ written, without }: Build): boolean {
  if (!written.every((file) => existsSync(file))) return true;
  const places = builtFrom.map((place) => writtenAt(path.join(root, place), without));
  return written.some((file) => Math.max(...places) > statSync(file).mtimeMs);
}

/**
 * Builds a part.
 *
 * @throws Error with what the build printed, if it fails.
 */
export function build({ steps, written }: Build): void {
  const begun = (performance.timeOrigin + performance.now()) / 1000;
  try {
    for (const step of steps)
      execFileSync(process.execPath, step, { cwd: root, encoding: "utf8", stdio: "pipe" });
  } catch (failed) {
    const { stdout = "", stderr = "" } = failed as { stdout?: string; stderr?: string };
    throw new Error(`The build failed:\n${stdout}${stderr}`, { cause: failed });
  }
  // webpack does not write a file whose content is the same. A file changed during the build must be newer than the build.
  for (const file of written) utimesSync(file, begun, begun);
}
