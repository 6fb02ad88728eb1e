import { parseArgs } from "node:util";
import { parseNumber } from "office-addin-cli";
import { UsageError } from "../terminal/commandLine";

/** Ports below this one belong to the system. */
const LEAST_PORT = 1024;
const LAST_PORT = 65_535;

/** What a serving command is asked for. */
export interface ServeArguments {
  readonly port: number;
  readonly trust: boolean;
  readonly help: boolean;
}

function readPort(text: string | undefined, usual: number): number {
  const wanted = `--port takes a whole number from ${LEAST_PORT} to ${LAST_PORT}.`;
  if (text !== undefined && !/^\d+$/.test(text)) throw new UsageError(wanted);
  const port = parseNumber(text, wanted) ?? usual;
  if (port < LEAST_PORT || port > LAST_PORT) throw new UsageError(wanted);
  return port;
}

/**
 * Reads the command line of a command that serves something.
 *
 * @param words - The words after the command.
 * @param usual - The port when none is asked for.
 * @returns What is asked for.
 * @throws UsageError in one sentence for words that cannot be used.
 */
export function readServeArguments(words: readonly string[], usual: number): ServeArguments {
  try {
    const { values } = parseArgs({
      args: [...words],
      options: {
        port: { type: "string" },
        trust: { type: "boolean", default: false },
        help: { type: "boolean", short: "h", default: false },
      },
    });
    return { port: readPort(values.port, usual), trust: values.trust, help: values.help };
  } catch (error) {
    throw error instanceof UsageError ? error : new UsageError((error as Error).message);
  }
}
