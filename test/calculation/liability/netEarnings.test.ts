import { describe, expect, it } from "vitest";
import { netEarnings } from "../../../src/calculation/liability/netEarnings";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { rulebook } from "../../../src/rules/rulebook";
import { usd } from "../given";

const of = (profit: number): string =>
  netEarnings(calendarTaxYear(2025), usd(profit), rulebook).toFixed();

describe("net earnings from self-employment", () => {
  // 26 U.S.C. 1402(a)(12): the profit less 7.65% of it.
  it("are 92.35% of the profit", () => {
    expect(of(10_000)).toBe("9235");
  });

  // 26 U.S.C. 1402(b)(2): not less than $400. 433 x 0.9235 = 399.8755, 434 x 0.9235 = 400.799.
  it("are none below $400", () => {
    expect(of(433)).toBe("0");
    expect(of(434)).toBe("400.799");
  });

  it("are none of a loss", () => {
    expect(of(-5_000)).toBe("0");
  });

  it("are refused for a tax year that the table does not cover", () => {
    expect(() => netEarnings(calendarTaxYear(2021), usd(1_000), rulebook)).toThrow(
      "There is no figure for 1/1/2021. The table begins on 1/1/2022"
    );
  });
});
