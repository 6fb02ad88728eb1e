import { defineConfig } from "vitest/config";
import { common } from "../vitest.config";

const HOURS = 3_600_000;

/** The long runs: files that are also among the tests, with many more cases each. The files run one after another. */
export default defineConfig({
  test: {
    ...common,
    globalSetup: ["test/globalBuild.ts"],
    isolate: false,
    include: [
      "test/secondOpinion/**/*.test.ts",
      "test/functions/fuzz.test.ts",
      "test/demo/hostile*.test.ts",
      "test/otherLibraries/libreOffice.test.ts",
      "test/supply/freshBuild.test.ts",
    ],
    env: { RUN_LENGTH: "long" },
    fileParallelism: false,
    testTimeout: 2 * HOURS,
    reporters: ["verbose"],
  },
});
