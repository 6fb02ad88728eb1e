import { execFileSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync, statSync, utimesSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { runsInBrowser } from "./browser/browser";
import { runsPython } from "./otherLibraries/python";

const root = fileURLToPath(new URL("..", import.meta.url));
const inDist = (name: string): string => path.join(root, "dist", name);
const webpack = path.join(root, "node_modules", "webpack", "bin", "webpack.js");
const usualAddress = "https://localhost:3000/addin.html";
const builtFrom = ["src", "rules", "package.json", "manifest.xml", "webpack.config.js"];
const demo = path.join(root, "src", "demo");

/** Something that is built before the tests. */
interface Build {
  /** The files that its steps write last. */
  readonly written: readonly string[];
  /** Parts of src that it does not use. */
  readonly without: readonly string[];
  readonly steps: readonly (readonly string[])[];
}

/** The add-in and its help. */
const addin: Build = {
  written: [inDist("functions.json"), inDist("help/index.html")],
  without: [demo],
  steps: [[webpack], ["--import", "tsx", path.join("src", "help", "writeHelp.ts")]],
};
/** The demo sheet. Only the tests in a browser open it. */
const sheet: Build = {
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

function isStale({ written, without }: Build): boolean {
  if (!written.every((file) => existsSync(file))) return true;
  const places = builtFrom.map((place) => writtenAt(path.join(root, place), without));
  return written.some((file) => Math.max(...places) > statSync(file).mtimeMs);
}

function build({ steps, written }: Build): void {
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

/** Whether the add-in was built for Excel at another port. */
function isAtOtherPort(): boolean {
  return !readFileSync(inDist("manifest.xml"), "utf8").includes(usualAddress);
}

/**
 * Builds the add-in and its help once before the tests, and the demo sheet for the tests in a browser, if any of their source files
 * is newer than the build. So no test sees an old build. A failed build fails the run.
 */
export default function buildIfStale(): void {
  if (isStale(addin) || isAtOtherPort()) build(addin);
  if (runsInBrowser && isStale(sheet)) build(sheet);
  if (!runsInBrowser)
    process.stdout.write(
      "The tests in a browser are left out. To run them, install Chromium or set CHROMIUM_PATH.\n"
    );
  if (!runsPython)
    process.stdout.write(
      "The tests with other workbook libraries are left out. To run them, install python3-openpyxl and python3-xlsxwriter.\n"
    );
}
