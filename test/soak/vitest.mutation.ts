import { defineConfig } from "vitest/config";
import tests from "../vitest.config";

/** The tests that a change of `src/calculation` is tried on. */
export default defineConfig({
  test: {
    ...tests.test,
    include: ["test/calculation/**/*.test.ts", "test/secondOpinion/**/*.test.ts"],
    globalSetup: [],
  },
});
