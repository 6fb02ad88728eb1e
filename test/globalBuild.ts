import { execFileSync } from "node:child_process";
import { existsSync, readdirSync, statSync, utimesSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { runsInBrowser } from "./browser/browser";

const root = fileURLToPath(new URL("..", import.meta.url));
const built = path.join(root, "dist", "functions.json");
const builtFrom = ["src", "rules", "package.json", "manifest.xml", "webpack.config.js"];
/** Stands beside the add-in and is no part of the build. */
const notBuilt = path.join(root, "src", "tryout");

/** When the youngest of a file, or of a folder and all it holds, was written; a file taken away touches its folder. */
function writtenAt(place: string): number {
  if (place === notBuilt) return 0;
  const found = statSync(place);
  if (!found.isDirectory()) return found.mtimeMs;
  const inside = readdirSync(place).map((name) => writtenAt(path.join(place, name)));
  return Math.max(found.mtimeMs, ...inside);
}

function isStale(): boolean {
  if (!existsSync(built)) return true;
  const youngest = Math.max(...builtFrom.map((place) => writtenAt(path.join(root, place))));
  return youngest > statSync(built).mtimeMs;
}

/**
 * Builds the add-in once before the tests, if anything it is made of is younger than the build: a test of the built bundle never
 * sees an old one. A failed build fails the run.
 */
export default function buildIfStale(): void {
  if (!runsInBrowser)
    process.stdout.write(
      "Left out: the tests in a browser. Install Chromium, or name one in CHROMIUM_PATH, to run them.\n"
    );
  if (!isStale()) return;
  const begun = (performance.timeOrigin + performance.now()) / 1000;
  const webpack = path.join(root, "node_modules", "webpack", "bin", "webpack.js");
  try {
    execFileSync(process.execPath, [webpack], { cwd: root, encoding: "utf8", stdio: "pipe" });
  } catch (failed) {
    const { stdout = "", stderr = "" } = failed as { stdout?: string; stderr?: string };
    throw new Error(`The add-in does not build:\n${stdout}${stderr}`, { cause: failed });
  }
  // webpack leaves a file alone whose content is the same, and a file changed during the build is younger than it
  utimesSync(built, begun, begun);
}
