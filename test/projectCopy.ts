import { cpSync, mkdirSync, symlinkSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";

/** The folder of the project. */
export const project = fileURLToPath(new URL("..", import.meta.url));

/**
 * Copies parts of the project into a folder, the installed packages linked rather than copied.
 *
 * @param parts - Files and folders at its top.
 * @param folder - Where they go; it is made if need be.
 */
export function copyProject(parts: readonly string[], folder: string): void {
  mkdirSync(folder, { recursive: true });
  for (const part of parts)
    cpSync(path.join(project, part), path.join(folder, part), { recursive: true });
  symlinkSync(path.join(project, "node_modules"), path.join(folder, "node_modules"), "junction");
}
