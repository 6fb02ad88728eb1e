import type { PaneList } from "../../src/addin/paneList";
import type { PaneSettings } from "../../src/addin/rosterAnswers";
import { practiceInParts, type PracticeFacts } from "../../src/addin/troubles";

/** The facts of a practice, all rows at once. */
export function practiceFacts(list: PaneList, settings: PaneSettings): PracticeFacts {
  const parts = practiceInParts(list, settings);
  for (;;) {
    const { done, value } = parts.next();
    if (done === true) return value;
  }
}
