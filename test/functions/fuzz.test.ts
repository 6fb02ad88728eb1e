import { describe, expect, it } from "vitest";
import { CustomFunctionsError } from "../../src/host/customFunctions";
import { metadata, runBundle, type FunctionMetadata } from "../contract/builtAddIn";
import { isLongRun, runLength, tell } from "../soak/runLength";
import { bytesHeld } from "./bytesHeld";
import { faultOfTime, timeOf, tryCall, type CallTrial } from "./callTrial";
import { Untouchable, UNTOUCHABLES } from "./hostileCells";
import { chance, RandomArguments } from "./randomArguments";
import { smallestArguments } from "./smallestArguments";
import { faultOfAnswer, faultOfThrown, LONGEST_CELL, LONGEST_SENTENCE } from "./soundAnswer";
import { written } from "./writtenArguments";

const CALLS = runLength(20_000, 1_000_000);
const SEED = 4868;
const MOST_FAULTS = 20;
/** After so many calls of the long run what is kept of calls is in use, and the heap is measured. */
const WARM_UP = CALLS / 5;
/** Bytes by which the heap may grow from there; eight a call would be too many. */
const MOST_GROWTH = 8_000_000;

interface Tally {
  answered: number;
  refused: number;
  slowest: number;
}

const megabytes = (bytes: number): string => `${(bytes / 1e6).toFixed(1)} MB`;

function tellAll(tallies: ReadonlyMap<string, Tally>, seconds: number): void {
  tell(`${CALLS.toLocaleString("en-US")} calls in ${seconds.toFixed(0)} s`);
  for (const [id, { answered, refused, slowest }] of tallies) {
    const counts = `${String(answered)} answered, ${String(refused)} refused`;
    tell(`${id}: ${counts}, slowest ${slowest.toFixed(1)} ms a hundred cells`);
  }
}

describe("a worksheet function", () => {
  const functions = runBundle();
  const random = new RandomArguments(chance(SEED));

  function check(id: string, given: readonly unknown[], tally: Tally): string | undefined {
    const call = functions.get(id);
    if (!call) throw new RangeError(`${id} is not associated`);
    const look = (some: readonly unknown[]): { trial: CallTrial; time: number; fault?: string } => {
      const again = (): CallTrial => tryCall(id, call, some);
      const trial = again();
      const time = isLongRun ? timeOf(again, trial) : 0;
      const fault = trial.fault ?? faultOfTime(time);
      return { trial, time, ...(fault === undefined ? {} : { fault }) };
    };
    const { trial, time, fault } = look(given);
    tally.answered += trial.tells ? 1 : 0;
    tally.refused += trial.tells ? 0 : 1;
    tally.slowest = Math.max(tally.slowest, time);
    if (fault === undefined) return undefined;
    const smallest = smallestArguments(given, (some) => look(some).fault !== undefined);
    return `${id} ${written(smallest)}: ${look(smallest).fault ?? fault}`;
  }

  it("answers any arguments with a sound block or an error that says what is wrong", () => {
    const faults: string[] = [];
    const tallies = new Map(
      metadata.functions.map(({ id }) => [id, { answered: 0, refused: 0, slowest: 0 }])
    );
    const begun = performance.now();
    let heldAtFirst = 0;
    for (let call = 0; call < CALLS && faults.length < MOST_FAULTS; call++) {
      if (isLongRun && call === WARM_UP) heldAtFirst = bytesHeld();
      const { id, parameters } = metadata.functions[
        call % metadata.functions.length
      ] as FunctionMetadata;
      const given = random.list(parameters.map(({ name }) => name));
      const fault = check(id, given, tallies.get(id) as Tally);
      if (fault !== undefined) faults.push(fault);
    }
    tellAll(tallies, (performance.now() - begun) / 1000);
    expect(faults).toEqual([]);
    const enough = CALLS / metadata.functions.length / 6;
    const seldom = [...tallies].filter(([, { answered }]) => answered < enough);
    expect(seldom).toEqual([]);
    if (isLongRun) {
      const heldAtLast = bytesHeld();
      tell(`heap ${megabytes(heldAtFirst)} after a fifth, ${megabytes(heldAtLast)} at the end`);
      expect(heldAtLast - heldAtFirst).toBeLessThan(MOST_GROWTH);
    }
  });
});

describe("a sentence", () => {
  const functions = runBundle();
  const long = "x".repeat(30_000);
  const memo = (missing: string): unknown[] => [
    ...[[[2025]], [[20_000]], [[15_000]], null, null, null, null],
    [[missing]],
  ];

  it.each<[what: string, id: string, given: unknown[], message: string]>([
    ["cut short", "DUE", [[[long]]], `taxYear: "${"x".repeat(40)}…" is not a tax year`],
    ["with what is hidden made to show", "DUE", [[["20\u202e25\n"]]], 'taxYear: "20?25?" is not'],
    ["without half a character", "DUE", [[[`${"x".repeat(39)}🧾`]]], `${"x".repeat(39)}?…" is not`],
    ["without an error that is none", "DUE", [[[{ code: `#${long}` }]]], 'taxYear: "[object]" is'],
    ["instead of too long a text", "MEMO", memo(long), "missing: has 30000 characters; say it"],
    [
      "about a long label",
      "LIABILITY",
      [2025, "single", [[long, 1]]],
      `"${"x".repeat(40)}…" is no`,
    ],
  ])("is told %s", (_what, id, given, message) => {
    expect(() => functions.get(id)?.(...given)).toThrow(
      expect.objectContaining({ message: expect.stringContaining(message) as string })
    );
  });

  it("of the preparer's own may be of 2,000 characters, full stops and all", () => {
    const missing = `${". ".repeat(997)}K-1...`;
    const answer = JSON.stringify(functions.get("MEMO")?.(...memo(missing)));
    expect(answer).toContain(`${". ".repeat(997)}K-1. `);
  });
});

describe("the check on answers", () => {
  const sentence = new CustomFunctionsError("#VALUE!", "state: is no state");

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
      [[new CustomFunctionsError("#NUM!", "state: is no state")]],
      "#NUM! with a sentence no host shows",
    ],
    [
      [[new CustomFunctionsError("#N/A", "undefined: is missing")]],
      "no sentence: undefined: is missing",
    ],
    [[[{}]], "an exception that is no error of the sheet"],
    [[["x".repeat(LONGEST_CELL + 1)]], "a text of 32768 characters"],
    [
      [[new CustomFunctionsError("#N/A", "x".repeat(LONGEST_SENTENCE + 1))]],
      `a sentence of 251 characters: ${"x".repeat(LONGEST_SENTENCE)}`,
    ],
    [
      [[new CustomFunctionsError("#N/A", "state: \u202eEM is no state")]],
      'a sentence that steers: "state: \u202eEM is no state"',
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

describe("a call that fails", () => {
  it("is made as small as it fails", () => {
    const holds = (given: readonly unknown[]): boolean => [given].flat(3).includes("bad");
    const given = [[[1], [2], [3]], "x", [[4], ["bad"], [5]], 6];
    expect(smallestArguments(given, holds)).toEqual([null, null, [["bad"]], null]);
    expect(smallestArguments([[["bad", 1]], 2], holds)).toEqual([[["bad"]], null]);
    const both = (some: readonly unknown[]): boolean => holds(some) && some[1] === 2;
    expect(smallestArguments([[["bad"]], 2, 3], both)).toEqual([[["bad"]], 2, null]);
  });

  it("is told as JSON, whatever its arguments are", () => {
    expect(written([[[1, "a", true]], null, undefined])).toBe('[[[1,"a",true]]]');
    const odd = [-0, Number.NaN, undefined, 5n, Symbol("s"), "\u202e", { a: [] }, 1];
    expect(JSON.parse(written(odd))).toEqual([
      ...[{ $: "-0" }, { $: "number NaN" }, { $: "undefined" }, { $: "bigint 5" }],
      ...[{ $: "symbol Symbol(s)" }, "\u202e", { a: [] }, 1],
    ]);
    expect(written(["\u202e", "x".repeat(1000), 1])).toMatch(
      /^\["\\u202e",\{"\$text":"x{20}","\$length":1000\},1\]$/
    );
    expect(written(UNTOUCHABLES)).toBe(
      '[{"$":"cannot be read"},{"$":"cannot be read"},{"$":"cannot be read"}]'
    );
  });

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
