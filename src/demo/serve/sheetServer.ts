import { createServer, type Server } from "node:http";
import { BUILD_FOLDER } from "../../host/builtAddIn";
import { hostPageScript } from "../../host/hostPageScript";
import { builtFiles, SHEET_FOLDER } from "./builtFiles";

/** The address of the demo sheet, which only this machine can reach. */
export const LOOPBACK = "127.0.0.1";

const HEADERS = {
  "cache-control": "no-store",
  "cross-origin-resource-policy": "same-origin",
  "referrer-policy": "no-referrer",
  "x-content-type-options": "nosniff",
};

/** Turns on numbers with a format of their own, as newer builds of Excel have them. */
const OFFER_FORMATTED_NUMBERS = "globalThis.standInPage.offerFormattedNumbers();\n";

/**
 * Serves the demo sheet and the built add-in.
 *
 * @param port - A free port; 0 for any.
 * @returns The server, when it is listening.
 */
export async function serveSheet(port: number): Promise<Server> {
  const files = builtFiles([SHEET_FOLDER, BUILD_FOLDER], HEADERS);
  const server = createServer((request, response) => {
    if (request.url !== "/hostPage.js") {
      files(request, response);
      return;
    }
    response.writeHead(200, { ...HEADERS, "content-type": "text/javascript; charset=utf-8" });
    response.end(hostPageScript() + OFFER_FORMATTED_NUMBERS);
  });
  await new Promise<void>((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, LOOPBACK, resolve);
  });
  return server;
}
