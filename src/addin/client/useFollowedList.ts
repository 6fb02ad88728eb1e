import { useEffect, useRef, useState } from "preact/hooks";
import type { RefObject } from "preact";
import { followList, type FollowedList, type ListFollower } from "./followList";
import type { WorkbookHost } from "../workbook/workbookHost";

/** The list around the selected cell, and how to read it again. */
export interface FollowedPane extends FollowedList {
  readonly read: () => Promise<void>;
}

const NOTHING: FollowedList = { list: undefined, problem: "" };

/**
 * Follows the selection while the pane can be seen. The whole guide counts, not only this part of it: a part that is scrolled out of
 * sight must not go on showing the client of an earlier selection.
 *
 * @param workbook - `undefined` if no workbook is open.
 * @param pane - The element of the pane.
 */
export function useFollowedList(
  workbook: WorkbookHost | undefined,
  pane: RefObject<HTMLElement | null>
): FollowedPane {
  const [followed, setFollowed] = useState(NOTHING);
  const follower = useRef<ListFollower>(undefined);
  useEffect(() => {
    if (!workbook?.selectedList) return undefined;
    const following = followList(workbook, setFollowed);
    follower.current = following;
    const watched = new IntersectionObserver((entries) => {
      following.setVisible(entries.some(({ isIntersecting }) => isIntersecting));
    });
    const seen = pane.current?.closest(".guide") ?? pane.current;
    if (seen) watched.observe(seen);
    return () => {
      watched.disconnect();
      following.stop();
      follower.current = undefined;
    };
  }, [workbook, pane]);
  const read = async (): Promise<void> => {
    await follower.current?.read();
  };
  return { ...followed, read };
}
