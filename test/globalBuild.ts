import { execFileSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync, statSync, utimesSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { runsInBrowser } from "./browser/browser";

const root = fileURLToPath(new URL("..", import.meta.url));
const inDist = (name: string): string => path.join(root, "dist", name);
const webpack = path.join(root, "node_modules", "webpack", "bin", "webpack.js");
const usualAddress = "https://localhost:3000/addin.html";
const builtFrom = ["src", "rules", "package.json", "manifest.xml", "webpack.config.js"];
const demo = path.join(root, "src", "demo");

/** Something that is built before the tests. */
interface Build {
  /** What its steps write last. */
  readonly written: readonly string[];
  /** Parts of src that have no part in it. */
  readonly without: readonly string[];
  readonly steps: readonly (readonly string[])[];
}

/** The add-in and its help. */
const addin: Build = {
  written: [inDist("functions.json"), inDist("help/index.html")],
  without: [demo],
  steps: [[webpack], ["--import", "tsx", path.join("src", "help", "writeHelp.ts")]],
};
/** The demo sheet, which only the tests in a browser open. */
const sheet: Build = {
  written: [inDist("sheet/index.html")],
  without: ["serve", "terminal"].map((part) => path.join(demo, part)),
  steps: [[webpack, "--env", "sheet"]],
};

/** When the youngest of a file, or of a folder and all it holds, was written; a file taken away touches its folder. */
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
    throw new Error(`It does not build:\n${stdout}${stderr}`, { cause: failed });
  }
  // webpack leaves a file alone whose content is the same, and a file changed during the build is younger than it
  for (const file of written) utimesSync(file, begun, begun);
}

/** Whether the add-in was built for a trial in Excel at another port. */
function isElsewhere(): boolean {
  return !readFileSync(inDist("manifest.xml"), "utf8").includes(usualAddress);
}

/**
 * Builds the add-in, its help and, for the tests in a browser, the demo sheet once before the tests, where anything they are made
 * of is younger than the build: a test of what is built never sees an old one. A failed build fails the run.
 */
export default function buildIfStale(): void {
  if (isStale(addin) || isElsewhere()) build(addin);
  if (runsInBrowser && isStale(sheet)) build(sheet);
  if (!runsInBrowser)
    process.stdout.write(
      "Left out: the tests in a browser. Install Chromium, or name one in CHROMIUM_PATH, to run them.\n"
    );
}
