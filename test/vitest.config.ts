import { readdirSync, readFileSync } from "node:fs";
import { configDefaults, defineConfig } from "vitest/config";
import { runsInBrowser } from "./browser/browser";
import { runsPython } from "./otherLibraries/python";

const root = new URL("..", import.meta.url).pathname;
/** Only among the long runs, where LibreOffice is installed. */
export const LIBRE_OFFICE_TESTS = "test/otherLibraries/libreOffice.test.ts";
/** Only among the long runs, because clicks and keys of a person take minutes. */
export const TASK_TESTS = "test/browser/tasks.test.ts";
const exclude = [
  ...configDefaults.exclude,
  LIBRE_OFFICE_TESTS,
  TASK_TESTS,
  ...(runsInBrowser ? [] : ["test/browser/**"]),
  ...(runsPython ? [] : ["test/otherLibraries/**"]),
];

/** Tests that replace a module or a global. */
const changesModules = readdirSync(`${root}test`, { recursive: true, encoding: "utf8" })
  .filter((file) => /\.test\.tsx?$/.test(file))
  .map((file) => `test/${file.replaceAll("\\", "/")}`)
  .filter((file) => /\bvi\b/.test(readFileSync(`${root}${file}`, "utf8")));

/** What every run of the tests needs. */
export const common = {
  root,
  setupFiles: ["test/customFunctionsRuntime.ts"],
  // A page on a busy machine answers late. The tests wait for the answer, not for a time.
  expect: { poll: { timeout: 30_000, interval: 100 } },
  testTimeout: 120_000,
  hookTimeout: 120_000,
};

export default defineConfig({
  test: {
    root,
    globalSetup: ["test/globalBuild.ts"],
    // The tests in a browser mostly wait for its answer, so every core has work of its own.
    maxWorkers: "100%",
    projects: [
      {
        // Loading each module once saves most of the time. The only state of a module is then a cache, from which every test reads the
        // same: its key is all that the cached result depends on.
        test: {
          ...common,
          name: "shared modules",
          include: ["test/**/*.test.{ts,tsx}"],
          exclude: [...exclude, ...changesModules],
          isolate: false,
          benchmark: { include: ["test/bench/**/*.bench.ts"] },
        },
      },
      {
        test: {
          ...common,
          name: "own modules",
          include: changesModules,
          exclude,
          isolate: true,
          benchmark: { include: [] },
        },
      },
    ],
    coverage: {
      provider: "v8",
      include: ["src/calculation/**", "src/rules/**", "src/calendar/**", "src/money/**"],
    },
  },
});
