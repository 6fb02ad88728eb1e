import { describe, expect, it } from "vitest";
import { coverageDateText } from "../../../src/addin/guide/coverageDate";
import { calendarDate } from "../../../src/calendar/calendarDate";

describe("a date that a rule table covers", () => {
  it.each([
    ["2026-12-31", "12/31/2026"],
    ["2027-01-02", "1/2/2027"],
    ["9999-12-31", "no end date"],
  ])("is written for %s as %s", (date, text) => {
    expect(coverageDateText(calendarDate(date))).toBe(text);
  });
});
