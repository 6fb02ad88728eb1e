import { defineConfig } from "vitest/config";
import tests from "../vitest.config";

/** The tests that a change of `src/calculation` is tried on: those of its files, the second opinions being too slow for each change. */
export default defineConfig({
  test: {
    ...tests.test,
    include: ["test/calculation/**/*.test.ts"],
    globalSetup: [],
  },
});
