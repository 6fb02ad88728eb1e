import { defineConfig } from "vitest/config";
import { common } from "../vitest.config";

/** The tests that a change of `src/calculation` is tried on. The independent calculations are too slow to run for each change. */
export default defineConfig({
  test: {
    ...common,
    isolate: false,
    include: ["test/calculation/**/*.test.ts"],
  },
});
