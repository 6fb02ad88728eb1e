import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { BlankHabit } from "./argumentMarshalling";
import { sealedHost } from "./sealedHost";
import { type StandInHost } from "./standInHost";

/** Where the build puts the add-in. */
export const BUILD_FOLDER = new URL("../../dist/", import.meta.url);

/** Thrown when the add-in has not been built. */
export class NotBuilt extends Error {}

/** A stand-in host with the built add-in loaded. */
export function hostOfBuiltAddIn(blankHabit: BlankHabit): StandInHost {
  const read = (name: string) => {
    const path = fileURLToPath(new URL(name, BUILD_FOLDER));
    if (!existsSync(path)) {
      throw new NotBuilt(`dist/${name} does not exist. Run "npm run build" first.`);
    }
    return readFileSync(path, "utf8");
  };
  return sealedHost({
    bundle: read("functions.js"),
    metadata: read("functions.json"),
    blankHabit,
  });
}
