import { describe, expect, it } from "vitest";
import { Corners } from "./corners";

describe("the count of special cases", () => {
  it("counts the cases of each kind and names the kinds with too few", () => {
    const corners = new Corners<number>({
      even: (one) => one % 2 === 0,
      "above two": (one) => one > 2,
      never: () => false,
    });
    for (const one of [1, 2, 3, 4]) corners.look(one);
    expect(corners.lines().map((line) => line.trim())).toEqual([
      "2  even",
      "2  above two",
      "0  never",
    ]);
    expect(corners.missed()).toEqual(["never"]);
    expect(corners.missed(3)).toEqual(["even", "above two", "never"]);
  });
});
