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
  let isAsked = false;
  let isPausing = false;
  const call = (): void => {
    isAsked = false;
    isPausing = true;
    waiting = setTimeout(pauseOver, LEAST_PAUSE);
    work();
  };
  const pauseOver = (): void => {
    isPausing = false;
    if (isAsked) call();
  };
  return {
    again: () => {
      if (!isAsked && !isPausing) waiting = setTimeout(call);
      isAsked = true;
    },
    end: () => {
      clearTimeout(waiting);
    },
  };
}
