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

/** What is in doubt in Idaho: a bill of 2025 whose enactment was not seen. */
const A_BILL =
  "a 2025 bill can have moved its extended due date to November 15 without a payment, and its enactment was not seen";

describe("STATEDUE and STATEEXTENDED", () => {
  it.each(published.cases)("$case ($source.mark, $source.section)", ({ inputs, expected }) => {
    for (const taxYear of [2022, 2023, 2024, 2025, 2026]) {
      const next = String(taxYear + 1);
      const due = offWeekend(`${next}-${expected.due}`);
      const extended = offWeekend(`${next}-${expected.extended}`);
      expect(inCell(stateDue, taxYear, inputs.state, "yes")).toBe(due);
      expect(inCell(stateExtended, taxYear, inputs.state, ...YES)).toBe(extended);
      const isAutomatic = expected.ways.some(([by, share]) => by === "automatic" && share === null);
      const without = isAutomatic ? extended : due;
      expect(inCell(stateExtended, taxYear, inputs.state, ...NO)).toBe(without);
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
    // N.J.A.C. 18:35-6.1: 80% also with NJ-630
    ["its own request with too small a share", ["NJ", "", 0.79, "yes"], "2026-04-15"],
    // A.R.S. 42-1107(B): 90% with a federal extension
    ["Arizona's 90%", ["AZ", "yes", "90%"], "2026-10-15"],
    ["less than Arizona's 90%", ["AZ", "yes", "89.99%"], "2026-04-15"],
    // 280-RICR-20-55-2.5: 80% with RI-4868
    ["Rhode Island's 80% with its form", ["RI", "yes", "80%", "yes"], "2026-10-15"],
    ["Rhode Island's 80% without its form", ["RI", "yes", "80%"], "2026-04-15"],
    // Oklahoma Form 504: 90% with 504-I
    ["Oklahoma's 90% with its form", ["OK", "yes", "90%", "yes"], "2026-10-15"],
    ["Oklahoma's 90% without its form", ["OK", "yes", "90%"], "2026-04-15"],
    // S.C. Code 12-6-4980, 12-54-70: less than 90% is a penalty, not the extension
    ["South Carolina's own request with little paid", ["SC", "", "10%", "yes"], "2026-10-15"],
    // Ind. Code 6-8.1-6-1(c): one month after October 15, moved from a Sunday
    ["Indiana's month more", ["IN", "yes"], "2026-11-16"],
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
    [2025, "MS", "Mississippi", "the rule is unverified"],
    [2022, "DE", "Delaware", "its sources disagree on the request and the percent to pay"],
    [2025, "ID", "Idaho", A_BILL],
    [2026, "ID", "Idaho", A_BILL],
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

  it.each(DOUBTFUL)("refuse the extension in doubt: %d, %s", (taxYear, state, name, doubt) => {
    const refusal = notInTable(
      `${title}: ${name} is not shown because ${doubt}. Check the state's current instructions, or set allowUnverified to yes.`
    );
    for (const values of [[], ["yes", 1], ["no", 0]]) {
      expect(inCell(stateExtended, taxYear, state, ...values)).toEqual(refusal);
      expect(answerOf(() => stateRule(taxYear, state, ...values))).toEqual(refusal);
    }
  });

  // Only the terms that grant the extension are in doubt there; the dates were read (test/fixtures/published).
  it.each([
    [2025, "DE", "2026-04-30"],
    [2025, "MS", "2026-04-15"],
    [2025, "ID", "2026-04-15"],
  ])(
    "answer the regular due date where only the extension is in doubt: %d, %s",
    (year, state, day) => {
      expect(inCell(stateDue, year, state)).toBe(serial(day));
    }
  );

  // Form 51 of 2024; the bill would take effect on January 1, 2026.
  it("answer Idaho's extension for tax year 2024", () => {
    expect(inCell(stateExtended, 2024, "ID", "", "80%")).toBe(serial("2025-10-15"));
    expect(inCell(stateExtended, 2024, "ID", "", "79%")).toBe(serial("2025-04-15"));
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
      [2025, "AZ", "yes"],
      "percentPaid: The cell is blank. Arizona grants the extension only if 90% of its tax is paid by the due date. Enter the percent paid.",
    ],
    [
      [2025, "RI", "yes", "", "yes"],
      "percentPaid: The cell is blank. Rhode Island grants the extension only if 80% of its tax is paid by the due date. Enter the percent paid.",
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
    expect(stateDue(down(2025, 2025, 2025, 0), down("VA", "PR", "TX", ""))).toEqual([
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
        if (typeof due === "object")
          expect(extended).toMatchObject({ code: expect.any(String) as string });
      }),
      { ...RUNS, numRuns: 1000 }
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
    ["CA", 2024],
    ["CA", 2025],
    ["GA", 2025],
    ["MD", 2025],
  ])("is a date like any other where the host shows formats: %s for %d", async (state, taxYear) => {
    const fresh = await import("../../../src/functions/stateReturn/stateDates");
    const day = `${String(taxYear + 1)}-04-15`;
    const expected = { type: "Double", basicValue: serial(day), numberFormat: "m/d/yyyy" };
    expect(inCell(fresh.stateDue, taxYear, state)).toEqual(expected);
    expect(inCell(fresh.stateExtended, taxYear, state, "no")).toMatchObject({
      numberFormat: "m/d/yyyy",
    });
    const table = fresh.stateRule(taxYear, state);
    expect(table[2]?.[1]).toEqual(expected);
    expect(table[3]?.[1]).toMatchObject({ numberFormat: "m/d/yyyy" });
  });
});
