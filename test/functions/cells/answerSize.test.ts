import { describe, expect, it } from "vitest";
import { withFormattedNumbers } from "../../../src/functions/cells/numberFormats";
import { fromCatalog } from "../fromCatalog";
import { answerOf, badInput, down } from "../sheet";

// Excel takes 5 MB a request: OfficeDev/office-js, issue 4654. A formatted number has 63 characters here, with its brackets.
describe("an answer that is too large for Excel", () => {
  const years = (rows: number): unknown[][] => down(...Array.from({ length: rows }, () => 2025));

  it("is refused with the number of rows that fit", () => {
    const dueDates = (rows: number): unknown =>
      withFormattedNumbers("double", () => answerOf(() => fromCatalog("DUE")(years(rows))));
    const refusal = dueDates(90_000);
    const { message } = refusal as { message: string };
    const [, rows = ""] = /parts of at most ([\d,]+) rows\.$/.exec(message) ?? [];
    expect(refusal).toEqual(
      badInput(
        `taxYear: The answer for 90,000 rows is too large for Excel. Split the list into parts of at most ${rows} rows.`
      )
    );
    const fitting = Number(rows.replace(",", ""));
    expect(fitting).toBeGreaterThan(50_000);
    expect(dueDates(fitting)).toHaveLength(fitting);
  });

  it("is refused for a table too", () => {
    const list = [
      ["Client", "Total tax", "Payments"],
      ...down(...years(14_000)).map(() => ["A", 20_000, 15_000]),
    ];
    const refusal = withFormattedNumbers("double", () =>
      answerOf(() => fromCatalog("ROSTER")(list, 2025, "4/1/2026"))
    );
    expect((refusal as { message?: string }).message).toMatch(
      /^clientList: The answer for 14,001 rows is too large for Excel\. Split the list into parts of at most [\d,]+ rows\.$/
    );
  });
});
