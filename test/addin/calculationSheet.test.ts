import { describe, expect, it } from "vitest";
import { workingFormula } from "../../src/addin/workingFormula";
import { workingSheet } from "../../src/addin/workingSheet";
import { NotDone, type SelectedCell } from "../../src/addin/workbookHost";
import { metadata } from "../contract/builtAddIn";

describe("the formula that lays out a working", () => {
  it.each([
    [
      "a call in its own row points back at its sheet",
      '=EXT.CHARGES(B2,E2,F2+$G$2,H2,I2,"yes")',
      0,
      `=EXT.CHARGELINES('Clients'!B2,'Clients'!E2,'Clients'!F2+'Clients'!$G$2,'Clients'!H2,'Clients'!I2,"yes")`,
    ],
    [
      "a cell filled from above takes its row of each column",
      "=EXT.CHARGES(B2:B48,E2:E48,F2:F48+G2:G48,K2:K48,L2:L48,J2:J48)",
      5,
      "=EXT.CHARGELINES('Clients'!B7,'Clients'!E7,'Clients'!F7+'Clients'!G7,'Clients'!K7,'Clients'!L7,'Clients'!J7)",
    ],
    [
      "a block of items stays whole",
      '=EXT.LIABILITY(2025,"single",A4:B9)',
      0,
      `=EXT.LIABILITYLINES(2025,"single",'Clients'!A4:B9)`,
    ],
    [
      "a date's working is the calendar of the same client",
      "=EXT.EXTENDED(B2,C2,,H2,I2)",
      0,
      "=EXT.CALENDAR('Clients'!B2,'Clients'!C2,,'Clients'!H2,'Clients'!I2)",
    ],
    [
      "the count of findings opens into the findings, without what is counted",
      '=EXT.ISSUECOUNT(B2,E2,F2,G2,$B$1,,,,,,,,,,,,,,"problem")',
      0,
      "=EXT.ISSUES('Clients'!B2,'Clients'!E2,'Clients'!F2,'Clients'!G2,'Clients'!$B$1)",
    ],
    [
      "text that looks like a cell, a name and another sheet's cell stay",
      `=EXT.CHARGES(2025,Other!E2,'My sheet'!F2,"B2",I2,"yes",,,AssumedRate)`,
      0,
      `=EXT.CHARGELINES(2025,Other!E2,'My sheet'!F2,"B2",'Clients'!I2,"yes",,,AssumedRate)`,
    ],
    [
      "a nested call keeps its commas",
      "=ROUND(EXT.CHARGES(B2,MAX(E2,E3),0,H2,I2),0)",
      0,
      "=EXT.CHARGELINES('Clients'!B2,MAX('Clients'!E2,'Clients'!E3),0,'Clients'!H2,'Clients'!I2)",
    ],
  ])("%s", (_what, formula, rowsBelow, working) => {
    expect(workingFormula(formula, "Clients", rowsBelow)).toBe(working);
  });

  it("doubles an apostrophe in the sheet's name", () => {
    expect(workingFormula("=EXT.METHOD(B2,G2,$B$1)", "Ann's", 0)).toBe(
      "=EXT.METHODLINES('Ann''s'!B2,'Ann''s'!G2,'Ann''s'!$B$1)"
    );
  });

  it.each(["=SUM(A1:A9)", "=EXT.SHORTFALL(E2,F2)", "=EXT.RULETABLES()"])(
    "there is none for %s",
    (formula) => {
      expect(workingFormula(formula, "Clients", 0)).toBeUndefined();
    }
  );

  it("takes its arguments in the order of the function it came from", () => {
    const namesOf = (id: string) =>
      metadata.functions.find((one) => one.id === id)?.parameters.map(({ name }) => name) ?? [];
    for (const [one, lines] of [
      ["CHARGES", "CHARGELINES"],
      ["EFFECTIVERATE", "CHARGELINES"],
      ["LIABILITY", "LIABILITYLINES"],
      ["ESTPENALTY", "ESTPENALTYLINES"],
      ["METHOD", "METHODLINES"],
      ["ISSUECOUNT", "ISSUES"],
      ["DUE", "CALENDAR"],
      ["EXTENDED", "CALENDAR"],
      ["PAYBY", "CALENDAR"],
    ] as const) {
      expect(namesOf(one).slice(0, namesOf(lines).length), one).toEqual(namesOf(lines));
    }
  });
});

describe("the sheet of a working", () => {
  const cell: SelectedCell = {
    sheet: "Clients",
    address: "H2",
    formula: "=EXT.DUE(B2)",
    isEmpty: false,
    rowsBelow: 0,
  };

  it("says whose working it is, and that it is an estimate", () => {
    const { name, cells } = workingSheet(cell);
    expect(name).toBe("Working H2");
    expect(cells.flat()).toEqual([
      "Working of Clients!H2",
      "An estimate, not advice; it follows the cells it points at.",
      "=EXT.CALENDAR('Clients'!B2)",
    ]);
  });

  it.each([
    ["", /^H2 holds no formula/],
    ["=EXT.SHORTFALL(E2,F2)", /^The formula of H2 has no working to lay out/],
    ["=EXT.DUE([@Year])", /names columns of a table/],
  ])("is refused in a sentence for the formula %j", (formula, sentence) => {
    const work = () => workingSheet({ ...cell, formula });
    expect(work).toThrow(NotDone);
    expect(work).toThrow(sentence);
  });
});
