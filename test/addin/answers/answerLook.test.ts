import { describe, expect, it } from "vitest";
import { answerLook } from "../../../src/addin/answers/answerLook";

describe("the look of an answer", () => {
  it("is the length of a date and its format", () => {
    expect(answerLook("=EXT.DUE(2025)")).toEqual({ widths: [9], formats: [["m/d/yyyy"]] });
  });

  it("has a width for each column of a table, of which a text takes at most 40 characters", () => {
    const { widths, formats } = answerLook("=EXT.CALENDAR(2025)");
    expect(formats.every((row) => row.length === widths.length)).toBe(true);
    expect(Math.max(...widths)).toBe(40);
  });

  it("needs no width for an error", () => {
    expect(answerLook('=EXT.DUE("soon")')).toEqual({ widths: [0], formats: [[undefined]] });
  });
});
