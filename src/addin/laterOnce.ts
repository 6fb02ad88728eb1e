/** The least time between two calls, in milliseconds. */
const LEAST_PAUSE = 300;

/**
 * Calls once for several events that follow each other quickly.
 *
 * @param work - Called without arguments, at most a few times a second.
 * @returns To call at each event, and to end it.
 */
export function laterOnce(work: () => void): {
  readonly again: () => void;
  readonly end: () => void;
} {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  return {
    again: () => {
      waiting ??= setTimeout(() => {
        waiting = undefined;
        work();
      }, LEAST_PAUSE);
    },
    end: () => {
      clearTimeout(waiting);
    },
  };
}
