import { describe, expect, it } from "vitest";
import { version } from "../../src/rules/version";
import { formulaCall } from "../../src/addin/formulaCall";
import { inCell, serial } from "./sheet";
import { declaredFunctions, worksheetFunction } from "./worksheetFunctions";

const FORMULA = String.raw`=EXT\.[A-Z]+\((?:\{[^}]*\}|[^;{])*?\)`;
const STATED = new RegExp(`^(${FORMULA}) is (.+)$`);

/** What a cell holds that shows this text: a day, an amount, a percentage, or the text itself. What follows a colon is remark. */
function cellShowing(text: string): unknown {
  const [, day, money, percent] =
    /^(?:(\d{4}-\d{2}-\d{2})|([\d,]+\.\d{2})|([\d.]+)%)(?:$|: | in this edition$)/.exec(text) ?? [];
  if (day !== undefined) return serial(day);
  if (money !== undefined) return Number(money.replaceAll(",", ""));
  if (percent !== undefined) return Number(percent) / 100;
  if (/^-?\d+$/.test(text)) return Number(text);
  return text === "TRUE" || text === "FALSE" ? text === "TRUE" : text;
}

function evaluated(formula: string): unknown {
  const { id, values } = formulaCall(formula);
  return inCell(worksheetFunction(id), ...values);
}

const stated = declaredFunctions.flatMap(({ id, example }) =>
  example.split(/; (?==EXT\.)/).flatMap((one) => {
    const [, formula, answer] = STATED.exec(one) ?? [];
    return formula !== undefined && answer !== undefined ? [{ id, formula, answer }] : [];
  })
);

type Table = readonly (readonly unknown[])[];
const columnOf = (table: Table, heading: string): unknown[] =>
  table.slice(1).map((row) => row[table[0]?.indexOf(heading) ?? -1]);

/** Examples of spilling functions, which tell in words what the table shows. The words are checked here one by one. */
const TOLD: Readonly<Record<string, { example: string; shows: (table: Table) => void }>> = {
  LINES: {
    example:
      "=EXT.LINES(18249.50,15000.49,3000) gives 18,250, 15,000, 3,250 and 3,000 on lines 4 to 7",
    shows: (table) => {
      expect(columnOf(table, "Line").slice(0, 4)).toEqual(["4", "5", "6", "7"]);
      expect(columnOf(table, "Dollars").slice(0, 4)).toEqual([18250, 15000, 3250, 3000]);
    },
  },
  CHARGELINES: {
    example:
      '=EXT.CHARGELINES(2025,20000,18500,"2026-10-15","2026-10-15","yes") shows the presumption and three rate periods',
    shows: (table) => {
      expect(columnOf(table, "What")).toEqual([
        "Failure to pay: cause presumed, 90% was paid",
        "Interest on the tax",
        "Interest on the tax",
        "Interest on the tax",
      ]);
    },
  },
  CALENDAR: {
    example: "=EXT.CALENDAR(2025) begins with paying the tax on Wednesday, 2026-04-15",
    shows: (table) => {
      expect(table[1]?.[0]).toMatch(/^Pay the tax/);
      expect(table[1]?.slice(1, 3)).toEqual([serial("2026-04-15"), "Wednesday"]);
    },
  },
  LEDGER: {
    example:
      '=EXT.LEDGER(2025,20000,{"2026-04-15",15000;"2026-10-15",5000},"2026-10-15","yes") ends with charges of 317.81',
    shows: (table) => {
      expect(columnOf(table, "Charges so far").at(-1)).toBe(317.81);
    },
  },
  WHATIF: {
    example:
      '=EXT.WHATIF(2025,20000,15000,{0;3000},{"2026-04-15","2026-10-15"},"yes") shows 317.81 and 67.12 under 2026-10-15',
    shows: (table) => {
      expect(table).toEqual([
        ["Extra payment", serial("2026-04-15"), serial("2026-10-15")],
        [0, 0, 317.81],
        [3000, 0, 67.12],
      ]);
    },
  },
  ESTIMATELINES: {
    example:
      '=EXT.ESTPENALTYLINES(2025,8000,0,{"2025-04-15",6000}) shows one line: 2,000 of the fourth installment for 90 days, 34.52',
    shows: (table) => {
      expect(table).toHaveLength(2);
      expect(columnOf(table, "Installment")).toEqual([4]);
      expect(columnOf(table, "Amount")).toEqual([2000]);
      expect(columnOf(table, "Days")).toEqual([90]);
      expect(columnOf(table, "Addition")).toEqual([34.52]);
    },
  },
  LIABILITYLINES: {
    example:
      '=EXT.LIABILITYLINES(2025,"single",{"wages",75750}) shows taxable income of 60,000 and total tax of 8,120',
    shows: (table) => {
      expect(table).toContainEqual(["Taxable income", 60000, ""]);
      expect(table).toContainEqual(["Total tax", 8120, ""]);
    },
  },
  ROUTELINES: {
    example: '=EXT.METHODLINES(2025,1500,"2026-04-10") begins with electronic payment',
    shows: (table) => {
      expect(table[1]?.slice(0, 3)).toEqual(["electronic payment", "yes", serial("2026-04-15")]);
    },
  },
  CHECK: {
    example:
      '=EXT.ISSUES(2025,20000,15000,1000,"2026-04-10") begins with paying less than 90%: 2,000.00 is missing',
    shows: (table) => {
      expect(table[1]?.[1]).toMatch(/^Less than 90%/);
      expect(columnOf(table, "Dollars")[0]).toBe(2000);
    },
  },
  STATERULE: {
    example: '=EXT.STATERULE(2025,"NY") says that the state wants its own request, Form IT-370',
    shows: (table) => {
      expect(columnOf(table, "Text")).toEqual(
        expect.arrayContaining(["New York: own request", "IT-370"])
      );
    },
  },
  MEMO: {
    example:
      "=EXT.MEMO(2025,20000,15000,5000) begins: We are asking for more time to file your 2025 federal income tax return, until October 15, 2026.",
    shows: (table) => {
      expect(table).toMatch(
        /^We are asking for more time to file your 2025 federal income tax return, until October 15, 2026\. /
      );
    },
  },
  ROSTER: {
    example:
      '=EXT.ROSTER({"Client","Total tax","Payments";"Alder",20000,15000},2025,"2026-04-10") has 5,000.00 as the shortfall',
    shows: (table) => {
      expect(columnOf(table, "Shortfall")).toEqual([5000]);
    },
  },
  EDITION: {
    example: "=EXT.RULETABLES() begins with the version of the add-in",
    shows: (table) => {
      expect(table[1]?.slice(0, 2)).toEqual(["add-in", `version ${version}`]);
    },
  },
};

describe("the example of each worksheet function", () => {
  it.each(stated)("is true of $id: $formula is $answer", ({ formula, answer }) => {
    expect(evaluated(formula)).toEqual(cellShowing(answer));
  });

  it.each(Object.entries(TOLD))("is true of %s, which spills", (id, { example, shows }) => {
    expect(declaredFunctions.find((one) => one.id === id)?.example).toBe(example);
    shows(evaluated(new RegExp(FORMULA).exec(example)?.[0] ?? "") as Table);
  });

  it("is there for every function, each of its formulas checked above", () => {
    const formulas = declaredFunctions.map(({ id, example }) => ({
      id,
      formulas: example.match(/=EXT\./g)?.length ?? 0,
    }));
    const checked = declaredFunctions.map(({ id }) => ({
      id,
      formulas: id in TOLD ? 1 : stated.filter((one) => one.id === id).length,
    }));
    expect(formulas).toEqual(checked);
    expect(formulas.filter((one) => one.formulas === 0)).toEqual([]);
  });
});

describe("reading a formula", () => {
  it.each([
    ["=EXT.RULETABLES()", "RULETABLES", []],
    ['=EXT.DUE(2023,,"abroad")', "DUE", [2023, undefined, "out of country"]],
    ["=EXT.SUGGEST(1.5,-2,,5%,TRUE)", "SUGGEST", [1.5, -2, undefined, 0.05, true]],
    ['=EXT.DUE("say ""ME"", please",1)', "DUE", ['say "ME", please', 1]],
    ["=EXT.DUE(2025,)", "DUE", [2025, undefined]],
  ])("%s", (formula, id, values) => {
    expect(formulaCall(formula)).toEqual({ id, values });
  });

  it.each([["=DUE(2025)"], ["=EXT.DUE(A1)"], ['=EXT.DUE("open)']])("refuses %s", (formula) => {
    expect(() => formulaCall(formula)).toThrow(SyntaxError);
  });
});
