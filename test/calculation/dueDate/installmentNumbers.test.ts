import { describe, expect, it } from "vitest";
import { installmentNumbers } from "../../../src/calculation/dueDate/installmentNumbers";

// 26 U.S.C. 6654(c)(1): four installments. Subsection (j)(2): three for a nonresident alien described in section 6072(c).
describe("the estimated tax installments", () => {
  it.each([
    ["resident", [1, 2, 3, 4]],
    ["out of country", [1, 2, 3, 4]],
    ["nonresident", [1, 2, 3]],
  ] as const)("of a %s filer are %j", (filerType, numbers) => {
    expect(installmentNumbers(filerType)).toEqual(numbers);
  });
});
