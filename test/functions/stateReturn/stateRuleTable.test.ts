import { describe, expect, it } from "vitest";
import { stateDue, stateExtended, stateRule } from "../../../src/functions/stateReturn/stateDates";
import { rulebook } from "../../../src/rules/rulebook";
import published from "../../fixtures/published/state-extension-dates.json";
import { inCell, serial } from "../sheet";

/** What makes a state of each kind grant the extension. */
const YES = ["yes", 1, "yes", "yes"];

/** What is in doubt in Idaho: a bill of 2025 whose enactment was not seen. */
const A_BILL =
  "a 2025 bill can have moved its extended due date to November 15 without a payment, and its enactment was not seen";

describe("STATERULE", () => {
  const rows = (...values: unknown[]): ReadonlyMap<unknown, readonly unknown[]> =>
    new Map(stateRule(values[0], values[1], ...values.slice(2)).map((row) => [row[0], row]));

  // IT-370 instructions.
  it("shows what the state grants, its dates, its forms and the age of the text", () => {
    const table = stateRule(2025, "NY", "yes");
    expect(table[0]).toEqual(["Item", "Date", "Text", "Source"]);
    expect(table.slice(1).map((row) => row.slice(0, 3))).toEqual([
      ["Extension", "", "New York: on the state's own request"],
      ["Regular due date", serial("2026-04-15"), "moved from weekends only"],
      ["Extended due date", serial("2026-10-15"), "moved from weekends only"],
      ["In this case", serial("2026-04-15"), "not granted; the regular due date applies"],
      ["Grants the extension", "", expect.stringMatching(/^File the request by the due date/)],
      ["Out of the country", "", expect.stringMatching(/June 15/)],
      ["Request form", "", "IT-370"],
      ["Payment form", "", expect.stringMatching(/IT-370/)],
      ["Note", "", expect.stringMatching(/./)],
    ]);
    for (const row of table.slice(1))
      expect(row[3]).toBe(
        "New York IT-370, instructions (text read on 11/25/2026 shows no tax year)"
      );
  });

  // test/fixtures/published/state-extension-dates.json and the texts it names
  it.each([
    [
      "a current official text",
      "IL",
      2024,
      "Illinois Department of Revenue, reminder of April 2025, tax year 2024",
    ],
    [
      "an older one",
      "IL",
      2025,
      "Illinois Department of Revenue, reminder of April 2025, tax year 2024 (text for tax year 2024)",
    ],
    ["a report", "MD", 2025, "Reports of the state due dates of 2026, Maryland (secondary source)"],
    [
      "an older report",
      "MD",
      2026,
      "Reports of the state due dates of 2026, Maryland (secondary source; text for tax year 2025)",
    ],
  ])("says beside the dates how far %s goes", (_what, state, taxYear, source) => {
    const found = rows(taxYear, state);
    expect(found.get("Regular due date")?.[3]).toBe(source);
    expect(found.get("Extended due date")?.[3]).toBe(source);
  });

  const ofItem = (item: string, ...values: unknown[]): readonly unknown[][] =>
    stateRule(values[0], values[1], ...values.slice(2)).filter((row) => row[0] === item);

  // 280-RICR-20-55-2.5 and 2.6; A.R.S. 42-1107
  it("has one row for each condition, and tells what grants from what avoids a penalty", () => {
    expect(ofItem("Grants the extension", 2025, "RI").map((row) => [row[2], row[3]])).toEqual([
      [
        "With a federal extension and no payment needed, no form is filed",
        "280-RICR 20-55-2.6 (text for tax year 2024)",
      ],
      [
        "RI-4868 by the due date with a proper estimate: at least 80% of the tax",
        "280-RICR 20-55-2.5 (text for tax year 2024)",
      ],
    ]);
    expect(ofItem("Grants the extension", 2025, "AZ")).toHaveLength(2);
    expect(ofItem("Avoids a penalty", 2025, "AZ")).toHaveLength(1);
    expect(rows(2025, "RI").get("Extension")?.[2]).toBe(
      "Rhode Island: with the federal extension if 100% is paid; on the state's own request if 80% is paid"
    );
  });

  // SCDOR, January 2026: May 1, a Friday in 2026; NMSA 7-2-12: April 30; OAC 710:50-3-3: April 20
  it.each([
    ["SC", 2025, "2026-05-01"],
    ["NM", 2025, "2026-04-30"],
    ["OK", 2025, "2026-04-20"],
    // April 20, 2025 is a Sunday
    ["OK", 2024, "2025-04-21"],
  ])("has the electronic due date of %s for %d", (state, taxYear, day) => {
    expect(ofItem("Electronic due date", taxYear, state).map((row) => row[1])).toEqual([
      serial(day),
    ]);
  });

  it("does not show South Carolina's electronic due date before the year it was read for", () => {
    expect(ofItem("Electronic due date", 2024, "SC")).toEqual([]);
  });

  // Neb. Admin. Code 316-22-014: June 15, a Monday in 2026
  it("has the date of a filer out of the country where the state names one", () => {
    expect(ofItem("Out of the country", 2025, "NE")[0]?.[1]).toBe(serial("2026-06-15"));
    expect(ofItem("Out of the country", 2025, "CO")[0]?.[1]).toBe("");
  });

  it("shows the doubt beside a condition only if it is asked for", () => {
    expect(ofItem("Grants the extension", 2025, "ID", "", "", "", "yes")[0]?.[3]).toBe(
      `Idaho Form 51, edition of 2024; Idaho Code 63-3033(a) (text for tax year 2024; ${A_BILL})`
    );
    const notes = ofItem("Note", 2025, "ID", "", "", "", "yes");
    expect(notes.map((row) => row[2])).toEqual([expect.stringMatching(/^2025 bill: seven months/)]);
    expect(ofItem("Note", 2024, "ID")).toEqual([]);
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
    [["NJ", "yes", "", "yes"], UNKNOWN],
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
    const source =
      "Reports of states without an individual income tax, tax year 2025 (secondary source)";
    expect(stateRule(2025, "TX").slice(1)).toEqual([
      ["Extension", "", "Texas: no return to extend", source],
      ["Note", "", "No broad individual income tax", source],
    ]);
  });

  it("names no form where there is none, and marks a text that was not read", () => {
    expect(rows(2025, "AL").get("Request form")?.[2]).toBe("none");
    expect(rows(2025, "AL").get("Penalty")?.[3]).toBe(
      "Reports of state penalties and interest, Alabama (secondary source; text read on 11/26/2026 shows no tax year)"
    );
    expect(rows(2025, "KS").get("Penalty")?.[3]).toBe(
      "No state text seen, Kansas: penalty (unverified: check the official text)"
    );
    expect(ofItem("Grants the extension", 2025, "MS", "", "", "", "yes")[0]?.[3]).toBe(
      "No state text seen, Mississippi: federal extension (unverified: check the official text)"
    );
  });

  it("shows every term of every state once", () => {
    for (const { state, terms } of rulebook.stateExtensions.rows) {
      const texts = stateRule(2026, state, "", "", "", "yes").map((row) => row[2]);
      for (const { text } of terms) expect(texts).toContain(text);
    }
  });
});
