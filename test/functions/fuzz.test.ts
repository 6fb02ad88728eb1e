import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { catalog } from "../../src/functions/catalog";
import { CustomFunctionsError } from "../../src/host/customFunctions";
import { metadata, runBundle } from "../contract/builtAddIn";
import { isLongRun, runLength, tell } from "../soak/runLength";
import { argumentsOf } from "./arbitraries";
import { bytesHeld } from "./bytesHeld";
import { faultOfTime, timeOf, tryCall, type CallTrial } from "./callTrial";
import { Untouchable } from "./hostileCells";
import { revealed } from "./oddCells";
import { faultOfAnswer, faultOfThrown, LONGEST_CELL, LONGEST_SENTENCE } from "./soundAnswer";

/** Calls of each function, about 20,000 or 1,000,000 in all. */
const CALLS = Math.ceil(runLength(20_000, 1_000_000) / metadata.functions.length);
/** One call in so many must tell more than errors and blanks, so that the check is not one of refusals alone. */
const LEAST_ANSWERED = CALLS / 6;
/** After so many calls of the long run every cache is in use, and the heap is measured. */
const WARM_UP = Math.ceil(CALLS / 5);
/** Bytes by which the heap may grow from there. */
const MOST_GROWTH = 8_000_000;

describe("a worksheet function", () => {
  const functions = runBundle();

  it.each(metadata.functions.map(({ id }) => id))(
    "answers any arguments with a sound answer or an error that says what is wrong: %s",
    (id) => {
      const call = functions.get(id);
      const definition = catalog[id];
      if (!call || !definition)
        throw new RangeError(`${id} is not a function of the bundle and the catalog`);
      let calls = 0;
      let answered = 0;
      let slowest = 0;
      let heldAtFirst = 0;
      fc.assert(
        fc.property(argumentsOf(definition), (drawn) => {
          if (isLongRun && calls === WARM_UP) heldAtFirst = bytesHeld();
          calls += 1;
          const again = (): CallTrial => tryCall(id, call, revealed(drawn) as readonly unknown[]);
          const trial = again();
          const time = isLongRun ? timeOf(again, trial) : 0;
          answered += trial.tells ? 1 : 0;
          slowest = Math.max(slowest, time);
          const fault = trial.fault ?? faultOfTime(time);
          if (fault !== undefined) throw new Error(`${id} answered with ${fault}`);
        }),
        { numRuns: CALLS, seed: 4868 }
      );
      expect(answered).toBeGreaterThanOrEqual(LEAST_ANSWERED);
      if (!isLongRun) return;
      const growth = bytesHeld() - heldAtFirst;
      tell(
        `${id}: ${String(answered)} of ${String(calls)} calls answered, slowest ${slowest.toFixed(1)} ms per hundred cells, heap grown by ${(growth / 1e6).toFixed(1)} MB`
      );
      expect(growth).toBeLessThan(MOST_GROWTH);
    }
  );
});

describe("a sentence of an error", () => {
  const functions = runBundle();
  const long = "x".repeat(30_000);
  const memo = (stillNeeded: string): unknown[] => [
    [[2025]],
    [[20_000]],
    [[15_000]],
    null,
    [["2026-04-10"]],
    ...Array.from({ length: 8 }, () => null),
    [[stillNeeded]],
  ];

  it.each<[what: string, id: string, given: unknown[], message: string]>([
    ["cut short", "DUE", [[[long]]], `taxYear: "${"x".repeat(40)}…" is not a tax year`],
    ["with what is hidden made to show", "DUE", [[["20\u202e25\n"]]], 'taxYear: "20?25?" is not'],
    ["without half a character", "DUE", [[[`${"x".repeat(39)}🧾`]]], `${"x".repeat(39)}?…" is not`],
    ["without an error that is none", "DUE", [[[{ code: `#${long}` }]]], 'taxYear: "[object]" is'],
    [
      "in place of too long a text",
      "MEMO",
      memo(long),
      "stillNeeded: The text has 30,000 characters. Shorten it",
    ],
    [
      "about a long label",
      "LIABILITY",
      [2025, "single", [[long, 1]]],
      `"${"x".repeat(40)}…" is not a recognized label`,
    ],
  ])("is shown %s", (_what, id, given, message) => {
    expect(() => functions.get(id)?.(...given)).toThrow(
      expect.objectContaining({ message: expect.stringContaining(message) as string })
    );
  });

  it("of the preparer's own may be of 2,000 characters, full stops and all", () => {
    const stillNeeded = `${". ".repeat(997)}K-1...`;
    const answer = JSON.stringify(functions.get("MEMO")?.(...memo(stillNeeded)));
    expect(answer).toContain(`${". ".repeat(997)}K-1. `);
  });
});

describe("the check on answers", () => {
  const TOO_LONG = `${"x".repeat(LONGEST_SENTENCE)}.`;
  const sentence = new CustomFunctionsError("#VALUE!", "state: It is not a state.");

  it.each([
    [[[1, "a", true, ""]], []],
    [[[sentence]], []],
    [[[new CustomFunctionsError("#DIV/0!")]], [[[{ code: "#DIV/0!" }]]]],
  ])("lets %j pass", (answer, given) => {
    expect(faultOfAnswer(answer, given)).toBeUndefined();
  });

  it.each([
    [Number.NaN, "the number NaN"],
    [[], "no block"],
    [[1], "a block whose rows are no rows"],
    [[[]], "a ragged block"],
    [[[1], [1, 2]], "a ragged block"],
    [[[Number.NaN]], "the number NaN"],
    [[[null]], "the value null"],
    [[[undefined]], "the value undefined"],
    [[[new CustomFunctionsError("#DIV/0!")]], "#DIV/0! without a sentence"],
    [
      [[new CustomFunctionsError("#NUM!", "state: It is not a state.")]],
      "#NUM! with a sentence no host shows",
    ],
    [
      [[new CustomFunctionsError("#N/A", "undefined: It is missing.")]],
      "no sentence: undefined: It is missing.",
    ],
    [[[{}]], "an exception that is no error of the sheet"],
    [[["x".repeat(LONGEST_CELL + 1)]], "a text of 32768 characters"],
    [
      [[new CustomFunctionsError("#N/A", TOO_LONG)]],
      `a sentence of 251 characters: ${TOO_LONG.slice(0, -1)}`,
    ],
    [
      [[new CustomFunctionsError("#N/A", "state: \u202eEM is not a state.")]],
      'a sentence that steers: "state: \u202eEM is not a state."',
    ],
  ])("finds fault with %j", (answer, fault) => {
    expect(faultOfAnswer(answer, [])).toBe(fault);
  });

  it("finds fault with an exception that is a bug", () => {
    expect(faultOfThrown(sentence, [])).toBeUndefined();
    expect(faultOfThrown(new TypeError("a bug"), [])).toBeDefined();
    expect(faultOfThrown("text", [])).toBe("text was thrown");
    expect(faultOfThrown(new Untouchable(), [])).toBeUndefined();
  });
});

describe("the time of a call", () => {
  it("counts as slow only when it is slow each time", () => {
    const trial = (milliseconds: number, cells = 3) => ({
      fault: undefined,
      tells: true,
      milliseconds,
      cells,
    });
    expect(timeOf(() => trial(1), trial(900))).toBe(1);
    expect(timeOf(() => trial(60), trial(900))).toBe(60);
    expect(timeOf(() => trial(60, 200), trial(90, 200))).toBe(45);
    expect(faultOfTime(45)).toBeUndefined();
    expect(faultOfTime(60)).toBe("60 ms a hundred cells, 50 are allowed");
  });
});
