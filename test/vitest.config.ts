import { configDefaults, defineConfig } from "vitest/config";
import { runsInBrowser } from "./browser/browser";

export default defineConfig({
  test: {
    root: new URL("..", import.meta.url).pathname,
    include: ["test/**/*.test.ts"],
    exclude: [...configDefaults.exclude, ...(runsInBrowser ? [] : ["test/browser/**"])],
    globalSetup: ["test/globalBuild.ts"],
    setupFiles: ["test/customFunctionsRuntime.ts"],
    // The modules hold no state that a test could leave behind but caches; loading them once spares most of the time.
    isolate: false,
    // A page on a loaded machine answers when it can: what is waited for is the answer, not a time.
    expect: { poll: { timeout: 30_000, interval: 100 } },
    testTimeout: 120_000,
    hookTimeout: 120_000,
    benchmark: { include: ["test/bench/**/*.bench.ts"] },
    coverage: {
      provider: "v8",
      include: ["src/calculation/**", "src/rules/**", "src/calendar/**", "src/money/**"],
    },
  },
});
