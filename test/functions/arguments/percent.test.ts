import { describe, expect, it } from "vitest";
import {
  assumedRate,
  cushion,
  percentPaid,
  target,
} from "../../../src/functions/arguments/percent";
import { InputError } from "../../../src/functions/cells/inputError";
import { reading } from "./reading";

const targetOf = reading(target, "tax");
const cushionOf = reading(cushion, "tax");
const rateOf = reading(assumedRate, "tax");
const percentOf = reading(percentPaid, "tax");
const refused = (complaint: string): InputError => new InputError("tax", complaint);

describe("the target of a payment", () => {
  it.each([[null], [undefined], [""], [0], ["full"], [" FULL "]])(
    "is the full balance for %j",
    (cell) => {
      expect(targetOf(cell)).toBe("full");
    }
  );

  it("is just enough for the 90% test, named by its word", () => {
    expect(targetOf("Reasonable  Cause")).toBe("reasonable cause");
  });

  it.each([
    [0.95, "0.95"],
    ["95%", "0.95"],
    ["95 %", "0.95"],
    [".95", "0.95"],
    [1.1, "1.1"],
    [2, "2"],
  ])("is a percent for %j", (cell, fraction) => {
    expect(targetOf(cell).toString()).toBe(fraction);
  });

  it.each([[-0.5], [2.01], [95], ["95"], ["half"], [true], [Number.NaN], ["0%"]])(
    "is not read from %j",
    (cell) => {
      const quoted = typeof cell === "string" ? `"${cell}"` : String(cell).replace("true", "TRUE");
      expect(() => targetOf(cell)).toThrow(
        refused(
          `${quoted} is not a target. Enter full, reasonable cause, or a percent of total tax such as 95%.`
        )
      );
    }
  );
});

describe("a cushion", () => {
  it.each([
    [0.05, "0.05"],
    ["5%", "0.05"],
    ["$500", "500"],
    [0, "0"],
    ["99.9%", "0.999"],
  ])("of %j is read", (cell, amount) => {
    expect(cushionOf(cell)?.toString()).toBe(amount);
  });

  it("may be left out", () => {
    expect(cushionOf(null)).toBeUndefined();
  });

  it.each([
    ["100%", '"100%" is not a cushion. Enter a percent of total tax such as 5%, or dollars.'],
    ["some%", '"some%" is not a cushion. Enter a percent of total tax such as 5%, or dollars.'],
    [-5, "-5 is negative. Enter zero or a positive dollar amount."],
  ])("is not read from %j", (cell, complaint) => {
    expect(() => cushionOf(cell)).toThrow(refused(complaint));
  });
});

describe("the rate assumed after the last published quarter", () => {
  it.each([[null], [undefined], [""], [0]])("is left out by %j", (cell) => {
    expect(rateOf(cell)).toBeUndefined();
  });

  it.each([
    ["latest", "latest"],
    [" Latest ", "latest"],
    [0.07, "0.07"],
    ["7%", "0.07"],
    ["0.065", "0.065"],
  ])("is read from %j", (cell, rate) => {
    expect(rateOf(cell)?.toString()).toBe(rate);
  });

  it.each([
    [7, "7"],
    [1, "1"],
    [-0.07, "-0.07"],
    ["7", '"7"'],
    ["100%", '"100%"'],
    ["newest", '"newest"'],
    [true, "TRUE"],
  ])("is not read from %j", (cell, quoted) => {
    expect(() => rateOf(cell)).toThrow(
      refused(`${quoted} is not an annual rate. Enter a percent such as 7%, or the word latest.`)
    );
  });
});

describe("the percent of a tax that was paid", () => {
  it.each([
    [0, "0"],
    [0.8, "0.8"],
    ["80%", "0.8"],
    [1, "1"],
  ])("is read from %j", (cell, percent) => {
    expect(percentOf(cell)?.toString()).toBe(percent);
  });

  it("is unknown where the cell is blank", () => {
    expect(percentOf(null)).toBeUndefined();
  });

  it.each([
    [90, "90"],
    [-0.1, "-0.1"],
    ["most of it", '"most of it"'],
  ])("is not read from %j", (cell, quoted) => {
    expect(() => percentOf(cell)).toThrow(
      refused(`${quoted} is not a percent of a tax. Enter a percent such as 90%.`)
    );
  });
});
