import { spawnSync } from "node:child_process";

/** How a script of the long checks ended. */
export interface LastSaid {
  readonly status: number | null;
  /** The last line it printed. */
  readonly last: string;
}

/**
 * Runs a script of the long checks.
 *
 * @param folder - The project, or a copy of it.
 * @param words - The script and its arguments.
 * @returns Its exit status and the last line it printed.
 */
export function lastSaid(folder: string, ...words: readonly string[]): LastSaid {
  const given = ["--import", "tsx", ...words];
  const { status, stdout } = spawnSync(process.execPath, given, { cwd: folder, encoding: "utf8" });
  return { status, last: stdout.trim().split("\n").at(-1) ?? "" };
}
