import { fileURLToPath } from "node:url";
import { buildSync } from "esbuild";

let built: string | undefined;

/**
 * The script of `hostPage.ts` with all that it imports, for a sealed context and for a page in a browser.
 *
 * @returns Text of a classic script, which defines `standInPage` among the globals.
 */
export function hostPageScript(): string {
  if (built === undefined) {
    const { outputFiles } = buildSync({
      entryPoints: [fileURLToPath(new URL("hostPage.ts", import.meta.url))],
      bundle: true,
      write: false,
      format: "iife",
      target: "es2020",
    });
    const [script] = outputFiles;
    if (script === undefined) throw new Error("hostPage.ts could not be compiled.");
    built = script.text;
  }
  return built;
}
