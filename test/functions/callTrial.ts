import type { WorksheetFunction } from "../../src/host/customFunctions";
import { faultOfAnswer, faultOfThrown } from "./soundAnswer";

/** A call of a hundred cells or fewer may take so long; each further hundred may take as long again. */
const MOST_MILLISECONDS = 50;

/** Functions that answer a day, and the serials that a sheet shows as one. */
const DAYS = [
  "DUE",
  "EXTENDED",
  "PAYBY",
  "INSTALLMENT",
  "DISASTERDATE",
  "COMBATZONE",
  "KNOWNTHROUGH",
];
const [FIRST_DAY, LAST_DAY] = [61, 2_958_465];
/** Functions that answer dollars, which no argument makes negative. */
const DOLLARS = ["SHORTFALL", "SUGGEST", "INTEREST", "LATEFILE", "LATEPAY", "CHARGES"];

/** What came of a call. */
export interface CallTrial {
  readonly fault: string | undefined;
  /** Whether the answer tells more than errors and empty rows. */
  readonly tells: boolean;
  readonly milliseconds: number;
  /** Cells of the arguments and of the answer. */
  readonly cells: number;
}

function cellsOf(block: unknown): readonly unknown[] {
  try {
    return [block].flat(2);
  } catch {
    return [];
  }
}

function faultOfNumber(id: string, answer: unknown): string | undefined {
  const numbers = cellsOf(answer).filter((cell) => typeof cell === "number");
  const wrong = numbers.find((number) =>
    DAYS.includes(id)
      ? number < FIRST_DAY || number > LAST_DAY || !Number.isInteger(number)
      : DOLLARS.includes(id) && number < 0
  );
  return wrong === undefined ? undefined : `the number ${String(wrong)}`;
}

/** Measures milliseconds by the clock, or of the processor where another program took the clock's time. */
function stopwatch(): () => number {
  const begun = performance.now();
  const used = process.cpuUsage();
  return () => {
    const { user, system } = process.cpuUsage(used);
    return Math.min(performance.now() - begun, (user + system) / 1000);
  };
}

/**
 * Calls a function and looks at what comes of it.
 *
 * @param id - Its id.
 * @param call - The function.
 * @param given - Its arguments.
 * @returns What came of it.
 */
export function tryCall(id: string, call: WorksheetFunction, given: readonly unknown[]): CallTrial {
  let answer: unknown;
  let fault: string | undefined;
  const elapsed = stopwatch();
  let milliseconds: number;
  try {
    answer = call(...given);
    milliseconds = elapsed();
    fault = faultOfAnswer(answer, given) ?? faultOfNumber(id, answer);
  } catch (thrown) {
    milliseconds = elapsed();
    fault = faultOfThrown(thrown, given);
  }
  const answered = cellsOf(answer);
  return {
    fault,
    tells: answered.some((cell) => cell !== undefined && typeof cell !== "object" && cell !== ""),
    milliseconds,
    cells: given.reduce<number>((sum, block) => sum + cellsOf(block).length, answered.length),
  };
}

/**
 * Milliseconds that a call takes for each hundred cells, or for fewer. One that seems too slow is made three times more and its
 * least time counts, because a collection of the heap or another program is no fault of it.
 *
 * @param again - Makes the call again.
 * @param trial - What came of it at first.
 * @returns The least of the times.
 */
export function timeOf(again: () => CallTrial, trial: CallTrial): number {
  const hundreds = Math.max(1, trial.cells / 100);
  const isSlow = trial.milliseconds > MOST_MILLISECONDS * hundreds;
  const trials = isSlow ? [trial, again(), again(), again()] : [trial];
  return Math.min(...trials.map(({ milliseconds }) => milliseconds)) / hundreds;
}

/** What is wrong with a time that `timeOf` gives, if anything. */
export const faultOfTime = (time: number): string | undefined =>
  time > MOST_MILLISECONDS
    ? `${time.toFixed(0)} ms a hundred cells, ${String(MOST_MILLISECONDS)} are allowed`
    : undefined;
