import { describe, expect, it } from "vitest";
import { dependencyOrder } from "../../src/demo/workbook/dependencyOrder";

function ordered(edges: Record<number, number[]>, count: number) {
  return dependencyOrder(count, (node) => edges[node] ?? []);
}

describe("the order of formulas", () => {
  it("puts each formula after those it depends on", () => {
    const { order, circles } = ordered({ 0: [2], 1: [0, 3], 2: [3] }, 4);
    expect(order).toEqual([3, 2, 0, 1]);
    expect(circles).toEqual([]);
  });

  it("finds circular references, through several formulas or within one", () => {
    const { order, circles } = ordered({ 0: [1], 1: [2, 3], 2: [0], 3: [2], 4: [4], 5: [0] }, 6);
    expect(circles.map((circle) => [...circle].sort())).toEqual([[0, 1, 2, 3], [4]]);
    expect([...order].sort()).toEqual([0, 1, 2, 3, 4, 5]);
    expect(order.indexOf(5)).toBeGreaterThan(order.indexOf(0));
  });

  it("orders a chain of formulas that is longer than the call stack", () => {
    const length = 100_000;
    const { order } = dependencyOrder(length, (node) => (node + 1 < length ? [node + 1] : []));
    expect(order[0]).toBe(length - 1);
    expect(order.at(-1)).toBe(0);
  });
});
