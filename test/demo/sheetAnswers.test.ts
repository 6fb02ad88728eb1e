import { describe, expect, it } from "vitest";
import { errorSentence, isErrorCode } from "../../src/demo/sheet/errorSentence";
import { GridAnswers } from "../../src/demo/sheet/gridAnswers";

const place = { sheetId: "one", row: 1, column: 2 };
const answer = (message: string, error = "#VALUE!") => ({
  name: "DUE",
  rows: [[{ error, message }]],
});

describe("the calls of a cell", () => {
  it("are those of its last calculation", () => {
    const answers = new GridAnswers();
    answers.note(place, answer("first"));
    answers.note(place, answer("second"));
    expect(answers.callsOf(place)).toEqual([answer("first"), answer("second")]);
    answers.begin();
    answers.note(place, answer("third"));
    expect(answers.callsOf(place)).toEqual([answer("third")]);
    expect(answers.callsOf({ ...place, row: 2 })).toEqual([]);
    answers.clear();
    expect(answers.callsOf(place)).toEqual([]);
  });
});

describe("the message of an error", () => {
  it("is that of the outermost call that returned this error", () => {
    const calls = [answer("inner"), answer("other", "#N/A"), answer("outer")];
    expect(errorSentence("#VALUE!", calls, 0, 0)).toBe("outer");
    expect(errorSentence("#N/A", calls, 0, 0)).toBe("other");
  });

  it("is that of its own row where one formula fills several rows", () => {
    const rows = [
      [{ value: 1 }],
      [{ error: "#N/A", message: "row 2" }],
      [{ error: "#N/A", message: "row 3" }],
    ];
    expect(errorSentence("#N/A", [{ name: "DUE", rows }], 1, 0)).toBe("row 2");
    expect(errorSentence("#N/A", [{ name: "DUE", rows }], 2, 0)).toBe("row 3");
  });

  it("is the meaning of the code where none of our functions returned the error", () => {
    expect(errorSentence("#DIV/0!", [], 0, 0)).toMatch(/divides by zero/);
    expect(errorSentence("#N/A", [answer("of another error")], 0, 0)).toMatch(/^Nothing was found/);
  });

  it("is shown only for errors", () => {
    expect(["#N/A", "#SPILL!"].every(isErrorCode)).toBe(true);
    expect(["N/A", "#hello", "", 5, null].some(isErrorCode)).toBe(false);
  });
});
