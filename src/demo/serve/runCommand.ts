import { logErrorMessage } from "office-addin-cli";
import { NotBuilt } from "../../host/builtAddIn";
import { UsageError } from "../terminal/commandLine";
import { REFUSED } from "../terminal/exitCode";

/**
 * Runs a command. An error of the user is printed in one sentence, and the exit code says that nothing was done.
 *
 * @param command - The command.
 */
export async function runCommand(command: () => Promise<void>): Promise<void> {
  try {
    await command();
  } catch (error) {
    const isSentence = error instanceof UsageError || error instanceof NotBuilt;
    logErrorMessage(isSentence ? error.message : error);
    process.exitCode = REFUSED;
  }
}

/** Prints a line. */
export function print(line: string): void {
  process.stdout.write(`${line}\n`);
}
