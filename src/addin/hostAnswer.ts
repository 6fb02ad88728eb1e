/** The part of the host's script that is used here. */
export interface HostScript {
  onReady(answered: (answer: { readonly host: unknown }) => void): unknown;
}

/** How long the page waits for a host, in milliseconds. */
const LONGEST_WAIT = 3_000;

/**
 * Whether the page runs inside a host. It does not if it is opened in a browser, if the host's script did not load, or if the host
 * does not answer.
 *
 * @param script - The host's script, or `undefined` when it did not load.
 * @returns Whether a host answered.
 */
export function hostOf(script: HostScript | undefined): Promise<boolean> {
  if (!script) return Promise.resolve(false);
  return new Promise((resolve) => {
    const waiting = setTimeout(() => {
      resolve(false);
    }, LONGEST_WAIT);
    script.onReady(({ host }) => {
      clearTimeout(waiting);
      resolve(Boolean(host));
    });
  });
}
