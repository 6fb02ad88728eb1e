import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";

const MINUTES = 60_000;
const project = fileURLToPath(new URL("../..", import.meta.url));

/** What the long check of the rules says in the end, and with which code, of a table held by the tests of one folder. */
function checkOf(table: string, folder: string): readonly [status: number | null, last: string] {
  const { status, stdout } = spawnSync(
    process.execPath,
    ["--import", "tsx", "test/soak/rulesMutation.ts", table, "--tests", folder],
    { cwd: project, encoding: "utf8" }
  );
  return [status, stdout.trim().split("\n").at(-1) ?? ""];
}

// The figures are 26 U.S.C. 6651(a)(2), (b)(2) and (h); the tests of the additions name the law beside each.
describe(
  "the check that each figure of the rules is held by a test",
  { timeout: 10 * MINUTES },
  () => {
    it("finds every figure of failure to pay held, but those listed with a reason", () => {
      const [status, last] = checkOf("failure-to-pay.json", "test/calculation/penalty");
      expect(last).toBe("8 figures changed; 1 not noticed, 0 of them without a reason.");
      expect(status).toBe(0);
    });

    it("finds none held by tests that do not touch them", () => {
      const [status, last] = checkOf("failure-to-pay.json", "test/calculation/interest");
      expect(last).toBe("8 figures changed; 8 not noticed, 7 of them without a reason.");
      expect(status).toBe(1);
    });
  }
);
