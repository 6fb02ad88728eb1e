/** The longest time that work waits for a page that is not idle, in milliseconds. */
const LONGEST_WAIT = 1000;

/**
 * Does work when the page has nothing else to do, such as a key to handle. Where the browser cannot tell, it is done after what waits
 * already.
 *
 * @param work - Called once.
 * @returns Cancels it.
 */
export function whenIdle(work: () => void): () => void {
  if ("requestIdleCallback" in globalThis) {
    const asked = requestIdleCallback(work, { timeout: LONGEST_WAIT });
    return () => {
      cancelIdleCallback(asked);
    };
  }
  const waiting = setTimeout(work);
  return () => {
    clearTimeout(waiting);
  };
}
