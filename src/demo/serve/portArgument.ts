import { parseArgs } from "node:util";
import { parseNumber } from "office-addin-cli";
import { UsageError } from "../terminal/commandLine";

/** Lower ports are reserved for the system. */
const LEAST_PORT = 1024;
const LAST_PORT = 65_535;

/** The options of a command that starts a server. */
export interface ServeArguments {
  readonly port: number;
  readonly trust: boolean;
  readonly help: boolean;
}

function readPort(text: string | undefined, usual: number): number {
  const wanted = `--port must be a whole number from ${LEAST_PORT} to ${LAST_PORT}.`;
  if (text !== undefined && !/^\d+$/.test(text)) throw new UsageError(wanted);
  const port = parseNumber(text, wanted) ?? usual;
  if (port < LEAST_PORT || port > LAST_PORT) throw new UsageError(wanted);
  return port;
}

/**
 * Reads the command line of a command that starts a server.
 *
 * @param words - The words after the command.
 * @param usual - The port when the command line has none.
 * @returns The options.
 * @throws UsageError in one sentence for a command line that cannot be used.
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
