import { describe, expect, it } from "vitest";
import { figureForStatus } from "../../src/calculation/figureForStatus";
import { FILING_STATUSES } from "../../src/calculation/filingStatus";

describe("the figure for a filing status", () => {
  // IRC section 1411(b): joint or surviving spouse, separate, any other case.
  it("is that of the status, or that of all others", () => {
    const figures = { joint: 250_000, survivor: 250_000, separate: 125_000, others: 200_000 };
    expect(FILING_STATUSES.map((status) => [status, figureForStatus(figures, status)])).toEqual([
      ["single", 200_000],
      ["joint", 250_000],
      ["separate", 125_000],
      ["head", 200_000],
      ["survivor", 250_000],
    ]);
  });
});
