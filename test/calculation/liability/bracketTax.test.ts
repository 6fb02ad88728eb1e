import { describe, expect, it } from "vitest";
import { bracketTax } from "../../../src/calculation/liability/bracketTax";
import { usd } from "./givenTax";

const brackets = [
  { upTo: usd(100), rate: usd("0.1") },
  { upTo: usd(300), rate: usd("0.2") },
  { rate: usd("0.4") },
];
const tax = (below: number, income: number): number =>
  bracketTax(brackets, usd(below), usd(income)).toNumber();

// IRC section 1(j)(2): each rate applies to the income above the limit of the one before. Invented brackets, by hand.
describe("tax by brackets", () => {
  it.each([
    [0, 0, 0],
    [0, 50, 5],
    [0, 100, 10],
    [0, 300, 50],
    [0, 1000, 330],
    [0, -50, 0],
  ])("above %i of an income of %i is %i", (below, income, expected) => {
    expect(tax(below, income)).toBe(expected);
  });

  // IRC section 1(h)(1)(B): ordinary income uses up the lower brackets first.
  it.each([
    [50, 100, 5],
    [100, 300, 40],
    [200, 400, 60],
    [400, 500, 40],
    [500, 500, 0],
    [500, 400, 0],
  ])("above %i of an income of %i leaves the lower brackets out: %i", (below, income, expected) => {
    expect(tax(below, income)).toBe(expected);
  });
});
