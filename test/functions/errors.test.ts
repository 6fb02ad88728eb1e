import { describe, expect, it } from "vitest";
import { calendarDate } from "../../src/calendar/calendarDate";
import { ErrorCell, hostError } from "../../src/functions/errors";
import { InputError } from "../../src/inputError";
import { NotInTableError } from "../../src/rules/notInTableError";
import { badInput, notHeld } from "./sheet";

describe("the error a sheet shows", () => {
  it("is #VALUE! with the sentence for bad input", () => {
    expect(hostError(new InputError("state", '"ZZ" is no state'))).toEqual(
      badInput('state: "ZZ" is no state')
    );
  });

  it("is #N/A with table and day for a figure that is not published", () => {
    const held = { from: calendarDate("1995-01-01"), through: calendarDate("2026-12-31") };
    const thrown = new NotInTableError(
      "Underpayment rate",
      "underpayment-rate",
      calendarDate("2027-01-01"),
      held
    );
    expect(hostError(thrown)).toEqual(
      notHeld(
        "Underpayment rate: no figure for 2027-01-01; known only through 2026-12-31 (rules/underpayment-rate.json)"
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
        badInput(`an argument holds the error ${code}`)
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
