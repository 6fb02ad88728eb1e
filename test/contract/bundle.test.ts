import { describe, expect, it } from "vitest";
import { bundle, runBundle } from "./builtAddIn";
import { answersOf } from "./calls";
import { beyond, BROUGHT_ALONG, REACHES } from "./reachOfScripts";

describe("the built bundle", () => {
  it.each(REACHES)("does not contain $pattern: $why", ({ pattern }) => {
    expect(pattern.exec(beyond(bundle, BROUGHT_ALONG))).toBeNull();
  });

  it.each(BROUGHT_ALONG)(
    "contains code of a library that never runs only in the known places: $why",
    ({ where, times }) => {
      expect(bundle.match(where)).toHaveLength(times);
    }
  );
});

describe("the search of a script", () => {
  it.each(REACHES)("finds $sample", ({ pattern, sample }) => {
    const spoilt = bundle.replace(/CustomFunctions\.associate/, `${sample};$&`);
    expect(spoilt).not.toBe(bundle);
    expect(beyond(spoilt, BROUGHT_ALONG)).toMatch(pattern);
  });
});

/** Global names for a script, with a Date whose clock is stopped at a moment. */
function worldAt(moment: string): object {
  const now = Date.parse(moment);
  class StoppedDate extends Date {
    constructor(...given: unknown[]) {
      super(...((given.length === 0 ? [now] : given) as [number]));
    }
    static override now(): number {
      return now;
    }
  }
  return { Date: StoppedDate };
}

describe("the built functions", () => {
  it("get only the stopped time from their surroundings", () => {
    const clock = `CustomFunctions.associate("NOW", () => [Date.now(), +new Date(), +new Date(5)])`;
    const now = Date.parse("1999-12-31T23:59:59Z");
    const told = runBundle(worldAt("1999-12-31T23:59:59Z"), clock).get("NOW")?.();
    expect(told).toEqual([now, now, 5]);
  });

  it("return the same at any time, without page, network or storage", () => {
    const answers = answersOf(runBundle());
    expect(answersOf(runBundle(worldAt("1999-12-31T23:59:59Z")))).toEqual(answers);
    expect(answersOf(runBundle(worldAt("2050-07-01T12:00:00Z")))).toEqual(answers);
  });

  it("return the same when they are called again", () => {
    const functions = runBundle();
    expect(answersOf(functions)).toEqual(answersOf(functions));
  });
});
