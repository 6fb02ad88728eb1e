import { describe, expect, it } from "vitest";
import { rateColumn } from "../../../src/calculation/liability/rateColumn";
import {
  item,
  MAY_BE_NEGATIVE,
  RETURN_ITEMS,
} from "../../../src/calculation/liability/returnItems";
import { known, statusOf } from "./givenTax";

describe("the items of a return", () => {
  it("are named once", () => {
    expect(new Set(RETURN_ITEMS).size).toBe(RETURN_ITEMS.length);
  });

  it("may be losses only where the law knows a loss", () => {
    expect([...MAY_BE_NEGATIVE].sort()).toEqual([
      "businessProfit",
      "longTermGain",
      "otherIncome",
      "partnershipIncome",
      "rentalIncome",
      "shortTermGain",
    ]);
  });

  it("are nothing where they are not given", () => {
    expect(item(known({ wages: 5 }), "wages").toString()).toBe("5");
    expect(item(known({ wages: 5 }), "interest").toString()).toBe("0");
  });
});

// 26 U.S.C. 1(a), (j)(2)(A): a surviving spouse uses the schedule of joint returns.
describe("the column of the rate schedules", () => {
  it.each([
    ["single", "single"],
    ["joint", "joint"],
    ["separate", "separate"],
    ["head", "head"],
    ["survivor", "joint"],
  ])("of %s is %s", (status, column) => {
    expect(rateColumn(statusOf(status))).toBe(column);
  });
});
