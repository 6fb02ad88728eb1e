import { parseArgs } from "node:util";
import { parseNumber } from "office-addin-cli";
import type { BlankHabit } from "../../host/argumentMarshalling";

/** Says in one sentence what is wrong with the command line. */
export class UsageError extends Error {}

/** What the command line asks for. */
export interface CommandLine {
  readonly input: string | undefined;
  readonly output: string | undefined;
  readonly force: boolean;
  readonly all: boolean;
  readonly help: boolean;
  readonly blankHabit: BlankHabit;
  readonly width: number;
}

/** How the program is used. */
export const USAGE = `npm start                              build and calculate the sample, dist/season.xlsx
npm start -- FILE.xlsx [-o OUT.xlsx]   calculate a workbook, written to FILE.recalculated.xlsx

  -o, --output OUT.xlsx     write there instead; never over the workbook itself
      --force               write over an older file
      --blanks HABIT        hand blank cells over as zero, null (the default) or text, as builds differ
      --width COLUMNS       lines no wider than this, 100 by default
      --all                 list every error, however many
  -h, --help                show this`;

const BLANK_HABITS: Readonly<Record<string, BlankHabit>> = {
  zero: "zero",
  null: "null",
  text: "empty text",
};
const USUAL_WIDTH = 100;
const LEAST_WIDTH = 40;

function readWidth(text: string | undefined): number {
  const wanted = `--width takes a whole number of ${LEAST_WIDTH} or more.`;
  if (text !== undefined && !/^\d+$/.test(text)) throw new UsageError(wanted);
  const number = parseNumber(text, wanted) ?? USUAL_WIDTH;
  if (number < LEAST_WIDTH) throw new UsageError(wanted);
  return number;
}

function parse(words: readonly string[]) {
  try {
    return parseArgs({
      args: [...words],
      allowPositionals: true,
      options: {
        output: { type: "string", short: "o" },
        force: { type: "boolean", default: false },
        all: { type: "boolean", default: false },
        blanks: { type: "string", default: "null" },
        width: { type: "string" },
        help: { type: "boolean", short: "h", default: false },
      },
    });
  } catch (error) {
    throw new UsageError((error as Error).message);
  }
}

/** Reads the command line. */
export function readCommandLine(words: readonly string[]): CommandLine {
  const { values, positionals } = parse(words);
  if (positionals.length > 1) {
    throw new UsageError(`One workbook at a time: ${positionals.join(", ")} were given.`);
  }
  const blankHabit = BLANK_HABITS[values.blanks];
  if (blankHabit === undefined) {
    throw new UsageError(`--blanks takes zero, null or text, not ${values.blanks}.`);
  }
  return {
    input: positionals[0],
    output: values.output,
    force: values.force,
    all: values.all,
    help: values.help,
    blankHabit,
    width: readWidth(values.width),
  };
}
