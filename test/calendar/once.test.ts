import { describe, expect, it } from "vitest";
import { once } from "../../src/calendar/once";

describe("a value calculated once", () => {
  it("is calculated when it is first asked for, and not again", () => {
    let calls = 0;
    const value = once(() => ++calls);
    expect(calls).toBe(0);
    expect([value(), value()]).toEqual([1, 1]);
  });

  it("is known once it is known to be undefined", () => {
    let calls = 0;
    const value = once(() => {
      calls += 1;
      return undefined;
    });
    value();
    value();
    expect(calls).toBe(1);
  });

  it("gives the same error each time", () => {
    const value = once(() => {
      throw new RangeError("no entries");
    });
    expect(value).toThrow("no entries");
    expect(value).toThrow("no entries");
  });
});
