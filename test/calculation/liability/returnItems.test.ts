import { describe, expect, it } from "vitest";
import { rateColumn } from "../../../src/calculation/liability/rateColumn";
import {
  BUSINESSES,
  item,
  MAY_BE_NEGATIVE,
  RETURN_ITEMS,
  YES_OR_NO,
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

  it("are a yes or no where the law asks for a circumstance", () => {
    expect(YES_OR_NO.filter((name) => MAY_BE_NEGATIVE.includes(name))).toEqual([]);
    expect([...YES_OR_NO].sort()).toEqual(["livedApart", "specifiedService"]);
  });

  // Form 461, lines 2 and 5: Schedule C and Schedule E.
  it("are a business where Schedule C or Schedule E has them", () => {
    expect([...BUSINESSES].sort()).toEqual(["businessProfit", "partnershipIncome", "rentalIncome"]);
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
