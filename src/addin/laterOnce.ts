/** The least time between two calls, in milliseconds. */
const LEAST_PAUSE = 300;

/**
 * Calls at once, and then once for several events that follow each other quickly.
 *
 * @param work - Called without arguments, after the work that reported the event and at most a few times a second.
 * @returns To call at each event, and to end it.
 */
export function laterOnce(work: () => void): {
  readonly again: () => void;
  readonly end: () => void;
} {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  let called = Number.NEGATIVE_INFINITY;
  return {
    again: () => {
      waiting ??= setTimeout(
        () => {
          waiting = undefined;
          called = performance.now();
          work();
        },
        Math.max(0, called + LEAST_PAUSE - performance.now())
      );
    },
    end: () => {
      clearTimeout(waiting);
    },
  };
}
