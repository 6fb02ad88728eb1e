import { fork } from "node:child_process";
import { fileURLToPath } from "node:url";
import type { BlankHabit } from "../../host/argumentMarshalling";
import type { RecalculatedWorkbook } from "../workbook/workbook";
import { NotAWorkbook } from "../workbook/workbookFile";

/** Seconds after which a calculation is ended. */
const LONGEST = 60;
const PROGRAM = fileURLToPath(new URL("recalculationProcess.ts", import.meta.url));

interface Message {
  readonly outcome?: RecalculatedWorkbook;
  readonly sentence?: string;
}

/**
 * Recalculates a workbook file in a process of its own, which is ended when it takes too long.
 *
 * @param path - The file.
 * @param blankHabit - How the host passes blank cells.
 * @param longest - The most seconds.
 * @param program - The program of that process.
 * @throws NotAWorkbook with the reason in one sentence.
 */
export async function recalculateInTime(
  path: string,
  blankHabit: BlankHabit,
  longest = LONGEST,
  program = PROGRAM
): Promise<RecalculatedWorkbook> {
  const child = fork(program, [path, blankHabit], {
    execArgv: ["--import", "tsx"],
    serialization: "advanced",
  });
  let timer: NodeJS.Timeout | undefined;
  try {
    const { outcome, sentence } = await new Promise<Message>((resolve) => {
      const end = (reason: string): void => {
        resolve({ sentence: `${path} could not be calculated: ${reason}.` });
      };
      child.once("message", resolve);
      child.once("exit", () => {
        end("its calculation ended without a result");
      });
      timer = setTimeout(() => {
        end(`it takes more than ${String(longest)} seconds. Split it into smaller workbooks`);
      }, longest * 1_000);
    });
    if (outcome === undefined) throw new NotAWorkbook(sentence);
    return outcome;
  } finally {
    clearTimeout(timer);
    child.kill("SIGKILL");
  }
}
