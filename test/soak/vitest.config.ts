import { spawnSync } from "node:child_process";
import { defineConfig } from "vitest/config";
import { common, LIBRE_OFFICE_TESTS, TASK_TESTS } from "../vitest.config";

const hasLibreOffice = spawnSync("soffice", ["--version"], { stdio: "ignore" }).status === 0;
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
      "test/browser/clientList.test.ts",
      TASK_TESTS,
      ...(hasLibreOffice ? [LIBRE_OFFICE_TESTS] : []),
      "test/supply/freshBuild.test.ts",
    ],
    env: { RUN_LENGTH: "long" },
    fileParallelism: false,
    testTimeout: 2 * HOURS,
    reporters: ["verbose"],
  },
});
