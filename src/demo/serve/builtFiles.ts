import type { IncomingMessage, ServerResponse } from "node:http";
import { fileURLToPath } from "node:url";
import sirv from "sirv";
import { BUILD_FOLDER } from "../../host/builtAddIn";

/** Answers one request. */
export type Answer = (request: IncomingMessage, response: ServerResponse) => void;

/** Where the build puts the page of the demo sheet. */
export const SHEET_FOLDER = new URL("sheet/", BUILD_FOLDER);

/**
 * Answers requests with files of folders, the first folder that holds one first, and 404 for what none holds.
 *
 * @param folders - The folders.
 * @param headers - What every answer says besides.
 * @returns The answer for a server.
 */
export function builtFiles(
  folders: readonly URL[],
  headers: Readonly<Record<string, string>>
): Answer {
  // Read from disk at each request: a build that runs meanwhile is served at once.
  const found = folders.map((folder) => sirv(fileURLToPath(folder), { dev: true }));
  return (request, response) => {
    for (const [name, value] of Object.entries(headers)) response.setHeader(name, value);
    const next = (index: number): void => {
      const files = found[index];
      if (files) {
        files(request, response, () => {
          next(index + 1);
        });
        return;
      }
      response.writeHead(404, { "content-type": "text/plain; charset=utf-8" });
      response.end("There is no such file here.\n");
    };
    next(0);
  };
}
