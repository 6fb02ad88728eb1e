import { describe, expect, it } from "vitest";
import { ErrorCell, hostError } from "../../../src/functions/cells/hostError";
import { InputError } from "../../../src/functions/cells/inputError";
import { calendarDate } from "../../../src/calendar/calendarDate";
import { notCovered } from "../../../src/rules/notInTableError";
import { badInput, notInTable } from "../sheet";

describe("the error a sheet shows", () => {
  it("is #VALUE! with the sentence for bad input", () => {
    expect(hostError(new InputError("state", '"ZZ" is no state'))).toEqual(
      badInput('state: "ZZ" is no state')
    );
  });

  it("is #N/A with the table and the date for a figure that is not published", () => {
    const table = {
      id: "underpayment-rate",
      title: "Underpayment rate",
      knownFrom: calendarDate("1995-01-01"),
      knownThrough: calendarDate("2026-12-31"),
    };
    const thrown = notCovered(table, calendarDate("2027-01-01"));
    expect(hostError(thrown)).toEqual(
      notInTable(
        "Underpayment rate: There is no figure for 1/1/2027. The table covers dates through 12/31/2026 (rules/underpayment-rate.json). Check for a newer version of the add-in."
      )
    );
  });

  // Codes a function may hand back: CustomFunctions.ErrorCode without the two that are input only.
  it.each(["#N/A", "#VALUE!", "#DIV/0!", "#NUM!", "#NULL!"])(
    "is the %s of an error cell, which passes through without a sentence",
    (code) => {
      expect(hostError(new ErrorCell(code))).toEqual({ code });
    }
  );

  it.each(["#REF!", "#NAME?", "#SPILL!", "#CALC!", "#BUSY!", "#GETTING_DATA"])(
    "is #VALUE! naming the %s that the host would not take back",
    (code) => {
      expect(hostError(new ErrorCell(code))).toEqual(
        badInput(`An argument contains the error ${code}. Correct that cell.`)
      );
    }
  );

  it.each([
    [new TypeError("undefined is not a function")],
    [new RangeError("no such day")],
    ["text"],
  ])("is not made of a bug, which is thrown on: %s", (bug) => {
    expect(() => hostError(bug)).toThrow(bug instanceof Error ? bug : "text");
  });
});
