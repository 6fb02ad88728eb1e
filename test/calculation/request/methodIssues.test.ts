import { describe, expect, it } from "vitest";
import { methodIssues } from "../../../src/calculation/request/methodIssues";
import { givenRequest, type GivenRequest } from "./givenRequest";

const found = (given: GivenRequest) =>
  methodIssues(givenRequest(given)).map(({ check, details: about }) =>
    about === undefined ? check : `${check}: ${about}`
  );

describe("issues with the method of a request", () => {
  // Form 4868 (2025), when to file: fiscal-year filers ask on paper.
  it.each([
    ["e-file", ["fiscal year not on paper: e-file"]],
    ["electronic payment", ["fiscal year not on paper: electronic payment"]],
    ["paper", []],
    [undefined, []],
  ] as const)("of a fiscal year by %s", (method, issues) => {
    const fiscal = { taxYear: "2025-06-30", asOf: "2025-10-01" };
    expect(found({ ...fiscal, ...(method ? { method } : {}) })).toEqual(issues);
  });

  it("of a calendar year leave every method available", () => {
    for (const method of ["e-file", "electronic payment", "paper"] as const)
      expect(found({ method })).toEqual([]);
  });

  // Form 4868 (2025), paying electronically: the payment carries the request.
  it.each([
    ["electronic payment", "0", ["no electronic payment"]],
    ["electronic payment", "0.01", []],
    ["e-file", "0", []],
    ["paper", "0", []],
  ] as const)("by %s with %s dollars", (method, paidWithRequest, issues) => {
    expect(found({ method, paidWithRequest })).toEqual(issues);
  });

  // Form 4868 (2025), private delivery services; 26 U.S.C. 7502(f).
  it.each([
    ["designated", "5000", "paper", ["carrier to a P.O. box"]],
    ["designated", "0", "paper", []],
    ["not designated", "0", "paper", ["carrier not designated"]],
    ["not designated", "0.01", "paper", ["carrier to a P.O. box", "carrier not designated"]],
    ["not designated", "5000", "e-file", []],
    ["not designated", "5000", "electronic payment", []],
  ] as const)(
    "by a carrier %s with %s dollars on %s",
    (carrier, paidWithRequest, method, issues) => {
      expect(found({ carrier, paidWithRequest, method })).toEqual(issues);
    }
  );

  it("take a delivery service to mean paper if no method is given", () => {
    expect(found({ carrier: "not designated", paidWithRequest: "0" })).toEqual([
      "carrier not designated",
    ]);
    expect(found({ carrier: "designated" })).toEqual(["carrier to a P.O. box"]);
  });

  // Form 4868 (2025), line 8: living and working outside the country.
  it.each([
    [true, "resident", ["line 8 checked: resident"]],
    [true, "nonresident", ["line 8 checked: nonresident"]],
    [true, "out of country", []],
    [false, "out of country", ["line 8 not checked"]],
    [false, "resident", []],
    [false, "nonresident", []],
    [undefined, "out of country", []],
    [undefined, "resident", []],
  ] as const)("with line 8 ticked: %s, %s", (line8Checked, filerType, issues) => {
    const line8 = line8Checked === undefined ? {} : { line8Checked };
    expect(found({ filerType, ...line8 })).toEqual(issues);
  });
});
