/** The part of the host's script that is used here. */
export interface HostScript {
  onReady(answered: (answer: { readonly host: unknown }) => void): unknown;
}

/** How long a page waits for a host that may not be there, in milliseconds. */
const PATIENCE = 3_000;

/**
 * Whether the page runs inside a host. A page opened in a browser, or without the host's script, is outside; so is one whose host
 * does not answer.
 *
 * @param script - The host's script, or nothing when it did not load.
 * @returns Whether a host answered.
 */
export function hostOf(script: HostScript | undefined): Promise<boolean> {
  if (!script) return Promise.resolve(false);
  return new Promise((resolve) => {
    const waiting = setTimeout(() => {
      resolve(false);
    }, PATIENCE);
    script.onReady(({ host }) => {
      clearTimeout(waiting);
      resolve(Boolean(host));
    });
  });
}
