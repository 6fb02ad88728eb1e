import { describe, expect, it } from "vitest";
import { catalog } from "../../../src/functions/catalog";

type Rows = readonly (readonly unknown[])[];

/** The rows that a function answers. `null` is an omitted argument. */
const rowsOf = (id: string, ...cells: unknown[]): Rows => catalog[id]?.answer(cells) as Rows;

const GEORGIA = ["GA", null, "2024-09-24", "2025-05-01"];
const method = (paying: number, asOf: string): unknown =>
  rowsOf("METHOD", 2024, paying, asOf, null, ...GEORGIA)[0]?.[0];
const shown = (cell: unknown): unknown =>
  typeof cell === "object" && cell !== null && "basicValue" in cell ? cell.basicValue : cell;

// IR-2025-41 (April 4, 2025), as reported: in nine states requests from April 15 to May 1, 2025, only on paper Form 4868.
describe("METHOD and METHODLINES under a disaster postponement", () => {
  it.each([
    [0, "2025-04-15", "e-file"],
    [100, "2025-04-15", "electronic payment"],
    [0, "2025-04-16", "paper"],
    [100, "2025-04-16", "paper"],
    [0, "2025-05-01", "paper"],
    [0, "2025-05-02", "too late"],
  ])("with %d dollars on %s answer %s", (paying, asOf, best) => {
    expect(method(paying, asOf)).toBe(best);
  });

  it("list a deadline for each method", () => {
    const rows = rowsOf("METHODLINES", 2024, 100, "2025-04-16", null, ...GEORGIA);
    // Worksheet dates: 45762 is April 15, 2025; 45778 is May 1, 2025.
    expect(rows.slice(1).map((row) => row.slice(0, 3).map(shown))).toEqual([
      ["paper", "yes", 45_778],
      ["electronic payment", "no: the deadline has passed", 45_762],
      ["e-file", "no: the deadline has passed", 45_762],
    ]);
    expect(rows.map((row) => String(row.at(-1))).join()).toContain("IR-2025-41");
  });
});

describe("ISSUES under a disaster postponement", () => {
  const issues = (way: string, requestedOn: string, asOf: string): Rows => {
    const request = [2024, 1000, 0, 100, asOf, requestedOn];
    const nothing = [null, null, null];
    const details = [way, null, null, null, 0, "2024-09-24", "2025-05-01"];
    return rowsOf("ISSUES", ...request, ...nothing, "GA", null, ...details);
  };

  // IR-2025-41, as reported.
  it.each([
    ["e-file", "2025-04-20", /^E-file closes/, "problem"],
    ["electronic payment", "2025-04-20", /^An electronic payment after/, "risk"],
  ])("reports a request by %s on %s", (way, requestedOn, what, severity) => {
    const row = issues(way, requestedOn, "2025-04-20").find(([, issue]) =>
      what.test(String(issue))
    );
    expect(row?.[0]).toBe(severity);
    expect(shown(row?.[2])).toBe(45_762);
    expect(row?.at(-1)).toContain("IR-2025-41");
  });

  it.each([
    ["paper", "2025-04-20"],
    ["e-file", "2025-04-15"],
    ["electronic payment", "2025-04-15"],
  ])("does not report one by %s on %s", (way, requestedOn) => {
    const text = JSON.stringify(issues(way, requestedOn, "2025-04-20"));
    expect(text).not.toContain("IR-2025-41");
  });
});

describe("ROSTER under a disaster postponement", () => {
  // IR-2025-41, as reported.
  it.each([
    ["2025-04-15", "e-file"],
    ["2025-04-16", "paper"],
  ])("answers the method as of %s: %s", (asOf, best) => {
    const list = [
      ["Client", "Total tax", "Payments", "Postponement begins", "Postponement ends"],
      ["Alder", 1000, 0, "2024-09-24", "2025-05-01"],
    ];
    const [heads = [], row = []] = rowsOf("ROSTER", list, 2024, asOf);
    expect(row[heads.indexOf("Method")]).toBe(best);
  });
});
