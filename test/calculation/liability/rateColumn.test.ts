import { describe, expect, it } from "vitest";
import { rateColumn } from "../../../src/calculation/liability/rateColumn";

describe("the column of the rate schedules", () => {
  // 26 U.S.C. 1(a)(2): a surviving spouse stands beside the joint return.
  it("is the joint one for a surviving spouse, and each status's own otherwise", () => {
    const columns = (["single", "joint", "separate", "head", "survivor"] as const).map(rateColumn);
    expect(columns).toEqual(["single", "joint", "separate", "head", "joint"]);
  });
});
