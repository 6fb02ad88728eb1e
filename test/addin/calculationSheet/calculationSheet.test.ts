import { describe, expect, it } from "vitest";
import { CALCULATED, calculationOf } from "../../../src/addin/calculationSheet/calculationFormula";
import { calculationSheet } from "../../../src/addin/calculationSheet/calculationSheet";
import { NotDone, type SelectedCell } from "../../../src/addin/workbook/workbookHost";
import { calendarDate } from "../../../src/calendar/calendarDate";
import { liveAnswer } from "../../../src/addin/answers/liveAnswer";
import { catalog } from "../../../src/functions/catalog";
import { metadata } from "../../contract/builtAddIn";

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
    [
      "marks in the name of a sheet and in text part no arguments",
      `=EXT.CHARGES(2025,'Tax (draft), 2025'!E2,0,H2,I2,IF(J2="yes, (sent)","yes",""))`,
      0,
      `=EXT.CHARGELINES(2025,'Tax (draft), 2025'!E2,0,'Clients'!H2,'Clients'!I2,IF('Clients'!J2="yes, (sent)","yes",""))`,
    ],
  ])("%s", (_what, formula, rowsBelow, calculation) => {
    expect(calculationOf(formula, "Clients", rowsBelow)?.lines).toBe(calculation);
  });

  it("doubles an apostrophe in the name of the sheet", () => {
    expect(calculationOf("=EXT.METHOD(B2,G2,$B$1)", "Ann's", 0)?.lines).toBe(
      "=EXT.METHODLINES('Ann''s'!B2,'Ann''s'!G2,'Ann''s'!$B$1)"
    );
  });

  it.each(["=SUM(A1:A9)", "=EXT.MAILTO(B2,C2)", "=EXT.RULETABLES()"])(
    "does not exist for %s",
    (formula) => {
      expect(calculationOf(formula, "Clients", 0)).toBeUndefined();
    }
  );

  it("of one amount of WHATIF is that of its payment and its date", () => {
    const formula = '=EXT.WHATIF(B1,B2,B3,A6:A9,B5:D5,"yes")';
    expect(calculationOf(formula, "Compare", 2, 3)?.lines).toBe(
      `=EXT.CHARGELINES('Compare'!B1,'Compare'!B2,'Compare'!B3+INDEX('Compare'!A6:A9,2),INDEX('Compare'!B5:D5,3),INDEX('Compare'!B5:D5,3),"yes")`
    );
    expect(calculationOf("=EXT.WHATIF(2025,9000,0,{0;500},B5)", "Compare", 1, 1)?.lines).toBe(
      "=EXT.CHARGELINES(2025,9000,0+INDEX({0;500},1),'Compare'!B5,'Compare'!B5)"
    );
    for (const [row, column] of [
      [0, 1],
      [1, 0],
    ] as const)
      expect(calculationOf(formula, "Compare", row, column)).toBeUndefined();
  });

  it("of a state due date is the rule of the state", () => {
    expect(calculationOf('=EXT.STATEDUE(B2,C2,"yes")', "Clients", 0)?.lines).toBe(
      `=EXT.STATERULE('Clients'!B2,'Clients'!C2,,,,"yes")`
    );
  });

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
      ["STATEEXTENDED", "STATERULE"],
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

  it("has what and whose, cell and date, the entered values, the result and the table", () => {
    const { name, cells } = calculationSheet(
      { ...cell, formula: "=EXT.DUE(B2,C2)" },
      calendarDate("2026-04-01")
    );
    expect(name).toBe("Calculation H2");
    expect(cells).toEqual([
      [`="Regular due date"&IF(ISTEXT('Clients'!A2),": "&'Clients'!A2,"")`],
      ["Cell Clients!H2, made on 4/1/2026"],
      ["An estimate, not tax advice. It changes with the cells it refers to."],
      [],
      ["Entered", "Value"],
      ["Tax year", `=IF('Clients'!B2="","",'Clients'!B2)`],
      ["State", `=IF('Clients'!C2="","",'Clients'!C2)`],
      ["Regular due date", "=EXT.DUE('Clients'!B2,'Clients'!C2)"],
      [],
      ["=EXT.CALENDAR('Clients'!B2,'Clients'!C2)"],
    ]);
  });

  it("has the number formats of the functions, also where the host takes none from them", () => {
    const formula = '=EXT.CHARGES(B2,E2,F2+G2,H2,I2,"yes",,,7%)';
    const { looks = [], cells } = calculationSheet({ ...cell, formula });
    const entered = Object.fromEntries(
      looks
        .filter((look) => look.format !== undefined && look.rows === 1)
        .map((look) => [String(cells[look.row - 1]?.[0]), look.format])
    );
    expect(entered).toEqual({
      "Tax year": "[<3000]0;m/d/yyyy",
      "Total tax": "#,##0.00",
      "Paid on time": "#,##0.00",
      "Paid on": "m/d/yyyy",
      "Filed on": "m/d/yyyy",
      "Valid extension": "General",
      "Assumed rate": "0.00%",
      "Penalties and interest": "#,##0.00",
    });
    const columns = looks.filter((look) => look.format !== undefined && look.rows > 1);
    expect(columns.map(({ row, column, format }) => [row, column, format])).toEqual([
      [cells.length + 1, 2, "m/d/yyyy"],
      [cells.length + 1, 3, "m/d/yyyy"],
      [cells.length + 1, 6, "0.00%"],
      [cells.length + 1, 7, "#,##0.00"],
      [cells.length + 1, 8, "#,##0.00"],
    ]);
  });

  it("takes the name of the client from the first column of a table", () => {
    const tables = [
      { name: "T", sheet: "Clients", headings: ["Name"], headingRow: 1, firstColumn: 3, rows: 9 },
    ];
    expect(calculationSheet({ ...cell, tables }).cells[0]).toEqual([
      `="Regular due date"&IF(ISTEXT('Clients'!C2),": "&'Clients'!C2,"")`,
    ]);
    expect(calculationSheet({ ...cell, address: "A2" }).cells[0]).toEqual(["Regular due date"]);
  });

  it("leads to a suggested payment in steps that add up", () => {
    const formula = '=EXT.SUGGEST(20000,15000,"full",5%,2500)';
    const { cells } = calculationSheet({ ...cell, formula });
    const steps = new Map(cells.map(([label, content]) => [label, String(content)]));
    const amounts = ["To reach the target", "Cushion", "First estimated tax installment"].map(
      (label) =>
        (steps.get(label) ?? "")
          .slice(1)
          .split("-")
          .map((call) => Number(liveAnswer(`=${call}`)[0]?.[0]?.text.replaceAll(",", "")))
          .reduce((one, other) => one - other)
    );
    expect(amounts).toEqual([5000, 1000, 2500]);
    expect(liveAnswer(steps.get("Suggested payment") ?? "")[0]?.[0]?.text).toBe("8,500.00");
  });

  it("leads to a projected tax from the tax on last year's items", () => {
    const formula = '=EXT.PROJECTEDTAX(2025,"single",A2:B9,D2:E3)';
    const { cells } = calculationSheet({ ...cell, formula });
    expect(cells.slice(5)).toEqual([
      ["Tax year", "=2025"],
      ["Filing status", '="single"'],
      ["Prior year items", "cells Clients!A2:B9"],
      ["Changes", "cells Clients!D2:E3"],
      ["Total tax on last year's items", `=EXT.LIABILITY(2025,"single",'Clients'!A2:B9)`],
      [
        "Effect of the changes",
        `=EXT.PROJECTEDTAX(2025,"single",'Clients'!A2:B9,'Clients'!D2:E3)-EXT.LIABILITY(2025,"single",'Clients'!A2:B9)`,
      ],
      [
        "Estimated total tax of the new year",
        `=EXT.PROJECTEDTAX(2025,"single",'Clients'!A2:B9,'Clients'!D2:E3)`,
      ],
    ]);
  });

  it("of a balance due is its two amounts", () => {
    const { cells } = calculationSheet({ ...cell, formula: "=EXT.SHORTFALL(E2,F2)" });
    expect(cells.slice(5).map(([label]) => label)).toEqual([
      "Total tax",
      "Payments",
      "Balance due (line 6)",
    ]);
  });

  it.each([
    ["", /^Cell H2 has no formula/],
    [
      "=SUM(A1:A2)",
      /^Cell H2 has no EXT function, so there is no calculation\. Select a cell with/,
    ],
    ["=EXT.MAILTO(B2,C2)", /^There is no calculation to show for MAILTO\. Its help says/],
    ["=EXT.RULETABLES()", /^RULETABLES is a table that already shows its rows and sources\./],
    ["=EXT.WHATIF(2025,1,0,A6:A9,B5:D5)", /^Cell H2 is a heading of the WHATIF table\./],
    ["=EXT.DEU(2025)", /^EXT\.DEU is not a function of the add-in\. The closest is EXT\.DUE\.$/],
    ["=EXT.ZZZZZ(2025)", /^EXT\.ZZZZZ is not a function of the add-in\.$/],
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

  it("exists for every function that the sentence names", () => {
    for (const name of CALCULATED) {
      const [example] = catalog[name]?.examples ?? [];
      const place = { rowsBelow: 1, columnsRight: 1 };
      const made = calculationSheet({ ...cell, ...place, formula: example?.formula ?? "" });
      expect(made.cells.length, name).toBeGreaterThan(5);
    }
  });
});
