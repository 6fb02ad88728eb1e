import { defineConfig } from "vitest/config";
import tests from "../vitest.config";

const HOURS = 3_600_000;

/** The long runs: files that are among the tests as well, with many more cases each, one file after the other. */
export default defineConfig({
  test: {
    ...tests.test,
    include: [
      "test/secondOpinion/**/*.test.ts",
      "test/functions/fuzz.test.ts",
      "test/demo/hostile*.test.ts",
      "test/supply/freshBuild.test.ts",
    ],
    env: { RUN_LENGTH: "long" },
    fileParallelism: false,
    testTimeout: 2 * HOURS,
    reporters: ["verbose"],
  },
});
