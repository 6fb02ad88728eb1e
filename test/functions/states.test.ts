import fc from "fast-check";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { STATES } from "../../src/calculation/state";
import { stateDue, stateExtended, stateRule } from "../../src/functions/states";
import { rulebook } from "../../src/rules/rulebook";
import published from "../fixtures/published/state-extension-dates.json";
import { RUNS } from "../calculation/arbitrary";
import { answerOf, badInput, down, inCell, notHeld, serial, type Refusal } from "./sheet";

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

  const title = "State extensions of time to file";
  const file = "(rules/state-extensions.json)";
  const DOUBTFUL = [
    ["KS", "Kansas", "the rule is only from memory"],
    ["MS", "Mississippi", "the rule is only from memory"],
    ["WV", "West Virginia", "the rule is only from memory"],
    ["DE", "Delaware", "reports of the rule disagree"],
  ] as const;
  const REFUSED: readonly (readonly [values: readonly [unknown, unknown], refusal: Refusal])[] = [
    [[2025, ""], badInput("state: is empty; give a postal code such as NY")],
    [[2025, "ZZ"], badInput('state: "ZZ" is no state; give a postal code such as ME, or foreign')],
    [
      ["2025-06-30", "NY"],
      badInput(
        "taxYear: 2025-06-30 ends a fiscal year; the states' rules are held for calendar years"
      ),
    ],
    [[2024, "NH"], notHeld(`${title}: New Hampshire is held only from tax year 2025 on ${file}`)],
    ...DOUBTFUL.map(
      ([state, name, doubt]) =>
        [
          [2025, state],
          notHeld(
            `${title}: ${name} is refused because ${doubt}; check the state's own text, or set acceptOld to yes ${file}`
          ),
        ] as const
    ),
    [[2025, "PR"], notHeld(`${title}: no rule is held for PR ${file}`)],
    [
      [2021, "CA"],
      notHeld(`${title}: no figure for 2021-12-31; held only from 2022-12-31 on ${file}`),
    ],
    [
      [2027, "CA"],
      notHeld(`${title}: no figure for 2027-12-31; known only through 2026-12-31 ${file}`),
    ],
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
      "paidShare: is empty; Massachusetts grants the extension only when 80% of its tax is paid by the due date, give the share paid",
    ],
    [
      [2025, "MA", "yes", ""],
      "paidShare: is empty; Massachusetts grants the extension only when 80% of its tax is paid by the due date, give the share paid",
    ],
    [[2025, "MA", "", 85], "paidShare: 85 is no share of a tax; give a fraction such as 90%"],
    [[2025, "MA", "", -0.1], "paidShare: -0.1 is no share of a tax; give a fraction such as 90%"],
    [
      [2025, "OH", "perhaps"],
      'federalExtended: "perhaps" is neither yes nor no; give yes, no, TRUE, FALSE, x, 1 or 0',
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
            expect(answer).toMatchObject({ message: expect.stringMatching(/^\S.*: .+/) });
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
  it("tells what the state grants, its days, its forms and how old the text is", () => {
    const table = stateRule(2025, "NY", "yes");
    expect(table[0]).toEqual(["What", "Day", "Text", "Source"]);
    expect(table.slice(1).map((row) => row.slice(0, 3))).toEqual([
      ["Extension", "", "New York: own request"],
      ["Regular due date", serial("2026-04-15"), "moved off a weekend only"],
      ["Extended due date", serial("2026-10-15"), "moved off a weekend only"],
      ["In this case", serial("2026-04-15"), "not granted: the regular day stands"],
      ["Condition", "", expect.stringMatching(/^Must be filed by the due date/)],
      ["Form to ask", "", "IT-370"],
      ["Form to pay", "", expect.stringMatching(/IT-370/)],
      ["Note", "", expect.stringMatching(/./)],
      [
        "Tax year of the text read",
        "",
        "none; the text read bears no year: check the state's current text",
      ],
    ]);
    for (const row of table.slice(1)) expect(row[3]).toMatch(/IT-370/);
  });

  it.each([
    ["CA", 2024, "2024; read for this tax year or a later one"],
    ["CA", 2025, "2024; read for an earlier tax year: check the state's current text"],
  ])("tells the age of the text: %s for %d", (state, taxYear, text) => {
    expect(rows(taxYear, state).get("Tax year of the text read")?.[2]).toBe(text);
  });

  const OPEN = ["", "open: give the share of the state tax paid by the due date"];
  const GRANTED = [serial("2026-10-15"), "granted"];
  const NOT = [serial("2026-04-15"), "not granted: the regular day stands"];
  it.each([
    [["MA"], OPEN],
    [["MA", "yes"], OPEN],
    [["MA", "", 0.8], GRANTED],
    [["MA", "", 0], NOT],
    [["NJ", "yes"], OPEN],
    [["NJ", "no"], NOT],
    [["NJ", "yes", "", "yes"], GRANTED],
    [["NJ", "yes", 0.8], GRANTED],
    [["OH", "yes"], GRANTED],
    [["OH"], NOT],
    [["AL"], GRANTED],
    [["NY", "", "", "yes"], GRANTED],
  ])("tells how it stands in the client's case: %j", (values, standing) => {
    expect(
      rows(2025, ...values)
        .get("In this case")
        ?.slice(1, 3)
    ).toEqual(standing);
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

  it("says that there is no return, and no day", () => {
    expect(stateRule(2025, "TX").slice(1)).toEqual([
      ["Extension", "", "Texas: no return to extend", expect.stringMatching(/./)],
      ["Condition", "", "No broad individual income tax", expect.stringMatching(/./)],
    ]);
  });

  it("names no form where there is none, and marks a text not seen", () => {
    expect(rows(2025, "AL").get("Form to ask")?.[2]).toBe("none");
    expect(rows(2025, "GA").get("Extension")?.[3]).toMatch(/\(as reported elsewhere\)$/);
    expect(rows(2025, "KS", "", "", "", "yes").get("Extension")?.[3]).toMatch(
      /\(from memory: check\)$/
    );
  });
});

/** What a host shows is decided with the first answer, so that each case needs the module anew. */
describe("a day that rests on an old text", () => {
  beforeEach(() => {
    vi.resetModules();
    vi.stubGlobal("Office", { context: { requirements: { isSetSupported: () => true } } });
  });
  afterEach(() => {
    vi.unstubAllGlobals();
    vi.resetModules();
  });

  it.each([
    ["CA", 2024, "yyyy-mm-dd"],
    ["CA", 2025, 'yyyy-mm-dd" (rule of 2024)"'],
    ["AL", 2025, 'yyyy-mm-dd" (rule of 2020)"'],
    ["GA", 2025, 'yyyy-mm-dd" (undated rule)"'],
  ])("is marked where the host shows formats: %s for %d", async (state, taxYear, numberFormat) => {
    const fresh = await import("../../src/functions/states");
    const day = `${String(taxYear + 1)}-04-15`;
    const expected = { type: "Double", basicValue: serial(day), numberFormat };
    expect(inCell(fresh.stateDue, taxYear, state)).toEqual(expected);
    expect(inCell(fresh.stateExtended, taxYear, state, "no")).toMatchObject({ numberFormat });
    const table = fresh.stateRule(taxYear, state);
    expect(table[2]?.[1]).toEqual(expected);
    expect(table[3]?.[1]).toMatchObject({ numberFormat });
  });
});
