import { parseArgs } from "node:util";
import { parseNumber } from "office-addin-cli";
import type { BlankHabit } from "../../host/argumentMarshalling";

/** Thrown for a command line that cannot be used, with one sentence for the user. */
export class UsageError extends Error {}

/** What the command line requests. */
export interface CommandLine {
  readonly input: string | undefined;
  readonly output: string | undefined;
  readonly force: boolean;
  readonly all: boolean;
  readonly help: boolean;
  readonly blankHabit: BlankHabit;
  readonly width: number;
  /** Clients of the sample who get a request sheet and a letter of their own: `all`, or a client's name. */
  readonly requests: string | undefined;
}

/** The text of the option --help. */
export const USAGE = `npm start                              Calculate the sample and save dist/season.xlsx.
npm start -- FILE.xlsx [-o OUT.xlsx]   Calculate a workbook and save FILE.recalculated.xlsx.

  -o, --output OUT.xlsx     Save under this name. The workbook itself is never changed.
      --force               Replace an existing file.
      --blanks VALUE        Pass blank cells as zero, null (default) or text. Builds of Excel differ.
      --requests CLIENT     Add a request sheet and a letter for a client of the sample, or for all.
      --width COLUMNS       Print lines of at most this width (default 100).
      --all                 List all errors.
  -h, --help                Show this help.`;

const BLANK_HABITS: Readonly<Record<string, BlankHabit>> = {
  zero: "zero",
  null: "null",
  text: "empty text",
};
const USUAL_WIDTH = 100;
const LEAST_WIDTH = 40;

function readWidth(text: string | undefined): number {
  const wanted = `--width must be a whole number, ${LEAST_WIDTH} or more.`;
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
        requests: { type: "string" },
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
    throw new UsageError(
      `Enter one workbook only. The command line has ${positionals.join(", ")}.`
    );
  }
  const blankHabit = BLANK_HABITS[values.blanks];
  if (blankHabit === undefined) {
    throw new UsageError(`--blanks must be zero, null or text, not ${values.blanks}.`);
  }
  if (values.requests !== undefined && positionals.length > 0) {
    throw new UsageError("--requests adds sheets to the sample. Use it without a workbook.");
  }
  return {
    input: positionals[0],
    output: values.output,
    force: values.force,
    all: values.all,
    help: values.help,
    blankHabit,
    width: readWidth(values.width),
    requests: values.requests,
  };
}
