import type { IncomingMessage, ServerResponse } from "node:http";
import { fileURLToPath } from "node:url";
import sirv from "sirv";
import { BUILD_FOLDER } from "../../host/builtAddIn";

/** Responds to one request. */
export type Answer = (request: IncomingMessage, response: ServerResponse) => void;

/** Where the build puts the page of the demo sheet. */
export const SHEET_FOLDER = new URL("sheet/", BUILD_FOLDER);

/**
 * Responds to requests with the files of some folders, from the first folder that has the file, and with 404 for other requests.
 *
 * @param folders - The folders.
 * @param headers - Headers of every response.
 * @returns The function for a server.
 */
export function builtFiles(
  folders: readonly URL[],
  headers: Readonly<Record<string, string>>
): Answer {
  // Files are read at each request, so a new build is served at once.
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
      response.end("The file does not exist.\n");
    };
    next(0);
  };
}
