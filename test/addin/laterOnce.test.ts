import { afterEach, beforeEach, expect, it, vi } from "vitest";
import { laterOnce } from "../../src/addin/laterOnce";

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

it("calls at once after a pause, and at most every 300 milliseconds", async () => {
  const work = vi.fn();
  const { again } = laterOnce(work);
  again();
  expect(work).not.toHaveBeenCalled();
  await vi.advanceTimersByTimeAsync(0);
  expect(work).toHaveBeenCalledTimes(1);
  for (let count = 0; count < 10; count += 1) {
    again();
    await vi.advanceTimersByTimeAsync(29);
  }
  expect(work).toHaveBeenCalledTimes(1);
  await vi.advanceTimersByTimeAsync(300);
  expect(work).toHaveBeenCalledTimes(2);
  await vi.advanceTimersByTimeAsync(300);
  expect(work).toHaveBeenCalledTimes(2);
  again();
  await vi.advanceTimersByTimeAsync(0);
  expect(work).toHaveBeenCalledTimes(3);
});

it("does not call after its end", async () => {
  const work = vi.fn();
  const { again, end } = laterOnce(work);
  again();
  end();
  await vi.advanceTimersByTimeAsync(1_000);
  expect(work).not.toHaveBeenCalled();
});
