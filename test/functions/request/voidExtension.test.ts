import { describe, expect, it } from "vitest";
import { fromCatalog } from "../fromCatalog";
import { inCell } from "../sheet";

/** The issues about the estimate, each with what to do and its source. */
function estimateIssues(totalTax: number, priorYearTax: number): readonly unknown[][] {
  const cells: unknown[] = [2025, totalTax, 0, totalTax, "4/10/2026"];
  const table = fromCatalog("ISSUES")(...cells, ...Array<null>(9).fill(null), priorYearTax);
  return (table as unknown[][]).filter(([, issue]) =>
    /^The estimated total tax is/.test(String(issue))
  );
}

describe("an extension on an estimate that was not reasonable", () => {
  // Crocker v. Commissioner, 92 T.C. 899, 908, 910, as restated in Kellahan, T.C. Memo. 1999: a zero against ample evidence is void.
  it("is a risk with an estimate of zero after tax last year, with what falls with it", () => {
    const [[severity, , , amount, , remedy, source] = []] = estimateIssues(0, 9000);
    expect([severity, amount]).toEqual(["risk", 9000]);
    expect(remedy).toMatch(/void.*failure-to-file penalty.*90% test.*plan, gift tax and refund/is);
    expect(source).toContain("Crocker v. Commissioner, 92 T.C. 899");
  });

  // Healey v. Commissioner, T.C. Memo. 1996: two thirds of the tax without a method, so the extension was void.
  it("is a reminder with an estimate of two thirds of last year's tax", () => {
    const [[severity, , , , , remedy, source] = []] = estimateIssues(20_000, 30_000);
    expect(severity).toBe("reminder");
    expect(remedy).toContain("Crocker v. Commissioner, 92 T.C. 899");
    expect(source).toContain("Healey");
  });

  // Kellahan v. Commissioner, T.C. Memo. 1999, page 23: an estimate that was wrong, but reasonable on what was known, is valid.
  it("is not suspected because an estimate is lower than last year's tax", () => {
    expect(estimateIssues(20_101, 30_000)).toEqual([]);
  });

  // 26 U.S.C. 6651(a)(1), (2), (c)(1); Crocker at 910 to 914, computed: five months of 4.5% net of failure to pay, six months of 0.5%.
  it("costs the failure-to-file penalty from the regular due date", () => {
    const lines = (validExtension: string): readonly unknown[][] => {
      const cells = [2024, 10_000, 0, "10/15/2025", "10/15/2025", validExtension];
      return fromCatalog("CHARGELINES")(...cells) as unknown[][];
    };
    const sumOf = (table: readonly unknown[][], words: RegExp): number =>
      table
        .filter(([item]) => words.test(String(item)) && !/^interest/i.test(String(item)))
        .reduce((sum, row) => sum + Number(row[7]), 0);
    const ofFiling = /failure to file|failure-to-file|less failure-to-pay/i;
    expect(sumOf(lines("no"), ofFiling)).toBe(2250);
    expect(sumOf(lines("yes"), ofFiling)).toBe(0);
    expect(inCell(fromCatalog("LATEPAY"), 2024, 10_000, "10/15/2025")).toBe(300);
  });
});
