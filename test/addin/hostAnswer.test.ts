import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { watchHost, type HostScript, type HostState } from "../../src/addin/hostAnswer";

const answering = (host: unknown, after = 0): HostScript => ({
  onReady: (answered) => {
    setTimeout(() => {
      answered({ host });
    }, after);
  },
});

/** What the page is told until a host has had a minute. */
async function states(script: HostScript | undefined): Promise<HostState[]> {
  const told: HostState[] = [];
  watchHost(script, (state) => told.push(state));
  await vi.advanceTimersByTimeAsync(60_000);
  return told;
}

describe("what the page knows of its host", () => {
  beforeEach(() => vi.useFakeTimers());
  afterEach(() => vi.useRealTimers());

  it.each([
    ["Excel", answering("Excel"), ["waiting", "excel"]],
    ["a browser in which only the script runs", answering(null), ["waiting", "outside"]],
    ["no script", undefined, ["no script"]],
    ["an Excel that answers late", answering("Excel", 40_000), ["waiting", "late", "excel"]],
    ["an Excel that never answers", { onReady: () => undefined }, ["waiting", "late"]],
  ] as const)("in %s", async (_where, script, told) => {
    expect(await states(script)).toEqual(told);
  });
});
