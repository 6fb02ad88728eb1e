import { readFileSync } from "node:fs";
import { addinBuild, build, isStale, sheetBuild } from "../src/demo/serve/freshBuild";
import { runsInBrowser } from "./browser/browser";
import { runsPython } from "./otherLibraries/python";

const usualAddress = "https://localhost:3000/addin.html";
const manifest = new URL("../dist/manifest.xml", import.meta.url);

/** Whether the add-in was built for Excel at another port. */
function isAtOtherPort(): boolean {
  return !readFileSync(manifest, "utf8").includes(usualAddress);
}

/**
 * Builds the add-in and its help once before the tests, and the demo sheet for the tests in a browser, if any of their source files
 * is newer than the build. So no test sees an old build. A failed build fails the run.
 */
export default function buildIfStale(): void {
  if (isStale(addinBuild) || isAtOtherPort()) build(addinBuild);
  if (runsInBrowser && isStale(sheetBuild)) build(sheetBuild);
  if (!runsInBrowser)
    process.stdout.write(
      "The tests in a browser are left out. To run them, install Chromium or set CHROMIUM_PATH.\n"
    );
  if (!runsPython)
    process.stdout.write(
      "The tests with other workbook libraries are left out. To run them, install python3-openpyxl and python3-xlsxwriter.\n"
    );
}
