import { fileURLToPath } from "node:url";
import { Workbook } from "@cj-tech-master/excelts";
import { BUILD_FOLDER, hostOfBuiltAddIn, NotBuilt } from "../../host/builtAddIn";
import type { StandInHost } from "../../host/standInHost";
import { currentExcelFile } from "../season/currentExcelFile";
import type { SampleClient } from "../season/clients";
import { CAUTIONS } from "../season/readMeSheet";
import { seasonWorkbook } from "../season/seasonWorkbook";
import { isComplete, type RecalculationReport } from "../workbook/recalculationReport";
import { type RecalculatedWorkbook, recalculateWorkbook } from "../workbook/workbook";
import { NotAWorkbook } from "../workbook/workbookFile";
import { type CommandLine, readCommandLine, USAGE, UsageError } from "./commandLine";
import { DONE, INCOMPLETE, REFUSED } from "./exitCode";
import { outputBeside, refuseOutput, writeOutput } from "./outputFile";
import { recalculateInTime } from "./recalculateInTime";
import { recalculationSummary } from "./recalculationSummary";
import { sampleClients } from "./sampleClients";
import { seasonReport } from "./seasonReport";
import { printable } from "./textTable";

/** How the command prints, where its host comes from, and how it calculates a file. */
export interface Surroundings {
  readonly print: (line: string) => void;
  readonly complain: (sentence: string) => void;
  readonly host: (options: Pick<CommandLine, "blankHabit">) => StandInHost;
  readonly recalculate: (
    path: string,
    options: Pick<CommandLine, "blankHabit">
  ) => RecalculatedWorkbook | Promise<RecalculatedWorkbook>;
}

function printSummary(
  report: RecalculationReport,
  output: string,
  { all }: CommandLine,
  { print }: Surroundings
): number {
  for (const line of recalculationSummary(report, all)) print(line);
  print(`Saved as ${printable(output)}`);
  return isComplete(report) ? DONE : INCOMPLETE;
}

/** The clients whose request sheets and letters are added to the sample. */
function requestsOf(clients: readonly SampleClient[], wanted: string | undefined): string[] {
  if (wanted === undefined) return [];
  const names = clients.map((client) => String(client.get("Client")));
  if (wanted.toLowerCase() === "all") return names;
  const found = names.find((name) => name.toLowerCase() === wanted.toLowerCase());
  if (found === undefined) {
    throw new UsageError(
      `--requests must be all or a client of the sample, such as ${names[0] ?? ""}, not ${wanted}.`
    );
  }
  return [found];
}

async function calculateSample(options: CommandLine, surroundings: Surroundings): Promise<number> {
  const output = options.output ?? fileURLToPath(new URL("season.xlsx", BUILD_FOLDER));
  const force = options.force || options.output === undefined;
  const host = surroundings.host(options);
  refuseOutput(output, undefined, force);
  const clients = sampleClients();
  const made = seasonWorkbook(clients, requestsOf(clients, options.requests));
  const recalculated = await recalculateWorkbook(made, host);
  const { report } = recalculated;
  const bytes = currentExcelFile(recalculated.bytes);
  const workbook = new Workbook();
  await workbook.xlsx.load(bytes);
  writeOutput(output, bytes, force);
  for (const line of seasonReport(workbook, options.width)) surroundings.print(line);
  surroundings.print("");
  const code = printSummary(report, output, options, surroundings);
  for (const sentence of CAUTIONS) surroundings.print(sentence);
  return code;
}

async function calculateFile(
  input: string,
  options: CommandLine,
  surroundings: Surroundings
): Promise<number> {
  const output = options.output ?? outputBeside(input);
  refuseOutput(output, input, options.force);
  const { bytes, report } = await surroundings.recalculate(input, options);
  writeOutput(output, bytes, options.force);
  return printSummary(report, output, options, surroundings);
}

/**
 * Runs the command `npm start`: calculates the sample, or a workbook.
 *
 * @param words - The words of the command line.
 * @param surroundings - How the command prints, where its host comes from, and how it calculates a file.
 * @returns The exit code.
 */
export async function demoCommand(
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
      ? await calculateSample(options, surroundings)
      : await calculateFile(options.input, options, surroundings);
  } catch (error) {
    const isSentence =
      error instanceof UsageError || error instanceof NotAWorkbook || error instanceof NotBuilt;
    if (!isSentence) throw error;
    surroundings.complain(printable(error.message));
    return REFUSED;
  }
}

/** The surroundings of the command when it is started from the command line. */
export function commandSurroundings(complain: (sentence: string) => void): Surroundings {
  return {
    print: (line) => process.stdout.write(`${line}\n`),
    complain,
    host: ({ blankHabit }) => hostOfBuiltAddIn(blankHabit),
    recalculate: (path, { blankHabit }) => recalculateInTime(path, blankHabit),
  };
}
