import { describe, expect, it } from "vitest";
import { calculationFormula } from "../../src/addin/calculationFormula";
import { calculationSheet } from "../../src/addin/calculationSheet";
import { NotDone, type SelectedCell } from "../../src/addin/workbookHost";
import { metadata } from "../contract/builtAddIn";

describe("the formula that shows a calculation", () => {
  it.each([
    [
      "a call in its own row refers to its sheet",
      '=EXT.CHARGES(B2,E2,F2+$G$2,H2,I2,"yes")',
      0,
      `=EXT.CHARGELINES('Clients'!B2,'Clients'!E2,'Clients'!F2+'Clients'!$G$2,'Clients'!H2,'Clients'!I2,"yes")`,
    ],
    [
      "a cell filled from above uses its row of each column",
      "=EXT.CHARGES(B2:B48,E2:E48,F2:F48+G2:G48,K2:K48,L2:L48,J2:J48)",
      5,
      "=EXT.CHARGELINES('Clients'!B7,'Clients'!E7,'Clients'!F7+'Clients'!G7,'Clients'!K7,'Clients'!L7,'Clients'!J7)",
    ],
    [
      "a range of items stays whole",
      '=EXT.LIABILITY(2025,"single",A4:B9)',
      0,
      `=EXT.LIABILITYLINES(2025,"single",'Clients'!A4:B9)`,
    ],
    [
      "the calculation of a date is the calendar of the same client",
      "=EXT.EXTENDED(B2,C2,,H2,I2)",
      0,
      "=EXT.CALENDAR('Clients'!B2,'Clients'!C2,,'Clients'!H2,'Clients'!I2)",
    ],
    [
      "the number of issues becomes the table of issues, without the minimum severity",
      '=EXT.ISSUECOUNT(B2,E2,F2,G2,$B$1,,,,,,,,,,,,,,"problem")',
      0,
      "=EXT.ISSUES('Clients'!B2,'Clients'!E2,'Clients'!F2,'Clients'!G2,'Clients'!$B$1)",
    ],
    [
      "text that looks like a cell, a name and a cell of another sheet stay",
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
  ])("%s", (_what, formula, rowsBelow, calculation) => {
    expect(calculationFormula(formula, "Clients", rowsBelow)).toBe(calculation);
  });

  it("doubles an apostrophe in the name of the sheet", () => {
    expect(calculationFormula("=EXT.METHOD(B2,G2,$B$1)", "Ann's", 0)).toBe(
      "=EXT.METHODLINES('Ann''s'!B2,'Ann''s'!G2,'Ann''s'!$B$1)"
    );
  });

  it.each(["=SUM(A1:A9)", "=EXT.SHORTFALL(E2,F2)", "=EXT.RULETABLES()"])(
    "does not exist for %s",
    (formula) => {
      expect(calculationFormula(formula, "Clients", 0)).toBeUndefined();
    }
  );

  it("has the arguments of the function in the same order", () => {
    const namesOf = (id: string) =>
      metadata.functions.find((one) => one.id === id)?.parameters.map(({ name }) => name) ?? [];
    for (const [one, lines] of [
      ["CHARGES", "CHARGELINES"],
      ["EFFECTIVERATE", "CHARGELINES"],
      ["LIABILITY", "LIABILITYLINES"],
      ["ESTPENALTY", "ESTPENALTYLINES"],
      ["METHOD", "METHODLINES"],
      ["ISSUECOUNT", "ISSUES"],
    ] as const) {
      const most = Math.min(namesOf(one).length, namesOf(lines).length);
      expect(namesOf(one).slice(0, most), one).toEqual(namesOf(lines).slice(0, most));
    }
    // CALENDAR takes a subject besides, which stays blank: the deadlines of the return.
    for (const one of ["DUE", "EXTENDED", "PAYBY"])
      expect([...namesOf(one), "subject"], one).toEqual(namesOf("CALENDAR"));
  });
});

describe("the sheet with a calculation", () => {
  const cell: SelectedCell = {
    sheet: "Clients",
    address: "H2",
    formula: "=EXT.DUE(B2)",
    isEmpty: false,
    rowsBelow: 0,
  };

  it("names the cell, and says that it is an estimate", () => {
    const { name, cells } = calculationSheet(cell);
    expect(name).toBe("Calculation H2");
    expect(cells.flat()).toEqual([
      "Calculation of Clients!H2",
      "An estimate, not tax advice. It changes with the cells it refers to.",
      "=EXT.CALENDAR('Clients'!B2)",
    ]);
  });

  it.each([
    ["", /^Cell H2 has no formula/],
    ["=EXT.SHORTFALL(E2,F2)", /^There is no calculation to show for H2/],
    [
      '=EXT.ROSTERROWS($A$1:$C$1,$A2:$C2,2025,"4/1/2026",,"Balance due")',
      /^The formula in H2 answers from a whole row of the list\. Select Calculation at the top/,
    ],
    ["=EXT.DUE([@Year])", /The reference \[@Year\] in the formula cannot be read/],
  ])("is not made for the formula %j, with a sentence that says why", (formula, sentence) => {
    const work = () => calculationSheet({ ...cell, formula });
    expect(work).toThrow(NotDone);
    expect(work).toThrow(sentence);
  });
});
