import { describe, expect, it } from "vitest";
import { CLIENT_LIST_HEADINGS } from "../../../src/functions/arguments/clientListHeadings";
import { ROSTER_HEADINGS } from "../../../src/functions/season/rosterColumns";
import { rosterHeadings } from "../../../src/functions/season/rosterHeadings";
import { inventedLists, keptLists } from "../../fixtures/invented/clientLists";
import { messyLists } from "../../fixtures/invented/messyLists";
import { answerOf, badInput } from "../sheet";

describe("ROSTERHEADINGS", () => {
  it.each([...inventedLists, ...keptLists, ...messyLists])(
    "says what each heading is read as, and which are not used: $title",
    ({ cells, reading, suspect = [] }) => {
      const [headings, ...rows] = rosterHeadings(cells as unknown[][], 2025);
      expect(headings).toEqual(["Your heading", "Read as", "Remark"]);
      expect(rows.map(([heading, readAs]) => [heading, readAs])).toEqual(
        cells[0]?.map((heading, index) => {
          const field = reading[index];
          return [heading, field === undefined ? "not used" : CLIENT_LIST_HEADINGS[field][0]];
        })
      );
      const checked = rows.filter(([, , remark]) => String(remark).startsWith("Check"));
      expect(checked.map(([heading]) => heading)).toEqual(suspect);
    }
  );

  // Answers that were copied as values into a list are no entries. These headings are of an answer and of an entry.
  const BOTH = ["Client", "Method", "First installment"];
  it.each(ROSTER_HEADINGS.filter((heading) => !BOTH.includes(heading)))(
    "does not read the heading of an answer as an entry: %s",
    (heading) => {
      for (const written of [heading, `${heading} (calculated)`, `${heading} (with 5% cushion)`]) {
        const list = [
          [written, "Total tax", "Total payments"],
          [1, 20000, 15000],
        ];
        expect(rosterHeadings(list, 2025)[1]?.slice(0, 2)).toEqual([written, "not used"]);
      }
    }
  );

  it("follows the user's own headings, and refuses one that means nothing", () => {
    const list = [
      ["Who", "Liab", "Total payments"],
      ["Alder", 20000, 15000],
    ];
    const own = (meaning: string) => [
      ["Who", "Client"],
      ["Liab", meaning],
    ];
    expect(rosterHeadings(list, 2025, own("Total tax")).slice(1)).toEqual([
      ["Who", "Client", ""],
      ["Liab", "Estimated total tax", ""],
      ["Total payments", "Total payments", ""],
    ]);
    expect(answerOf(() => rosterHeadings(list, 2025, own("Tax burden")))).toEqual(
      badInput(
        'clientList: "Tax burden" is not a heading that is read, so "Liab" cannot mean it. Enter a heading such as Total tax, or not used.'
      )
    );
  });
});
