import { describe, expect, it } from "vitest";
import { remembered } from "../../src/calendar/remembered";

/** A function that counts its calls, and the same function with its results kept. */
function counted(most: number) {
  const calls: string[] = [];
  const work = (text: string): string => {
    calls.push(text);
    if (text === "") throw new RangeError("empty");
    return text.toUpperCase();
  };
  return { calls, kept: remembered(work, (text) => text, most) };
}

describe("a function with its results kept", () => {
  it("returns what the function returns, and calls it once for each key", () => {
    const { calls, kept } = counted(10);
    expect(["a", "b", "a", "b"].map(kept)).toEqual(["A", "B", "A", "B"]);
    expect(calls).toEqual(["a", "b"]);
  });

  it("tells objects apart by identity", () => {
    const kept = remembered(
      (list: readonly number[]) => list.length,
      (list) => list,
      10
    );
    expect([kept([1]), kept([1, 2]), kept([])]).toEqual([1, 2, 0]);
  });

  it("drops all results before it keeps one more than the most", () => {
    const { calls, kept } = counted(2);
    for (const text of ["a", "b", "c", "c", "a"]) kept(text);
    expect(calls).toEqual(["a", "b", "c", "a"]);
  });

  it("does not keep an error", () => {
    const { calls, kept } = counted(10);
    expect(() => kept("")).toThrow("empty");
    expect(() => kept("")).toThrow("empty");
    expect(calls).toEqual(["", ""]);
  });
});
