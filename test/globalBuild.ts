import { execFileSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync, statSync, utimesSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { runsInBrowser } from "./browser/browser";

const root = fileURLToPath(new URL("..", import.meta.url));
/** What the two steps of the build write last. */
const built = ["functions.json", "help/index.html"].map((name) => path.join(root, "dist", name));
const manifest = path.join(root, "dist", "manifest.xml");
const usualAddress = "https://localhost:3000/addin.html";
const builtFrom = ["src", "rules", "package.json", "manifest.xml", "webpack.config.js"];
/** Parts of src/tryout that stand beside the add-in; its host answers the examples of the help. */
const notBuilt = ["season", "sheet", "serve", "terminal"].map((part) =>
  path.join(root, "src", "tryout", part)
);

/** When the youngest of a file, or of a folder and all it holds, was written; a file taken away touches its folder. */
function writtenAt(place: string): number {
  if (notBuilt.includes(place)) return 0;
  const found = statSync(place);
  if (!found.isDirectory()) return found.mtimeMs;
  const inside = readdirSync(place).map((name) => writtenAt(path.join(place, name)));
  return Math.max(found.mtimeMs, ...inside);
}

function isStale(): boolean {
  if (!built.every((file) => existsSync(file))) return true;
  // built for a trial in Excel at another port
  if (!readFileSync(manifest, "utf8").includes(usualAddress)) return true;
  const youngest = Math.max(...builtFrom.map((place) => writtenAt(path.join(root, place))));
  return built.some((file) => youngest > statSync(file).mtimeMs);
}

/**
 * Builds the add-in and its help once before the tests, if anything they are made of is younger than the build: a test of what is
 * built never sees an old one. A failed build fails the run.
 */
export default function buildIfStale(): void {
  if (!runsInBrowser)
    process.stdout.write(
      "Left out: the tests in a browser. Install Chromium, or name one in CHROMIUM_PATH, to run them.\n"
    );
  if (!isStale()) return;
  const begun = (performance.timeOrigin + performance.now()) / 1000;
  const webpack = path.join(root, "node_modules", "webpack", "bin", "webpack.js");
  const steps = [[webpack], ["--import", "tsx", path.join("src", "help", "writeHelp.ts")]];
  try {
    for (const step of steps)
      execFileSync(process.execPath, step, { cwd: root, encoding: "utf8", stdio: "pipe" });
  } catch (failed) {
    const { stdout = "", stderr = "" } = failed as { stdout?: string; stderr?: string };
    throw new Error(`The add-in does not build:\n${stdout}${stderr}`, { cause: failed });
  }
  // webpack leaves a file alone whose content is the same, and a file changed during the build is younger than it
  for (const file of built) utimesSync(file, begun, begun);
}
