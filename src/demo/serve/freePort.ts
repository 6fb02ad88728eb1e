import getPort, { portNumbers } from "get-port";

const LAST_PORT = 65_535;
const MOST_TRIED = 100;

/** A port to serve on, with a sentence when it is not the one asked for. */
export interface FreePort {
  readonly port: number;
  readonly sentence: string | undefined;
}

/**
 * The port asked for, or the next free one after it.
 *
 * @param wanted - The port asked for.
 * @param host - Where it is to be served.
 * @returns The port, free at this moment.
 */
export async function freePort(wanted: number, host: string): Promise<FreePort> {
  const last = Math.min(wanted + MOST_TRIED, LAST_PORT);
  const port = await getPort({ host, port: portNumbers(wanted, last) });
  const sentence =
    port === wanted ? undefined : `Port ${wanted} is taken; ${port} is used instead.`;
  return { port, sentence };
}
