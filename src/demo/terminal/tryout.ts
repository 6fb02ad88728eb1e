import { fileURLToPath } from "node:url";
import { Workbook } from "@cj-tech-master/excelts";
import { BUILD_FOLDER, hostOfBuiltAddIn, NotBuilt } from "../../host/builtAddIn";
import { type CommandLine, readCommandLine, USAGE, UsageError } from "./commandLine";
import { outputBeside, refuseOutput, writeOutput } from "./outputFile";
import { NotAWorkbook } from "../workbook/workbookBytes";
import { isComplete } from "../workbook/recalculationReport";
import { recalculationSummary } from "./recalculationSummary";
import { CAUTIONS } from "../season/readMeSheet";
import { seasonReport } from "./seasonReport";
import { seasonWorkbook } from "../season/seasonWorkbook";
import type { StandInHost } from "../../host/standInHost";
import { printable } from "./textTable";
import { recalculateFile } from "../workbook/recalculateFile";
import { recalculateWorkbook } from "../workbook/workbook";

/** Everything calculated. */
export const DONE = 0;
/** Something was not calculated, or the add-in itself failed. */
export const INCOMPLETE = 1;
/** Nothing was done: the command line, the file or the build is not fit. */
export const REFUSED = 2;

/** Where the program says what it has to say, and how it comes by the add-in. */
export interface Surroundings {
  print(line: string): void;
  complain(sentence: string): void;
  host(options: Pick<CommandLine, "blankHabit">): StandInHost;
}

async function trySample(options: CommandLine, surroundings: Surroundings): Promise<number> {
  const output = options.output ?? fileURLToPath(new URL("season.xlsx", BUILD_FOLDER));
  const force = options.force || options.output === undefined;
  const host = surroundings.host(options);
  refuseOutput(output, undefined, force);
  const { bytes, report } = await recalculateWorkbook(seasonWorkbook(), host);
  const workbook = new Workbook();
  await workbook.xlsx.load(bytes);
  writeOutput(output, bytes, force);
  for (const line of seasonReport(workbook, options.width)) surroundings.print(line);
  surroundings.print("");
  for (const line of recalculationSummary(report, options.all)) surroundings.print(line);
  surroundings.print(`Written to ${printable(output)}`);
  for (const sentence of CAUTIONS) surroundings.print(sentence);
  return isComplete(report) ? DONE : INCOMPLETE;
}

async function tryFile(
  input: string,
  options: CommandLine,
  surroundings: Surroundings
): Promise<number> {
  const output = options.output ?? outputBeside(input);
  refuseOutput(output, input, options.force);
  const host = surroundings.host(options);
  const { bytes, report } = await recalculateFile(input, host);
  writeOutput(output, bytes, options.force);
  for (const line of recalculationSummary(report, options.all)) surroundings.print(line);
  surroundings.print(`Written to ${printable(output)}`);
  return isComplete(report) ? DONE : INCOMPLETE;
}

/** Runs the program on the words of a command line and gives its exit code. */
export async function tryOut(
  words: readonly string[],
  surroundings: Surroundings
): Promise<number> {
  try {
    const options = readCommandLine(words);
    if (options.help) {
      surroundings.print(USAGE);
      return DONE;
    }
    return options.input === undefined
      ? await trySample(options, surroundings)
      : await tryFile(options.input, options, surroundings);
  } catch (error) {
    const isSentence =
      error instanceof UsageError || error instanceof NotAWorkbook || error instanceof NotBuilt;
    if (!isSentence) throw error;
    surroundings.complain(printable(error.message));
    return REFUSED;
  }
}

/** The surroundings of the program when it is started from the command line. */
export function commandSurroundings(complain: (sentence: string) => void): Surroundings {
  return {
    print: (line) => process.stdout.write(`${line}\n`),
    complain,
    host: ({ blankHabit }) => hostOfBuiltAddIn(blankHabit),
  };
}
