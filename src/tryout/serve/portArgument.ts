import { parseArgs } from "node:util";
import { parseNumber } from "office-addin-cli";

/** Says in one sentence what is wrong with the command. */
export class WrongCommand extends Error {}

const HIGHEST_PORT = 65_535;

/**
 * Reads the port from the arguments of a command.
 *
 * @param given - The arguments: nothing, or `--port` and a number.
 * @param usual - The port where none is given.
 * @returns The port.
 * @throws WrongCommand for anything else.
 */
export function portArgument(given: readonly string[], usual: number): number {
  let port: string | undefined;
  try {
    ({
      values: { port },
    } = parseArgs({ args: [...given], options: { port: { type: "string" } } }));
  } catch {
    throw new WrongCommand("The command takes nothing but --port and a number.");
  }
  if (port === undefined) return usual;
  const wanted = `--port ${port} is no port; give a whole number from 1 to ${String(HIGHEST_PORT)}.`;
  let number: number | undefined;
  try {
    number = parseNumber(port, wanted);
  } catch {
    throw new WrongCommand(wanted);
  }
  if (number === undefined || !Number.isInteger(number) || number < 1 || number > HIGHEST_PORT)
    throw new WrongCommand(wanted);
  return number;
}
