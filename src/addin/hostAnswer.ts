/** The part of the host's script that is used here. */
export interface HostScript {
  onReady(answered: (answer: { readonly host: unknown }) => void): unknown;
}

/**
 * Calls back once a host has said that the page runs inside it. A page opened in a browser, or without the host's script, is
 * never called back and never fails.
 *
 * @param script - The host's script, or nothing when it did not load.
 * @param inHost - What to do inside a host.
 */
export function whenInHost(script: HostScript | undefined, inHost: () => void): void {
  script?.onReady(({ host }) => {
    if (host) inHost();
  });
}
