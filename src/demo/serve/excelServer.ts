import { createServer, type Server } from "node:https";
import { BUILD_FOLDER } from "../../host/builtAddIn";
import { builtFiles } from "./builtFiles";
import { LOOPBACK } from "./sheetServer";

const HEADERS = {
  // Excel on the web reads functions.json from another origin.
  "access-control-allow-origin": "*",
  // Not "no-store": Excel does not show an icon that may not be cached.
  "cache-control": "max-age=60",
};

/** The certificate and key for https. */
export interface ServerCertificate {
  readonly cert: Buffer | string;
  readonly key: Buffer | string;
}

/**
 * Serves the built add-in over https.
 *
 * @param port - A free port; 0 for any.
 * @param certificate - The certificate and key.
 * @returns The server, when it is listening.
 */
export async function serveAddIn(port: number, certificate: ServerCertificate): Promise<Server> {
  const files = builtFiles([BUILD_FOLDER], HEADERS);
  const { cert, key } = certificate;
  const server = createServer({ cert, key }, (request, response) => {
    if (request.method === "OPTIONS") response.writeHead(204, HEADERS).end();
    else files(request, response);
  });
  await new Promise<void>((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, LOOPBACK, resolve);
  });
  return server;
}
