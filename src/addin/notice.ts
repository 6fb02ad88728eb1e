import { useEffect, useRef, useState } from "preact/hooks";
import type { RefObject } from "preact";
import type { Diagnosis } from "./tools/diagnosis";
import { excelErrorSentence } from "./excel/excelErrors";
import { NotDone } from "./workbook/workbookHost";

/** What the pane says of the last action. It is the matter of the row that is selected once the action is over. */
export interface Notice {
  /** Empty for none. */
  readonly text: string;
  /** Whether the action is over and the selection that it led to is known. A notice that is not stays wherever the user goes. */
  readonly isSettled: boolean;
  /** The row that the notice belongs to; `undefined` until it is known. */
  readonly place?: string;
}

const NO_NOTICE: Notice = { text: "", isSettled: false };

/**
 * The notice that stays when a row is selected: one of another row goes, and a settled one without a row belongs to this one.
 *
 * @param notice - The notice so far.
 * @param place - The selected row.
 */
export function noticeAt(notice: Notice, place: string): Notice {
  if (!notice.isSettled) return notice;
  if (notice.place === undefined) return { ...notice, place };
  return notice.place === place ? notice : NO_NOTICE;
}

/** The status line of the pane: what it says, how actions are done, and what the part that follows the selection needs. */
export interface Notices {
  readonly notice: Notice;
  /** Takes the notice so far to another one. */
  readonly change: (next: (now: Notice) => Notice) => void;
  /** Says something that stays until the next action. */
  readonly say: (text: string) => void;
  /** Does the work and says what was done or why not. */
  readonly run: (work: () => Promise<string>) => void;
  /** Reads the selection again; nothing where nobody follows it. */
  readonly readSelection: RefObject<(() => Promise<void>) | undefined>;
}

/** The status line of the pane. */
export function useNotices(diagnosis: Diagnosis | undefined): Notices {
  const [notice, setNotice] = useState(NO_NOTICE);
  const readSelection = useRef<(() => Promise<void>) | undefined>(undefined);
  const say = (text: string): void => {
    setNotice({ text, isSettled: false });
  };
  const run = (work: () => Promise<string>): void => {
    say("Please wait …");
    const done = async (text: string): Promise<void> => {
      const said: Notice = { text, isSettled: false };
      setNotice(said);
      // An action such as a jump moves the selection itself: only a later move is the user's.
      await readSelection.current?.();
      setNotice((now) => (now === said ? { ...said, isSettled: true } : now));
    };
    work().then(done, async (thrown: unknown) => {
      const isExplained = thrown instanceof NotDone;
      if (!isExplained) diagnosis?.noteError(thrown);
      const sentence = isExplained ? thrown.message : excelErrorSentence(thrown);
      await done(sentence ?? "The change could not be made.");
      if (sentence === undefined) throw thrown;
    });
  };
  return { notice, change: setNotice, say, run, readSelection };
}

/** Lets the notice go once the user has left the row that it belongs to. */
export function useNoticePlace(
  { notice, change, readSelection }: Notices,
  place: string,
  read: (() => Promise<void>) | undefined
): void {
  useEffect(() => {
    readSelection.current = read;
  });
  useEffect(() => {
    // By the time an effect runs, there may be another notice.
    change((now) => (now === notice ? noticeAt(now, place) : now));
  }, [notice, place]);
}
