import { isDeepStrictEqual } from "node:util";
import { written, addDays, calendarDate } from "../../src/calendar/calendarDate";

/** A value of a rules file and how it is changed a little. */
export interface RuleFigure {
  /** Where it stands: `values[3].monthlyRate`. */
  readonly place: string;
  /** The keys that lead there. */
  readonly path: readonly string[];
  readonly was: unknown;
  readonly becomes: unknown;
}

/** What is said of figures and decides none: where it was found, how sure it is, how the table is called. */
const SAID_OF_FIGURES = ["id", "title", "keyedBy", "units", "source", "confidence"];

/** Sentences and names of forms, shown to the reader as they stand: no answer is worked out from them. */
const SHOWN_AS_WRITTEN = [
  "what",
  "remedy",
  "how",
  "proof",
  "condition",
  "confirm",
  "additions",
  "interest",
  "note",
  "text",
  "unsettled",
  "requestForm",
  "paymentForm",
];
const LEFT_ALONE = [...SAID_OF_FIGURES, ...SHOWN_AS_WRITTEN];

const DAY = /^\d{4}-\d\d-\d\d$/;
const DAY_OF_YEAR = /^\d\d-\d\d$/;
const DECIMAL = /^-?\d+(\.\d+)?$/;

/** Last days of a span; for any other the next day is tried. */
const MOVED_EARLIER = /Through$/;
/** Stands where the law names no end. */
const WITHOUT_END = "9999-12-31";
const LEAP_YEAR = 2024;

/** One more in the last place that is written. */
function decimalAfter(decimal: string): string {
  const places = decimal.split(".")[1]?.length ?? 0;
  const scale = 10n ** BigInt(places);
  const units = BigInt(decimal.replace(".", "")) + 1n;
  const whole = (units / scale).toString();
  return places === 0 ? whole : `${whole}.${(units % scale).toString().padStart(places, "0")}`;
}

/** Another word that the file writes under the same key, or the word with something added. */
function anotherWord(word: string, words: readonly unknown[]): string {
  const other = words.find((each) => typeof each === "string" && each !== word);
  return typeof other === "string" ? other : `${word} x`;
}

function changedALittle(key: string, was: unknown, words: readonly unknown[]): unknown {
  if (typeof was === "boolean") return !was;
  if (typeof was === "number") return was === 12 ? 11 : was + 1;
  if (typeof was !== "string") throw new TypeError(`${String(was)} is no value of a rules file`);
  if (DAY.test(was)) return written(addDays(calendarDate(was), MOVED_EARLIER.test(key) ? -1 : 1));
  if (DAY_OF_YEAR.test(was))
    return written(addDays(calendarDate(`${String(LEAP_YEAR)}-${was}`), 1)).slice(5);
  if (DECIMAL.test(was)) return decimalAfter(was);
  return anotherWord(was, words);
}

/** Every value beneath a node, with its path. */
function* leaves(node: unknown, path: readonly string[]): Generator<readonly [string[], unknown]> {
  if (typeof node !== "object" || node === null) yield [[...path], node];
  else
    for (const [key, value] of Object.entries(node))
      if (!LEFT_ALONE.includes(key)) yield* leaves(value, [...path, key]);
}

const isPosition = (key: string): boolean => /^\d+$/.test(key);

function pathText(path: readonly string[]): string {
  return path
    .map((key) => (isPosition(key) ? `[${key}]` : `.${key}`))
    .join("")
    .replace(/^\./, "");
}

function withChange(node: unknown, path: readonly string[], becomes: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return becomes;
  const copy = (Array.isArray(node) ? [...(node as unknown[])] : { ...(node as object) }) as Record<
    string,
    unknown
  >;
  copy[key] = withChange(copy[key], rest, becomes);
  return copy;
}

/**
 * Every figure, day, word and yes or no of a rules file that could decide an answer, each changed a little: one more in the last
 * place, the next day, another word of the same column. Sentences that are only shown are left alone.
 *
 * @param file - The content of the file.
 * @returns The changes, in the order of the file.
 */
export function ruleFigures(file: unknown): readonly RuleFigure[] {
  const found = [...leaves(file, [])]
    .filter(([, value]) => value !== WITHOUT_END)
    .map(([path, was]) => ({ path, was, column: path.filter((key) => !isPosition(key)).join() }));
  return found.map(({ path, was, column }) => {
    const words = found.filter((other) => other.column === column).map((other) => other.was);
    const place = pathText(path);
    const becomes = changedALittle(path.at(-1) ?? "", was, words);
    if (isDeepStrictEqual(was, becomes)) throw new RangeError(`${place} is not changed`);
    return { place, path, was, becomes };
  });
}

/**
 * Makes changes to a file.
 *
 * @param file - The content of the file, which stays as it is.
 * @param figures - Changes of it.
 * @returns The content with all of them.
 */
export function withChanges(file: unknown, figures: readonly RuleFigure[]): unknown {
  return figures.reduce((changed, { path, becomes }) => withChange(changed, path, becomes), file);
}
