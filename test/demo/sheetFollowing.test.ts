import { afterEach, beforeEach, expect, it, vi } from "vitest";
import type { Grid } from "../../src/demo/sheet/grid";
import { followSelection } from "../../src/demo/sheet/gridCellChanges";

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

it("tells of a change in the grid only once no cell is edited", async () => {
  let isEditing = true;
  const events: (() => void)[] = [];
  const grid = {
    api: {
      Event: {},
      addEvent: (_name: string, told: () => void) => {
        events.push(told);
        return { dispose: () => undefined };
      },
      getActiveWorkbook: () => ({ isCellEditing: () => isEditing }),
    },
  } as unknown as Grid;
  const moved = vi.fn();
  const end = followSelection(grid, moved);
  events[0]?.();
  await vi.advanceTimersByTimeAsync(2_000);
  expect(moved).not.toHaveBeenCalled();
  isEditing = false;
  await vi.advanceTimersByTimeAsync(300);
  expect(moved).toHaveBeenCalledOnce();
  await vi.advanceTimersByTimeAsync(2_000);
  expect(moved).toHaveBeenCalledOnce();
  end();
});
