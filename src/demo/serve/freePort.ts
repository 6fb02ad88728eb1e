import getPort, { portNumbers } from "get-port";

const LAST_PORT = 65_535;
const MOST_TRIED = 100;

/** A port to serve on, and a sentence when it is not the requested one. */
export interface FreePort {
  readonly port: number;
  readonly sentence: string | undefined;
}

/**
 * The requested port, or the next free one.
 *
 * @param wanted - The requested port.
 * @param host - The address of the server.
 * @returns The port, which is free now.
 */
export async function freePort(wanted: number, host: string): Promise<FreePort> {
  const last = Math.min(wanted + MOST_TRIED, LAST_PORT);
  const port = await getPort({ host, port: portNumbers(wanted, last) });
  const sentence =
    port === wanted ? undefined : `Port ${wanted} is in use. The server uses port ${port} instead.`;
  return { port, sentence };
}
