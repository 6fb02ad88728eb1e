import { execFileSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { metadata } from "./contract/builtAddIn";
import { calls } from "./contract/calls";

const script = fileURLToPath(new URL("contract/answersInZone.ts", import.meta.url));

interface Answered {
  readonly timeZone: string;
  readonly answers: readonly string[];
}

function answeredIn(zone: string): Answered {
  const environment = { ...process.env, TZ: zone };
  const arguments_ = ["--import", "tsx", script];
  const written = execFileSync(process.execPath, arguments_, {
    env: environment,
    encoding: "utf8",
  });
  return JSON.parse(written) as Answered;
}

describe("the results of the built functions", () => {
  const inUtc = answeredIn("UTC");

  it("include every function, and most are not errors", () => {
    expect(new Set(calls.map(([id]) => id))).toEqual(
      new Set(metadata.functions.map(({ id }) => id))
    );
    expect(inUtc.answers).toHaveLength(calls.length);
    const refused = inUtc.answers.filter((answer) => answer.startsWith('{"code"'));
    expect(refused.length).toBeLessThan(calls.length / 4);
  });

  it.each(["America/Los_Angeles", "America/New_York", "Pacific/Auckland"])(
    "are the same in %s as in UTC",
    (zone) => {
      const { timeZone, answers } = answeredIn(zone);
      expect(timeZone).toBe(zone);
      expect(answers).toEqual(inUtc.answers);
    }
  );
});
