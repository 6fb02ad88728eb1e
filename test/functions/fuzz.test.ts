import { describe, expect, it } from "vitest";
import { BuiltError, metadata, runBundle } from "../contract/builtAddIn";
import { chance, RandomArguments } from "./randomArguments";
import { faultOfAnswer, faultOfThrown } from "./soundAnswer";

const CALLS = 100_000;
const SEED = 4868;
/** Milliseconds; far more than it takes, so that a slow machine fails nothing. */
const PATIENCE = 600_000;

/** Functions that answer a day, and the serials that a sheet shows as one. */
const DAYS = ["DUE", "EXTENDED", "PAYBY", "INSTALLMENT", "RELIEF", "COMBATZONE", "KNOWNTHROUGH"];
const [FIRST_DAY, LAST_DAY] = [61, 2_958_465];
/** Functions that answer dollars, which no argument makes negative. */
const DOLLARS = ["SHORTFALL", "SUGGEST", "INTEREST", "LATEFILE", "LATEPAY", "CHARGES"];

const cellsOf = (answer: unknown): unknown[] => [answer].flat(2);

function faultOfNumber(id: string, answer: unknown): string | undefined {
  const numbers = cellsOf(answer).filter((cell) => typeof cell === "number");
  const wrong = numbers.find((number) =>
    DAYS.includes(id)
      ? number < FIRST_DAY || number > LAST_DAY || !Number.isInteger(number)
      : DOLLARS.includes(id) && number < 0
  );
  return wrong === undefined ? undefined : `the number ${String(wrong)}`;
}

/** Whether an answer tells more than errors and empty rows. */
const tells = (answer: unknown): boolean =>
  cellsOf(answer).some((cell) => typeof cell !== "object" && cell !== "");

/** Arguments as one would type them again. */
function written(given: unknown): string {
  return JSON.stringify(given, (_key, value: unknown) =>
    value === undefined || (typeof value === "number" && !Number.isFinite(value))
      ? `(${String(value)})`
      : value
  );
}

describe("a worksheet function", () => {
  const functions = runBundle();

  it(
    "answers any arguments with a sound block or an error that says what is wrong",
    { timeout: PATIENCE },
    () => {
      const draw = chance(SEED);
      const random = new RandomArguments(draw);
      const faults: string[] = [];
      const answered = new Map<string, number>();
      for (let call = 0; call < CALLS; call++) {
        const told = metadata.functions[call % metadata.functions.length];
        const worksheetFunction = told && functions.get(told.id);
        if (!worksheetFunction) throw new RangeError("a function is not associated");
        const given = random.list(told.parameters.map(({ name }) => name));
        let fault: string | undefined;
        try {
          const answer = worksheetFunction(...given);
          fault = faultOfAnswer(answer, given) ?? faultOfNumber(told.id, answer);
          if (tells(answer)) answered.set(told.id, (answered.get(told.id) ?? 0) + 1);
        } catch (thrown) {
          fault = faultOfThrown(thrown, given);
        }
        if (fault !== undefined && faults.length < 20)
          faults.push(`${told.id} ${written(given)}: ${fault}`);
      }
      expect(faults).toEqual([]);
      const enough = CALLS / metadata.functions.length / 5;
      const seldom = [...functions.keys()].filter((id) => (answered.get(id) ?? 0) < enough);
      expect(seldom).toEqual([]);
    }
  );
});

describe("the check on answers", () => {
  const sentence = new BuiltError("#VALUE!", "state: is no state");

  it.each([
    [[[1, "a", true, ""]], []],
    [[[sentence]], []],
    [[[new BuiltError("#DIV/0!")]], [[[{ code: "#DIV/0!" }]]]],
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
    [[[new BuiltError("#DIV/0!")]], "#DIV/0! without a sentence"],
    [[[new BuiltError("#NUM!", "state: is no state")]], "#NUM! with a sentence no host shows"],
    [[[new BuiltError("#N/A", "undefined: is missing")]], "no sentence: undefined: is missing"],
    [[[{}]], "an exception that is no error of the sheet"],
  ])("finds fault with %j", (answer, fault) => {
    expect(faultOfAnswer(answer, [])).toBe(fault);
  });

  it("finds fault with an exception that is a bug", () => {
    expect(faultOfThrown(sentence, [])).toBeUndefined();
    expect(faultOfThrown(new TypeError("a bug"), [])).toBeDefined();
    expect(faultOfThrown("text", [])).toBe("text was thrown");
  });
});
