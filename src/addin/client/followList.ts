import { excelErrorSentence } from "../excel/excelErrors";
import { NotDone, type SelectedList, type WorkbookHost } from "../workbook/workbookHost";

/** What is known of the list around the selected cell. */
export interface FollowedList {
  /** `undefined` if no list is selected. */
  readonly list: SelectedList | undefined;
  /** Why there is none; empty before the first reading. */
  readonly problem: string;
}

/** Reads the list around the selected cell whenever the selection moves and the pane can be seen. */
export interface ListFollower {
  /** Reads at once. */
  readonly read: () => Promise<void>;
  /** Reads what was missed once the pane can be seen again. */
  readonly setVisible: (isVisible: boolean) => void;
  readonly stop: () => void;
}

async function readList(workbook: WorkbookHost): Promise<FollowedList> {
  try {
    return { list: await workbook.selectedList?.(), problem: "" };
  } catch (thrown) {
    const problem =
      thrown instanceof NotDone
        ? thrown.message
        : (excelErrorSentence(thrown) ??
          "The selected cells could not be read. Select them again.");
    return { list: undefined, problem };
  }
}

/**
 * Follows the selection of a workbook. There is one reading at a time, and none while the pane cannot be seen.
 *
 * @param workbook - The workbook.
 * @param told - Receives each reading.
 * @returns The follower; a host without selection events is read only on request.
 */
export function followList(
  workbook: WorkbookHost,
  told: (read: FollowedList) => void
): ListFollower {
  let isVisible = true;
  let isStale = true;
  let isStopped = false;
  let reading: Promise<void> | undefined;
  let waiting: ReturnType<typeof setTimeout> | undefined;

  const read = async (): Promise<void> => {
    isStale = false;
    const found = await readList(workbook);
    if (!isStopped) told(found);
  };
  const readOnce = (): Promise<void> => {
    reading ??= read().finally(() => {
      reading = undefined;
      if (isStale && isVisible) soon();
    });
    return reading;
  };
  const soon = (): void => {
    if (isStopped || waiting !== undefined) return;
    waiting = setTimeout(() => {
      waiting = undefined;
      if (isVisible && isStale) void readOnce();
    });
  };
  const moved = (): void => {
    isStale = true;
    if (isVisible) soon();
  };
  const end = workbook.followSelection?.(moved);
  if (end) moved();
  return {
    read: async () => {
      if (reading) await reading;
      isStale = true;
      await readOnce();
    },
    setVisible: (isSeen) => {
      isVisible = isSeen;
      if (isSeen && isStale && end) soon();
    },
    stop: () => {
      isStopped = true;
      clearTimeout(waiting);
      end?.();
    },
  };
}
