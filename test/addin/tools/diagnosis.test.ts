import { describe, expect, it } from "vitest";
import { blankHabit, blankSentence } from "../../../src/addin/tools/blankCheck";
import { errorKind, highestSets, newDiagnosis } from "../../../src/addin/tools/diagnosis";

describe("the check of blank cells", () => {
  it.each([
    [[2, "#VALUE!"], "blank"],
    [[2, 3], "0"],
    [[2, "#BUSY!"], undefined],
    [[2, 1], undefined],
    [["#NAME?", "#NAME?"], undefined],
    [["#VALUE!", "#VALUE!"], undefined],
    [[], undefined],
  ])("reads %j as %s", (shown, habit) => {
    expect(blankHabit(shown)).toBe(habit);
  });

  it("says something else of each finding", () => {
    const said = (["blank", "0", undefined] as const).map(blankSentence);
    expect(new Set(said).size).toBe(3);
  });
});

describe("the diagnosis", () => {
  it("has the highest version of each requirement set", () => {
    const sets = highestSets((name, minimum) => {
      const minor = Number(minimum.slice("1.".length));
      return name === "ExcelApi" ? minor <= 12 : name === "SharedRuntime" && minor <= 1;
    });
    expect(sets).toContain("ExcelApi 1.12");
    expect(sets).toContain("SharedRuntime 1.1");
    expect(sets).toContain("CustomFunctionsRuntime none");
  });

  it("has the kind of an error and never its message", () => {
    const error = Object.assign(new Error("the cell has 123-45-6789"), {
      code: "AccessDenied",
      debugInfo: { errorLocation: "Range.formulas", message: "123-45-6789" },
    });
    expect(errorKind(error)).toBe("Error, AccessDenied, Range.formulas");
    expect(errorKind("123-45-6789")).toBe("unknown");
    expect(errorKind(null)).toBe("unknown");
  });

  it("says what is not known where there is no Excel", () => {
    const diagnosis = newDiagnosis(() => ({ sets: [], scripts: [] }));
    diagnosis.noteState("no script");
    diagnosis.noteBlanks(undefined);
    expect(diagnosis.text().split("\n").slice(1)).toEqual([
      "Page: no script",
      "Host: none, platform not known, build not known",
      "Requirement sets: none",
      "Scripts of Microsoft: none",
      expect.stringMatching(/^Functions registered: not known of \d+$/),
      "Blank cells: not known",
      "Last error: none",
    ]);
  });
});
