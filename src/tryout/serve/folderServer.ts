import { createReadStream, statSync } from "node:fs";
import { createServer as createPlainServer, type RequestListener, type Server } from "node:http";
import { createServer as createSecureServer } from "node:https";
import { extname } from "node:path";
import { fileURLToPath } from "node:url";

const KINDS: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".xml": "application/xml; charset=utf-8",
  ".png": "image/png",
};
const LOOPBACK = "127.0.0.1";

/** What to serve, and how. */
export interface FolderToServe {
  /** Folders, looked through in this order. */
  readonly folders: readonly URL[];
  /** Files that lie in no folder, by path, with their text. */
  readonly texts?: Readonly<Record<string, string>>;
  readonly headers?: Readonly<Record<string, string>>;
  /** Served over https with these where they are given. */
  readonly certificate?: { readonly key: string | Buffer; readonly cert: string | Buffer };
}

function fileIn(folders: readonly URL[], path: string): string | undefined {
  for (const folder of folders) {
    const place = new URL(path, folder);
    if (!place.href.startsWith(folder.href)) continue;
    const found = statSync(place, { throwIfNoEntry: false });
    if (found?.isFile()) return fileURLToPath(place);
  }
  return undefined;
}

/**
 * A server of files for this machine alone: it listens on the loopback address, answers reading only, and serves nothing outside
 * its folders.
 *
 * @param served - What to serve.
 * @returns The server, not yet listening.
 */
export function folderServer(served: FolderToServe): Server {
  const { folders, texts = {}, headers = {}, certificate } = served;
  const answer: RequestListener = (request, response) => {
    const { pathname } = new URL(request.url ?? "/", "http://localhost");
    const path = pathname.slice(1);
    if (request.method !== "GET" && request.method !== "HEAD") {
      response.writeHead(405).end();
      return;
    }
    const type = KINDS[extname(path)] ?? "application/octet-stream";
    const heads = { "content-type": type, "cache-control": "no-store", ...headers };
    const text = texts[path];
    if (text !== undefined) {
      response.writeHead(200, heads).end(text);
      return;
    }
    const file = fileIn(folders, path);
    if (file === undefined) {
      response.writeHead(404, { "content-type": "text/plain" }).end("There is nothing here.\n");
      return;
    }
    response.writeHead(200, heads);
    createReadStream(file).pipe(response);
  };
  return certificate ? createSecureServer(certificate, answer) : createPlainServer(answer);
}

/** How many ports are tried before giving up. */
const MOST_PORTS = 20;

/**
 * Listens on a port, or on the next that is free.
 *
 * @param server - The server.
 * @param port - The port wished for; 0 takes any.
 * @returns The port it listens on.
 * @throws Error where none of the next twenty is free.
 */
export async function listenOnFreePort(server: Server, port: number): Promise<number> {
  for (let tried = port; tried < port + MOST_PORTS; tried += 1) {
    const isListening = await new Promise<boolean>((resolve, reject) => {
      server.once("error", (error: NodeJS.ErrnoException) => {
        if (error.code === "EADDRINUSE" || error.code === "EACCES") resolve(false);
        else reject(error);
      });
      server.listen(tried, LOOPBACK, () => {
        server.removeAllListeners("error");
        resolve(true);
      });
    });
    if (!isListening) continue;
    const address = server.address();
    return typeof address === "object" && address ? address.port : tried;
  }
  throw new Error(
    `None of the ports ${String(port)} to ${String(port + MOST_PORTS - 1)} is free; name another with --port.`
  );
}
