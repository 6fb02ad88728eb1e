import { useEffect, useState } from "preact/hooks";
import type { RosterHeading } from "../../functions/season/rosterColumns";
import { USUAL_ANSWERS, writtenBefore, type WrittenBefore } from "./listColumns";
import type { OwnHeading } from "./rosterAnswers";
import { NotDone, type SelectedList, type WorkbookHost } from "../workbook/workbookHost";

/** Rows up to which a list is read again whenever a cell changes. */
const MOST_FOLLOWED_ROWS = 2_000;

/** The list that the tool works on, and what the user has chosen for it. */
export interface UsedList {
  /** `undefined` until the user has chosen one. */
  readonly list: SelectedList | undefined;
  /** The meanings chosen for headings. */
  readonly own: readonly OwnHeading[];
  readonly setOwn: (own: readonly OwnHeading[]) => void;
  /** The answers to be written. */
  readonly answers: readonly RosterHeading[];
  readonly setAnswers: (answers: readonly RosterHeading[]) => void;
  /** Reads the selected list, and returns what this tool wrote beside it before. */
  readonly read: () => Promise<WrittenBefore | undefined>;
  /** Reads the list again, if a cell of it is selected. */
  readonly readAgain: () => Promise<void>;
  readonly close: () => void;
}

const isSameList = (one: SelectedList, other: SelectedList): boolean =>
  one.sheet === other.sheet &&
  one.table === other.table &&
  one.headingRow === other.headingRow &&
  one.firstColumn === other.firstColumn;

/** The list that the user has chosen. A short one is read again whenever one of its cells changes. */
export function useUsedList(workbook: WorkbookHost): UsedList {
  const [list, setList] = useState<SelectedList>();
  const [own, setOwn] = useState<readonly OwnHeading[]>([]);
  const [answers, setAnswers] = useState<readonly RosterHeading[]>(USUAL_ANSWERS);
  const readAgain = async (): Promise<void> => {
    try {
      const now = await workbook.selectedList?.();
      setList((before) => (before && now && isSameList(before, now) ? now : before));
    } catch (thrown) {
      // The selected cell is not in a list: the one that was read stays.
      if (!(thrown instanceof NotDone)) throw thrown;
    }
  };
  const isFollowed = list !== undefined && list.rows.length <= MOST_FOLLOWED_ROWS;
  useEffect(() => {
    if (!isFollowed) return undefined;
    return workbook.followSelection?.(() => {
      readAgain().catch(() => undefined);
    });
  }, [isFollowed, workbook]);
  return {
    list,
    own,
    setOwn,
    answers,
    setAnswers,
    read: async () => {
      const found = await workbook.selectedList?.();
      const before = found && writtenBefore(found);
      setList(found);
      setOwn(before?.own ?? []);
      setAnswers(before?.answers ?? USUAL_ANSWERS);
      return before;
    },
    readAgain,
    close: () => {
      setList(undefined);
    },
  };
}
