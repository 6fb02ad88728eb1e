import { useEffect, useMemo, useState } from "preact/hooks";
import type { PaneSettings } from "../list/rosterAnswers";
import { practiceInParts, type PracticeFacts } from "./troubles";
import { whenIdle } from "../whenIdle";
import { NotDone } from "../workbook/workbookHost";
import type { PaneList } from "../list/paneList";

/** How long the list rests before the whole practice is calculated, in milliseconds. */
const REST = 400;

/**
 * The facts of the whole practice, calculated in parts while the page is idle, once the list has not changed for a moment. So neither
 * the selection nor typing waits for it.
 *
 * @param list - The last list that was read.
 * @param settings - Default tax year, as-of date, assumed rate.
 */
export function usePractice(
  list: PaneList | undefined,
  settings: PaneSettings | undefined
): PracticeFacts | undefined {
  const [practice, setPractice] = useState<PracticeFacts>();
  const content = useMemo(
    () => list && JSON.stringify([list.sheet, list.headings, list.rows, list.headingRow, list.own]),
    [list]
  );
  useEffect(() => {
    if (!list || !settings) return undefined;
    const parts = practiceInParts(list, settings);
    let cancel: () => void;
    const next = (): void => {
      try {
        const { done, value } = parts.next();
        if (done === true) setPractice(value);
        else cancel = whenIdle(next);
      } catch (thrown) {
        // The view of the client says why the list cannot be read.
        if (!(thrown instanceof NotDone)) throw thrown;
        setPractice(undefined);
      }
    };
    const waiting = setTimeout(next, REST);
    cancel = () => {
      clearTimeout(waiting);
    };
    return () => {
      cancel();
    };
    // The list is another object at each reading, even with the same content.
  }, [content, settings]);
  return practice;
}
