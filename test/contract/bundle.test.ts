import { describe, expect, it } from "vitest";
import { bundle, runBundle } from "./builtAddIn";
import { answersOf } from "./calls";

const MOST_BYTES = 300_000;

/** What a preparer's security reviewer would look for, and why it has no place in the bundle. */
const FORBIDDEN: readonly (readonly [pattern: RegExp, why: string])[] = [
  [/\beval\s*\(/, "code made from text, which a content security policy refuses"],
  [/\bFunction\s*\(/, "code made from text under another name"],
  [/\bimport\s*\(/, "code loaded later"],
  [/\bimportScripts\b/, "code loaded later in a worker"],
  [/\bfetch\s*\(/, "network"],
  [/\bXMLHttpRequest\b/, "network"],
  [/\bWebSocket\b/, "network"],
  [/\bEventSource\b/, "network"],
  [/\bsendBeacon\b/, "network"],
  [/https?:\/\//, "an address to go to"],
  [/\blocalStorage\b/, "storage of client data"],
  [/\bsessionStorage\b/, "storage of client data"],
  [/\bindexedDB\b/, "storage of client data"],
  [/\bOfficeRuntime\b/, "storage or dialogs of the host"],
  [/\bdocument\.(cookie|createElement|write)\b/, "storage or loading by way of the page"],
  [/\bnew\s+Date\b(?!\s*\()/, "the clock"],
  [/\bnew\s+Date\s*\(\s*\)/, "the clock"],
  [/(?<![.\w])Date\s*\(\s*\)/, "the clock"],
  [/\bperformance\b/, "the clock"],
  [/\bset(Timeout|Interval)\b/, "answers that come later"],
];

/** What libraries bring along and never run here: the text around it, and how often it may stand there. */
const UNUSED: readonly (readonly [pattern: RegExp, where: RegExp, why: string])[] = [
  [
    /\bDate\.now\b/g,
    /0===arguments\.length\?Date\.now\(\)/g,
    "@date-fns/utc: a UTCDate without arguments, which src/calendar never makes",
  ],
  [/\bMath\.random\b/g, /1e7\*Math\.random\(\)/g, "decimal.js: Decimal.random, never called"],
];

describe("the built bundle", () => {
  it.each(FORBIDDEN)("holds no %s: %s", (pattern) => {
    expect(bundle.match(pattern)).toBeNull();
  });

  it.each(UNUSED)("holds %s only where a library brings it along", (pattern, where) => {
    expect(bundle.match(where)).toHaveLength(1);
    expect(bundle.match(pattern)).toHaveLength(1);
  });

  it("stays small", () => {
    expect(Buffer.byteLength(bundle)).toBeLessThanOrEqual(MOST_BYTES);
  });
});

/** A world whose clock stands still at a moment, and where nothing is left to chance. */
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
  it("could not tell the time from their surroundings", () => {
    const clock = `CustomFunctions.associate("NOW", () => [Date.now(), +new Date(), +new Date(5)])`;
    const now = Date.parse("1999-12-31T23:59:59Z");
    const told = runBundle(worldAt("1999-12-31T23:59:59Z"), clock).get("NOW")?.();
    expect(told).toEqual([now, now, 5]);
  });

  it("answer the same whatever the clock says, without page, network or storage", () => {
    const answers = answersOf(runBundle());
    expect(answersOf(runBundle(worldAt("1999-12-31T23:59:59Z")))).toEqual(answers);
    expect(answersOf(runBundle(worldAt("2050-07-01T12:00:00Z")))).toEqual(answers);
  });

  it("answer the same when they are asked again", () => {
    const functions = runBundle();
    expect(answersOf(functions)).toEqual(answersOf(functions));
  });
});
