import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { copyProject } from "../projectCopy";
import { lastSaid, type LastSaid } from "./lastSaid";

const MUTATED = "src/calculation/stateReturn/stateExtensionGranted.ts";
const MINUTES = 60_000;
const STRYKER = "node_modules/@stryker-mutator/core/bin/stryker.js";

const folder = mkdtempSync(path.join(tmpdir(), "changed-code-"));

/** The last line that the long check of the calculation prints. */
const survivors = (): LastSaid => lastSaid(folder, "test/soak/codeSurvivors.ts");

describe("the check that the tests notice every change of the calculation, for one file", () => {
  beforeAll(() => {
    copyProject(["src", "rules", "test", "package.json", "tsconfig.json"], folder);
    const config = "test/soak/stryker.config.json";
    const words = [STRYKER, "run", config, "--mutate", MUTATED, "--concurrency=1"];
    const { status, stdout } = spawnSync(process.execPath, words, {
      cwd: folder,
      encoding: "utf8",
    });
    if (status !== 0) throw new Error(stdout);
  }, 10 * MINUTES);
  afterAll(() => {
    rmSync(folder, { recursive: true, force: true });
  });

  it("finds a reason for each unnoticed change", () => {
    expect(survivors()).toEqual({
      status: 0,
      last: expect.stringMatching(
        /^\d\d changes tried, [1-9] survive for a reason, 0 without one\.$/
      ) as unknown,
    });
  });

  it("fails when a reason is missing", () => {
    writeFileSync(path.join(folder, "test", "soak", "survivors.json"), "[]");
    expect(survivors()).toEqual({
      status: 1,
      last: expect.stringMatching(
        /^\d\d changes tried, 0 survive for a reason, [1-9] without one\.$/
      ) as unknown,
    });
  });
});
