import { describe, expect, it } from "vitest";
import {
  abroadDateOf,
  exchangeBy,
  refundBy,
} from "../../../src/functions/dueDate/claimsAndExchanges";
import { afterTable, badInput, beforeTable, down, inCell, serial } from "../sheet";

describe("EXCHANGEBY", () => {
  // 26 U.S.C. 1031(a)(3)(B), computed: 180 days after November 10, 2025, or April 15, 2026.
  it("answers a column, with and without the extension", () => {
    expect(exchangeBy([["11/10/2025"]], [[2025]], down("yes", "no"))).toEqual(
      ["2026-05-09", "2026-04-15"].map((day) => [serial(day)])
    );
  });

  it("takes the due date of the client", () => {
    expect(inCell(exchangeBy, "11/10/2025", 2025, "", "", "out of country")).toBe(
      serial("2026-05-09")
    );
    expect(inCell(exchangeBy, "12/20/2025", 2025, "", "", "out of country")).toBe(
      serial("2026-06-15")
    );
    expect(inCell(exchangeBy, "11/10/2025", 2025, "", "", "", "4/1/2026", "5/1/2026")).toBe(
      serial("2026-05-01")
    );
  });

  it("takes a sale on any date of the year, a 52/53-week year to its own end", () => {
    expect(inCell(exchangeBy, "12/31/2025", 2025, "yes")).toBe(serial("2026-06-29"));
    expect(inCell(exchangeBy, "1/2/2026", "1/3/2026", "yes")).toBe(serial("2026-07-01"));
  });

  const correct = "Enter the tax year of the sale, or correct the date.";
  it.each([
    [
      ["5/1/2026", 2025],
      `soldOn: 5/1/2026 is not in the tax year that ends on 12/31/2025. ${correct}`,
    ],
    [
      ["12/31/2024", 2025],
      `soldOn: 12/31/2024 is not in the tax year that ends on 12/31/2025. ${correct}`,
    ],
    [
      ["12/30/2025", "12/27/2025"],
      `soldOn: 12/30/2025 is not in the tax year that ends on 12/27/2025. ${correct}`,
    ],
    [["soon", 2025], 'soldOn: "soon" is not a date. Enter a date such as 4/15/2026.'],
    [[undefined, 2025], "soldOn: The cell is blank. Enter a date such as 4/15/2026."],
  ])("refuses %j", (values, sentence) => {
    expect(inCell(exchangeBy, ...values)).toEqual(badInput(sentence));
  });

  it("has no answer for a year that the tables do not cover", () => {
    expect(inCell(exchangeBy, "5/1/2099", 2099)).toEqual(
      afterTable("return-due-date", "12/31/2099", "12/31/2027")
    );
    expect(inCell(exchangeBy, "5/1/2008", 2008)).toEqual(
      beforeTable("return-due-date", "12/31/2008", "12/31/2009")
    );
  });
});

describe("REFUNDBY", () => {
  // 26 U.S.C. 6511(b)(2)(A), 6513(b)(1), computed for a year; newdayadvisory.com for 2019 with Form 4868.
  it("answers a column of years for returns that are not filed", () => {
    expect(refundBy(down(2019, 2022, 2024), [[""]], [["yes"]])).toEqual(
      ["2023-10-15", "2026-10-15", "2028-10-15"].map((day) => [serial(day)])
    );
    expect(inCell(refundBy, 2022)).toBe(serial("2026-04-15"));
  });

  it("takes the date of filing and a postponement", () => {
    expect(inCell(refundBy, 2022, "9/1/2023", "yes")).toBe(serial("2026-09-01"));
    expect(inCell(refundBy, 2024, "", "", "CA", "", "1/7/2025", "10/15/2025")).toBe(
      serial("2028-10-15")
    );
  });

  it.each([
    [
      [2025, "12/31/2025"],
      badInput(
        "filedOn: 12/31/2025 is not after the tax year ends on 12/31/2025. Check the year, and that the workbook does not use the 1904 date system."
      ),
    ],
    [
      [2025, "", "", "", "", "1/7/2026"],
      badInput(
        "postponementEnds: The cell is blank, but postponementBegins has a date. Enter both dates, or neither."
      ),
    ],
    [[2008], beforeTable("return-due-date", "12/31/2008", "12/31/2009")],
    [[2028], afterTable("return-due-date", "12/31/2028", "12/31/2027")],
  ])("refuses %j", (values, refusal) => {
    expect(inCell(refundBy, ...values)).toEqual(refusal);
  });
});

describe("ABROADDATE", () => {
  // Form 2350 (2010), page 4, line 1.
  it("answers for both tests", () => {
    expect(abroadDateOf([["6/11/2025"]], down("physical presence", "Bona Fide Residence"))).toEqual(
      [[serial("2026-07-11")], [serial("2027-01-31")]]
    );
  });

  it.each([
    [
      ["6/11/2025", "tax home"],
      badInput(
        'qualifyingTest: "tax home" is not a qualifying test. Enter physical presence or bona fide residence.'
      ),
    ],
    [
      ["6/11/2025", ""],
      badInput(
        "qualifyingTest: The cell is blank. Enter physical presence or bona fide residence."
      ),
    ],
    [["6/11/2028", "physical presence"], afterTable("form-2350", "6/11/2028", "12/31/2027")],
  ])("refuses %j", (values, refusal) => {
    expect(inCell(abroadDateOf, ...values)).toEqual(refusal);
  });
});
