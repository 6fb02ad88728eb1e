import type { PaneList } from "../../../src/addin/list/paneList";
import type { PaneSettings } from "../../../src/addin/list/rosterAnswers";
import { practiceInParts, type PracticeFacts } from "../../../src/addin/client/troubles";

/** The facts of a practice, all rows at once. */
export function practiceFacts(list: PaneList, settings: PaneSettings): PracticeFacts {
  const parts = practiceInParts(list, settings);
  for (;;) {
    const { done, value } = parts.next();
    if (done === true) return value;
  }
}
