import { cpSync, mkdirSync, symlinkSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";

/** The folder of the project. */
export const project = fileURLToPath(new URL("..", import.meta.url));

/**
 * Copies parts of the project into a folder, with a link to the installed packages.
 *
 * @param parts - Names of files and folders at the top level of the project.
 * @param folder - The folder to copy to. It is created if it does not exist.
 */
export function copyProject(parts: readonly string[], folder: string): void {
  mkdirSync(folder, { recursive: true });
  for (const part of parts)
    cpSync(path.join(project, part), path.join(folder, part), { recursive: true });
  symlinkSync(path.join(project, "node_modules"), path.join(folder, "node_modules"), "junction");
}
