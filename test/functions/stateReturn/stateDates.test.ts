import fc from "fast-check";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { stateDue, stateExtended, stateRule } from "../../../src/functions/stateReturn/stateDates";
import { STATES } from "../../../src/calculation/state";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/state-extension-dates.json";
import { RUNS } from "../../calculation/arbitrary";
import {
  answerOf,
  badInput,
  down,
  inCell,
  notInTable,
  type Refusal,
  serial,
  afterTable,
  beforeTable,
  tableTitle,
} from "../sheet";

/** A Saturday or Sunday goes to Monday: common practice, no source. 1900-01-01 is serial 1, a Monday from March 1900 on by serial modulo 7. */
function offWeekend(day: string): number {
  const date = serial(day);
  const onSaturday = date % 7 === 0;
  const onSunday = date % 7 === 1;
  return date + (onSaturday ? 2 : onSunday ? 1 : 0);
}

/** What makes a state of each kind grant the extension. */
const YES = ["yes", 1, "yes", "yes"];
const NO = ["no", 0, "no", "yes"];

describe("STATEDUE and STATEEXTENDED", () => {
  it.each(published.cases)("$case ($source.mark, $source.section)", ({ inputs, expected }) => {
    for (const taxYear of [2022, 2023, 2024, 2025, 2026]) {
      const next = String(taxYear + 1);
      const due = offWeekend(`${next}-${expected.due}`);
      const extended = offWeekend(`${next}-${expected.extended}`);
      expect(inCell(stateDue, taxYear, inputs.state, "yes")).toBe(due);
      expect(inCell(stateExtended, taxYear, inputs.state, ...YES)).toBe(extended);
      const refused = expected.grant === "automatic" ? extended : due;
      expect(inCell(stateExtended, taxYear, inputs.state, ...NO)).toBe(refused);
    }
  });

  it.each([
    // weekends to be seen in a calendar: 2025-11-15 and 2025-11-01 Saturdays, 2026-11-15 and 2026-11-01 Sundays
    [2024, "LA", "2025-11-17"],
    [2024, "VA", "2025-11-03"],
    [2025, "LA", "2026-11-16"],
    [2025, "VA", "2026-11-02"],
    [2025, "AL", "2026-10-15"],
  ])("move off a weekend: %d, %s", (taxYear, state, day) => {
    expect(inCell(stateExtended, taxYear, state)).toBe(serial(day));
  });

  it.each([
    ["a federal request that is taken", ["OH", "yes"], "2026-10-15"],
    ["none", ["OH", "no"], "2026-04-15"],
    ["a blank, which is none", ["OH", ""], "2026-04-15"],
    ["a federal request that is not taken", ["NY", "yes"], "2026-04-15"],
    ["the state's own", ["NY", "", "", "x"], "2026-10-15"],
    ["enough paid", ["MA", "", "80%"], "2026-10-15"],
    ["a percent less", ["MA", "", 0.79], "2026-04-15"],
    ["nothing paid, a zero meant", ["MA", "", 0], "2026-04-15"],
    ["a share with a federal request", ["NJ", "yes", 0.8], "2026-10-15"],
    ["too small a share with it", ["NJ", "yes", 0.79], "2026-04-15"],
    ["its own request instead", ["NJ", "yes", "", "yes"], "2026-10-15"],
    ["no request, where the share does not matter", ["NJ", "no"], "2026-04-15"],
  ])("look at %s", (_what, values, day) => {
    expect(inCell(stateExtended, 2025, ...values)).toBe(serial(day));
  });

  it("answer that there is no return", () => {
    for (const state of ["AK", "FL", "NH", "NV", "SD", "TN", "TX", "WA", "WY"]) {
      expect(inCell(stateDue, 2025, state)).toBe("no return");
      expect(inCell(stateExtended, 2025, state, "yes", 1, "yes")).toBe("no return");
    }
  });

  const title = tableTitle("state-extensions");
  const file = "(rules/state-extensions.json)";
  const DOUBTFUL = [
    ["KS", "Kansas", "the rule is unverified"],
    ["MS", "Mississippi", "the rule is unverified"],
    ["WV", "West Virginia", "the rule is unverified"],
    ["DE", "Delaware", "the sources disagree"],
  ] as const;
  const REFUSED: readonly (readonly [values: readonly [unknown, unknown], refusal: Refusal])[] = [
    [
      [2025, ""],
      badInput("state: The cell is blank. Enter a postal code or a name, such as ME or Maine."),
    ],
    [
      [2025, "ZZ"],
      badInput(
        'state: "ZZ" is not a state. Enter a postal code or a name, such as ME or Maine, or foreign.'
      ),
    ],
    [
      ["2025-06-30", "NY"],
      badInput(
        "taxYear: 6/30/2025 is the end of a fiscal year. The state rules cover calendar years only. Enter a year such as 2025."
      ),
    ],
    [
      [2024, "NH"],
      notInTable(
        `${title}: New Hampshire is covered from tax year 2025 ${file}. Check the state's instructions for that year.`
      ),
    ],
    ...DOUBTFUL.map(
      ([state, name, doubt]) =>
        [
          [2025, state],
          notInTable(
            `${title}: ${name} is not shown because ${doubt}. Check the state's current instructions, or set allowUnverified to yes.`
          ),
        ] as const
    ),
    [
      [2025, "PR"],
      notInTable(
        `${title}: There is no rule for PR ${file}. Check the state's current instructions.`
      ),
    ],
    [[2021, "CA"], beforeTable("state-extensions", "12/31/2021", "12/31/2022")],
    [[2027, "CA"], afterTable("state-extensions", "12/31/2027", "12/31/2026")],
    [[{ code: "#DIV/0!" }, "CA"], { code: "#DIV/0!" }],
  ];

  it.each(REFUSED)("refuse %j", (values, refusal) => {
    expect(inCell(stateDue, ...values)).toEqual(refusal);
    expect(inCell(stateExtended, ...values)).toEqual(refusal);
    expect(answerOf(() => stateRule(...values))).toEqual(refusal);
  });

  it("take a year written as the last day of the calendar year", () => {
    expect(inCell(stateDue, "2025-12-31", "NY")).toBe(serial("2026-04-15"));
  });

  it.each([
    [
      [2025, "MA"],
      "percentPaid: The cell is blank. Massachusetts grants the extension only if 80% of its tax is paid by the due date. Enter the percent paid.",
    ],
    [
      [2025, "MA", "yes", ""],
      "percentPaid: The cell is blank. Massachusetts grants the extension only if 80% of its tax is paid by the due date. Enter the percent paid.",
    ],
    [
      [2025, "MA", "", 85],
      "percentPaid: 85 is not a percent of a tax. Enter a percent such as 90%.",
    ],
    [
      [2025, "MA", "", -0.1],
      "percentPaid: -0.1 is not a percent of a tax. Enter a percent such as 90%.",
    ],
    [
      [2025, "OH", "perhaps"],
      'federalExtension: "perhaps" is not yes or no. Enter yes, no, TRUE, FALSE, x, 1 or 0.',
    ],
  ])("refuse what STATEEXTENDED needs: %j", (values, sentence) => {
    expect(inCell(stateExtended, ...values)).toEqual(badInput(sentence));
  });

  it("answer a client list, each row for itself", () => {
    expect(stateDue(down(2025, 2025, 2025, 0), down("VA", "KS", "TX", ""))).toEqual([
      [serial("2026-05-01")],
      [expect.objectContaining({ code: "#N/A" })],
      ["no return"],
      [""],
    ]);
  });
});

describe("every state in every year", () => {
  const years = fc.integer({ min: 2020, max: 2028 });
  const yesNo = fc.constantFrom("yes", "no", "");
  const shares = fc.constantFrom<unknown>("", 0, 0.5, 0.8, 0.9, 1, "110%");

  it("is answered with its own days or refused with a sentence, and never extended before due", () => {
    const codes = fc.constantFrom(...STATES);
    fc.assert(
      fc.property(years, codes, yesNo, shares, yesNo, yesNo, (year, state, f, share, o, old) => {
        const due = inCell(stateDue, year, state, old);
        const extended = inCell(stateExtended, year, state, f, share, o, old);
        const rule = rulebook.stateExtensions.rows.find((row) => row.state === state);
        const days = [rule?.dueDay, rule?.extendedDay].map((named) =>
          named === undefined ? "no return" : offWeekend(`${String(year + 1)}-${named}`)
        );
        for (const answer of [due, extended])
          if (typeof answer === "object")
            expect(answer).toMatchObject({ message: expect.stringMatching(/^\S.*: .+/) as string });
          else expect(days).toContain(answer);
        if (typeof due !== "object") expect(due).toBe(days[0]);
        if (typeof due === "number" && typeof extended === "number")
          expect(extended).toBeGreaterThanOrEqual(due);
        if (typeof due === "object") expect(extended).toEqual(due);
      }),
      { ...RUNS, numRuns: 1000 }
    );
  });
});

describe("STATERULE", () => {
  const rows = (...values: unknown[]): ReadonlyMap<unknown, readonly unknown[]> =>
    new Map(stateRule(values[0], values[1], ...values.slice(2)).map((row) => [row[0], row]));

  // IT-370 instructions.
  it("shows what the state grants, its dates, its forms and the age of the text", () => {
    const table = stateRule(2025, "NY", "yes");
    expect(table[0]).toEqual(["Item", "Date", "Text", "Source"]);
    expect(table.slice(1).map((row) => row.slice(0, 3))).toEqual([
      ["Extension", "", "New York: own request"],
      ["Regular due date", serial("2026-04-15"), "moved from weekends only"],
      ["Extended due date", serial("2026-10-15"), "moved from weekends only"],
      ["In this case", serial("2026-04-15"), "not granted; the regular due date applies"],
      ["Condition", "", expect.stringMatching(/^File the request by the due date/)],
      ["Request form", "", "IT-370"],
      ["Payment form", "", expect.stringMatching(/IT-370/)],
      ["Note", "", expect.stringMatching(/./)],
      ["Tax year of the text", "", "none; the text has no year; check the state's current text"],
    ]);
    for (const row of table.slice(1)) expect(row[3]).toMatch(/IT-370/);
  });

  it.each([
    ["CA", 2024, "2024; read for this tax year or a later one"],
    ["CA", 2025, "2024; read for an earlier tax year; check the state's current text"],
  ])("tells the age of the text: %s for %d", (state, taxYear, text) => {
    expect(rows(taxYear, state).get("Tax year of the text")?.[2]).toBe(text);
  });

  const UNKNOWN = ["", "unknown: enter the percent of state tax paid by the due date"];
  const GRANTED = [serial("2026-10-15"), "granted"];
  const NOT = [serial("2026-04-15"), "not granted; the regular due date applies"];
  it.each([
    [["MA"], UNKNOWN],
    [["MA", "yes"], UNKNOWN],
    [["MA", "", 0.8], GRANTED],
    [["MA", "", 0], NOT],
    [["NJ", "yes"], UNKNOWN],
    [["NJ", "no"], NOT],
    [["NJ", "yes", "", "yes"], GRANTED],
    [["NJ", "yes", 0.8], GRANTED],
    [["OH", "yes"], GRANTED],
    [["OH"], NOT],
    [["AL"], GRANTED],
    [["NY", "", "", "yes"], GRANTED],
  ])("says whether it is granted in this case: %j", (values, inThisCase) => {
    expect(
      rows(2025, ...values)
        .get("In this case")
        ?.slice(1, 3)
    ).toEqual(inThisCase);
  });

  it("agrees with STATEDUE and STATEEXTENDED", () => {
    for (const { inputs } of published.cases) {
      const found = rows(2025, inputs.state, ...YES);
      expect(found.get("Regular due date")?.[1]).toBe(inCell(stateDue, 2025, inputs.state, "yes"));
      const extended = inCell(stateExtended, 2025, inputs.state, ...YES);
      expect(found.get("Extended due date")?.[1]).toBe(extended);
      expect(found.get("In this case")?.[1]).toBe(extended);
    }
  });

  it("says that there is no return, without a date", () => {
    expect(stateRule(2025, "TX").slice(1)).toEqual([
      ["Extension", "", "Texas: no return to extend", expect.stringMatching(/./)],
      ["Condition", "", "No broad individual income tax", expect.stringMatching(/./)],
    ]);
  });

  it("names no form where there is none, and marks a text that was not read", () => {
    expect(rows(2025, "AL").get("Request form")?.[2]).toBe("none");
    expect(rows(2025, "GA").get("Extension")?.[3]).toMatch(/\(secondary source\)$/);
    expect(rows(2025, "KS", "", "", "", "yes").get("Extension")?.[3]).toMatch(
      /\(unverified: check the official text\)$/
    );
  });
});

/** What a host shows is decided with the first answer, so that each case needs the module anew. */
describe("a date from an old text", () => {
  beforeEach(() => {
    vi.resetModules();
    vi.stubGlobal("Office", { context: { requirements: { isSetSupported: () => true } } });
  });
  afterEach(() => {
    vi.unstubAllGlobals();
    vi.resetModules();
  });

  it.each([
    ["CA", 2024, "m/d/yyyy"],
    ["CA", 2025, 'm/d/yyyy" (rule of 2024)"'],
    ["AL", 2025, 'm/d/yyyy" (rule of 2020)"'],
    ["GA", 2025, 'm/d/yyyy" (undated rule)"'],
  ])("is marked where the host shows formats: %s for %d", async (state, taxYear, numberFormat) => {
    const fresh = await import("../../../src/functions/stateReturn/stateDates");
    const day = `${String(taxYear + 1)}-04-15`;
    const expected = { type: "Double", basicValue: serial(day), numberFormat };
    expect(inCell(fresh.stateDue, taxYear, state)).toEqual(expected);
    expect(inCell(fresh.stateExtended, taxYear, state, "no")).toMatchObject({ numberFormat });
    const table = fresh.stateRule(taxYear, state);
    expect(table[2]?.[1]).toEqual(expected);
    expect(table[3]?.[1]).toMatchObject({ numberFormat });
  });
});
