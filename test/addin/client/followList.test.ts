import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { followList, type FollowedList } from "../../../src/addin/client/followList";
import {
  NotDone,
  type SelectedList,
  type WorkbookHost,
} from "../../../src/addin/workbook/workbookHost";
import { sampleList } from "../list/sampleList";

/** A workbook whose selection moves when the test says so. */
function workbookWith(read: () => Promise<SelectedList>, hasEvents = true) {
  let moved: () => void = () => undefined;
  const ended = vi.fn();
  const selectedList = vi.fn(read);
  const events: Partial<WorkbookHost> = hasEvents
    ? {
        followSelection: (told) => {
          moved = told;
          return ended;
        },
      }
    : {};
  const workbook: WorkbookHost = {
    selectedCell: () => Promise.reject(new NotDone("not used")),
    putFormula: () => Promise.reject(new NotDone("not used")),
    addSheet: () => Promise.reject(new NotDone("not used")),
    selectedList,
    ...events,
  };
  return {
    workbook,
    selectedList,
    ended,
    move: () => {
      moved();
    },
  };
}

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});
const rest = () => vi.advanceTimersByTimeAsync(1000);

describe("the list around the selection", () => {
  it("is read at first and after a move, once for many moves", async () => {
    const { workbook, selectedList, move } = workbookWith(() => Promise.resolve(sampleList));
    const told: FollowedList[] = [];
    followList(workbook, (read) => told.push(read));
    await rest();
    expect(told).toEqual([{ list: sampleList, problem: "" }]);
    for (let count = 0; count < 20; count++) move();
    expect(selectedList).toHaveBeenCalledTimes(1);
    await rest();
    expect(selectedList).toHaveBeenCalledTimes(2);
  });

  it("is not read while the pane cannot be seen, and once after that", async () => {
    const { workbook, selectedList, move } = workbookWith(() => Promise.resolve(sampleList));
    const follower = followList(workbook, () => undefined);
    await rest();
    follower.setVisible(false);
    move();
    await rest();
    move();
    await rest();
    expect(selectedList).toHaveBeenCalledTimes(1);
    follower.setVisible(true);
    await rest();
    expect(selectedList).toHaveBeenCalledTimes(2);
    follower.setVisible(true);
    await rest();
    expect(selectedList).toHaveBeenCalledTimes(2);
  });

  it("is read again if the selection moved during a reading, never twice at a time", async () => {
    let running = 0;
    let most = 0;
    const { workbook, selectedList, move } = workbookWith(async () => {
      running += 1;
      most = Math.max(most, running);
      await new Promise((resolve) => setTimeout(resolve, 400));
      running -= 1;
      return sampleList;
    });
    const follower = followList(workbook, () => undefined);
    await vi.advanceTimersByTimeAsync(200);
    move();
    const asked = follower.read();
    await rest();
    await asked;
    await rest();
    expect(selectedList.mock.calls.length).toBeGreaterThanOrEqual(2);
    expect(most).toBe(1);
  });

  it("is told with the sentence if there is none", async () => {
    const told: FollowedList[] = [];
    const none = workbookWith(() => Promise.reject(new NotDone("The selected cell is empty.")));
    followList(none.workbook, (read) => told.push(read));
    const broken = workbookWith(() => Promise.reject(new TypeError("no such thing")));
    followList(broken.workbook, (read) => told.push(read));
    await rest();
    expect(told).toEqual([
      { list: undefined, problem: "The selected cell is empty." },
      {
        list: undefined,
        problem: "The selected cells could not be read. Select them again.",
      },
    ]);
  });

  it("is read only on request where the host has no selection events", async () => {
    const { workbook, selectedList } = workbookWith(() => Promise.resolve(sampleList), false);
    const told: FollowedList[] = [];
    const follower = followList(workbook, (read) => told.push(read));
    await rest();
    follower.setVisible(true);
    await rest();
    expect(selectedList).not.toHaveBeenCalled();
    await follower.read();
    expect(told).toEqual([{ list: sampleList, problem: "" }]);
  });

  it("is no longer told once the pane is closed", async () => {
    const { workbook, ended, move } = workbookWith(() => Promise.resolve(sampleList));
    const told = vi.fn();
    const follower = followList(workbook, told);
    follower.stop();
    move();
    await rest();
    expect(told).not.toHaveBeenCalled();
    expect(ended).toHaveBeenCalledOnce();
  });
});
