import { defineConfig } from "vitest/config";
import { common } from "../vitest.config";

/** The tests that a change of a figure in `rules` is tried on. `changedRules.ts` picks their folders. */
export default defineConfig({
  test: { ...common, isolate: false, include: ["test/**/*.test.ts"] },
});
