import { describe, expect, it } from "vitest";
import { project } from "../projectCopy";
import { lastSaid, type LastSaid } from "./lastSaid";

const MINUTES = 60_000;

/** What the long check of the rules says in the end of a table held by the tests of one folder. */
const checkOf = (table: string, folder: string): LastSaid =>
  lastSaid(project, "test/soak/rulesMutation.ts", table, "--tests", folder);

// The figures are 26 U.S.C. 6651(a)(2), (b)(2) and (h); the tests of the additions name the law beside each.
describe(
  "the check that each figure of the rules is held by a test",
  { timeout: 10 * MINUTES },
  () => {
    it("finds every figure of failure to pay held, but those listed with a reason", () => {
      const { status, last } = checkOf("failure-to-pay.json", "test/calculation/penalty");
      expect(last).toBe("8 figures changed; 1 not noticed, 0 of them without a reason.");
      expect(status).toBe(0);
    });

    it("finds none held by tests that do not touch them", () => {
      const { status, last } = checkOf("failure-to-pay.json", "test/calculation/estimatedTax");
      expect(last).toBe("8 figures changed; 8 not noticed, 7 of them without a reason.");
      expect(status).toBe(1);
    });
  }
);
