import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { hostOf, type HostScript } from "../../src/addin/hostAnswer";

const answering = (host: unknown): HostScript => ({
  onReady: (answered) => {
    answered({ host });
  },
});

describe("whether a host answers", () => {
  beforeEach(() => vi.useFakeTimers());
  afterEach(() => vi.useRealTimers());

  it.each([
    ["a workbook program", answering("Excel"), true],
    ["a browser in which only the script runs", answering(null), false],
    ["no script", undefined, false],
  ])("%s", async (_where, script, answer) => {
    expect(await hostOf(script)).toBe(answer);
  });

  it("does not wait forever for one that never answers", async () => {
    const waiting = hostOf({ onReady: () => undefined });
    await vi.advanceTimersByTimeAsync(3_000);
    expect(await waiting).toBe(false);
  });
});
