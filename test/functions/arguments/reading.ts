import {
  readArgument,
  type ArgumentKind,
  type Earlier,
} from "../../../src/functions/arguments/argumentKind";
import { InputError } from "../../../src/functions/cells/inputError";

/** Reads cells as an argument of a kind. */
export const reading =
  <Value>(kind: ArgumentKind<Value>, name: string) =>
  (cell?: unknown, earlier?: Earlier): Value =>
    readArgument(kind, name, cell, earlier);

/** The sentence with which bad input is refused. */
export function sentenceOf(read: () => unknown): string {
  try {
    read();
  } catch (thrown) {
    if (thrown instanceof InputError) return thrown.message;
    throw thrown;
  }
  throw new Error("The input was accepted.");
}
