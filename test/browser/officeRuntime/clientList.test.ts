import type { Browser } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { USUAL_ANSWERS } from "../../../src/addin/list/listColumns";
import { roster } from "../../../src/functions/season/roster";
import { inventedLists, keptLists } from "../../fixtures/invented/clientLists";
import { openBrowser } from "../browser";
import { CURRENT_SETS, openInExcel, type ExcelKind, type InExcel } from "./inExcel";
import type { ModelBook, ModelCell, ModelSheet } from "./workbookModel";

let browser: Browser;
let excel: InExcel;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
});
const open = async (kind?: ExcelKind): Promise<void> => {
  excel = await openInExcel(browser, kind);
  await excel.addin.locator("#tools > summary").click();
  await excel.inPage((page) => {
    page.sendsBlankAs = null;
  }, null);
};

const book = (): Promise<ModelBook> => excel.inPage((page) => page.book, null);
const firstSheet = async (): Promise<ModelSheet> => {
  const [sheet] = (await book()).sheets;
  if (!sheet) throw new RangeError("The workbook has no sheet.");
  return sheet;
};
const press = (name: string): Promise<void> =>
  excel.addin.locator("fluent-button", { hasText: name }).click();
const status = () => expect.poll(() => excel.addin.locator("#said").textContent());
const enter = (field: string, text: string): Promise<void> =>
  excel.addin.locator(`#${field}`).fill(text);

const USE = "Use my list";
const WRITE = "Write the answers";

/** Puts a block of cells into the sheet Clients and selects one of them. */
async function put(
  cells: readonly (readonly unknown[])[],
  selected: readonly [row: number, column: number] = [1, 0],
  sheet: Partial<ModelSheet> = {}
): Promise<void> {
  const filled: Record<string, ModelCell> = {};
  for (const [row, line] of cells.entries())
    for (const [column, cell] of line.entries())
      if (cell !== "") filled[`${row},${column}`] = { formula: cell as string | number };
  await excel.inPage(
    (page, { given, place, others }) => {
      const [first] = page.book.sheets;
      if (!first) return;
      for (const key of Object.keys(first.cells)) Reflect.deleteProperty(first.cells, key);
      Object.assign(first.cells, given);
      Object.assign(first, others);
      page.book.active = { sheet: "Clients", row: place[0], column: place[1] };
    },
    { given: filled, place: selected, others: sheet }
  );
}

const LIST = [
  ["Name", "ST", "Est. total tax", "W/H", "ES paid", "Fee"],
  ["Abbott", "Maine", "$12,400", 6000, 4000, 450],
  ["Chavez", "TX", 60000, "n/a", "", 900],
  ["Total", "", 72400, 6000, 4000, ""],
];

describe("the tool for client lists and the invented lists", () => {
  beforeAll(() => open());
  afterAll(async () => {
    await excel.close();
  });

  it.each([...inventedLists, ...keptLists])(
    "writes the answers of ROSTER beside a list: $title",
    async ({ cells }) => {
      await put(cells);
      await press(USE);
      await status().toMatch(/^Check how your headings are read/);
      await enter("as-of", "2026-04-20");
      await enter("list-year", "2025");
      await press(WRITE);
      await status().toMatch(/^Added \d+ columns in .*\. One Undo takes this back\.$/);
      const width = cells[0]?.length ?? 0;
      const chosen = USUAL_ANSWERS.map((heading) => [heading]);
      const expected = roster(cells as unknown[][], 2025, "4/20/2026", "", chosen);
      const plain = (cell: unknown): unknown =>
        typeof cell === "object" && cell !== null ? "#VALUE!" : cell;
      const shown = async (): Promise<unknown> => {
        const { cells: now } = await firstSheet();
        return expected.map((line, row) =>
          line.map((_cell, index) => {
            const cell = now[`${row},${width + index}`];
            return cell?.shows ?? cell?.formula;
          })
        );
      };
      await expect
        .poll(shown, { timeout: 15_000 })
        .toEqual(expected.map((line) => line.map(plain)));
      expect(excel.seen.errors).toEqual([]);
    }
  );
});

describe("the tool for client lists and Microsoft's object model", () => {
  beforeEach(() => open());
  afterEach(async () => {
    await excel.close();
  });

  it("lists and marks what cannot be read, jumps to it, and leaves its row out of the totals", async () => {
    await put(LIST);
    await press(USE);
    const panel = excel.addin.locator("#client-list section");
    await expect
      .poll(() => panel.locator(".faults li").allTextContents())
      .toEqual([expect.stringMatching(/^D3 Chavez, W\/H: "n\/a" is not a dollar amount\. Enter/)]);
    expect(await panel.locator(".totals dd").allTextContents()).toEqual([
      "2",
      "$2,400.00",
      "$2,400.00",
    ]);
    expect(await panel.textContent()).toContain("1 row is left out of the totals");
    expect(await panel.textContent()).toContain("Total is not counted as a client");
    expect(await panel.locator("select[aria-label='Read Fee as']").inputValue()).toBe("not used");
    expect(await panel.textContent()).toContain("Check: it looks like money");
    await expect
      .poll(async () => (await firstSheet()).marks)
      .toEqual([{ at: "D3", formula: '=N("cannot be read")=0', color: "#FFC7CE" }]);
    await press("D3");
    await status().toBe("Selected cell D3.");
    expect((await book()).active).toEqual({ sheet: "Clients", row: 2, column: 3 });
    expect((await firstSheet()).fills).toEqual({});
    await press("Close");
    await expect.poll(async () => (await firstSheet()).marks).toEqual([]);
  });

  it("takes another meaning of a heading into its formulas, and finds it there again", async () => {
    await put([
      ["Client", "Fed liab", "Payments"],
      ["Alder", 20000, 15000],
    ]);
    await press(USE);
    const problem = excel.addin.locator("#client-list section [role=alert]");
    await expect
      .poll(() => problem.textContent())
      .toMatch(/^The first row has no heading for estimated total tax\. The nearest is "Fed liab"/);
    await excel.addin
      .locator("select[aria-label='Read Fed liab as']")
      .selectOption("Estimated total tax");
    await expect.poll(() => problem.count()).toBe(0);
    await enter("as-of", "2026-04-01");
    await excel.addin.locator("#client summary", { hasText: "Interest after" }).click();
    await enter("assumed-rate", "7%");
    await press(WRITE);
    await status().toMatch(/^Added 12 columns/);
    const { cells } = await firstSheet();
    const at = 3 + USUAL_ANSWERS.indexOf("Balance due");
    expect(cells[`1,${at}`]?.formula).toBe(
      '=EXT.ROSTERROWS($A$1:$C$1,$A2:$C2,2025,"4/1/2026","7%","Balance due",{"Fed liab","Estimated total tax"})'
    );
    await enter("as-of", "2026-05-01");
    await press(USE);
    await status().toBe(
      "The list has answers from this tool, as of 4/1/2026 with an assumed rate of 7%. If you write them again, they take the as-of date and the assumed rate at the top of this pane."
    );
    await press(WRITE);
    await status().toMatch(/^Updated 12 columns in D1:O2\./);
    const after = await firstSheet();
    expect(Object.keys(after.cells)).toHaveLength(Object.keys(cells).length);
    expect(after.cells[`1,${at}`]?.formula).toContain('"5/1/2026"');
  });

  it("adds columns to a table, with references to cells", async () => {
    await put(LIST.slice(0, 3), [1, 0], { tables: [{ name: "Table1", at: [0, 0, 3, 6] }] });
    await press(USE);
    await expect
      .poll(() => excel.addin.locator("#client-list section").textContent())
      .toMatch(/^Table Table1 on the sheet Clients/);
    await press(WRITE);
    await status().toMatch(/^Added 12 columns in G1:R3\. One Undo takes this back\.$/);
    const { tables, cells } = await firstSheet();
    expect(tables[0]?.at).toEqual([0, 0, 3, 18]);
    expect(
      Object.values(cells)
        .map(({ formula }) => String(formula))
        .join()
    ).not.toContain("[");
  });

  it("never writes over a cell, and writes nothing then", async () => {
    await put(
      [...LIST, [], ["", "", "", "", "", "", "", "kept"]].map((line) =>
        line.length > 0 ? line : [""]
      )
    );
    await excel.inPage((page) => {
      Object.assign(page.book.sheets[0]?.cells ?? {}, { "2,8": { formula: "mine" } });
    }, null);
    await press(USE);
    await status().toMatch(/^Check/);
    const before = (await firstSheet()).cells;
    await press(WRITE);
    await status().toBe(
      "Cell I3 to the right of the list is not empty. Insert columns beside the list, then try again."
    );
    expect((await firstSheet()).cells).toEqual(before);
    expect((await book()).written).toEqual([]);
  });

  it.each<[what: string, sheet: Partial<ModelSheet>, button: string, sentence: RegExp]>([
    [
      "a protected sheet",
      { isProtected: true },
      WRITE,
      /^The sheet Clients is protected\. Remove the protection/,
    ],
    [
      "merged headings",
      { merged: [[0, 1, 1, 2]] },
      USE,
      /^The headings in row 1 have merged cells\./,
    ],
    [
      "a pivot table",
      { pivots: [{ name: "Pivot1", at: [0, 0, 4, 6] }] },
      USE,
      /^The selected cell is in the pivot table Pivot1\./,
    ],
  ])("refuses %s in a sentence and writes nothing", async (_what, sheet, button, sentence) => {
    await put(LIST, [1, 0], sheet);
    await press(USE);
    if (button === WRITE) {
      await status().toMatch(/^Check/);
      await press(WRITE);
    }
    await status().toMatch(sentence);
    expect((await book()).written).toEqual([]);
    expect(excel.seen.errors).toEqual([]);
  });

  it("works with an older Excel, which does not tell how many steps to undo", async () => {
    await excel.close();
    await open({ sets: { ...CURRENT_SETS, ExcelApi: "1.7" } });
    await put(LIST);
    await press(USE);
    await press(WRITE);
    await status().toBe("Added 12 columns in G1:R4.");
    expect(excel.seen.errors).toEqual([]);
  });

  it("builds a client list whose rows are calculated, with marked inputs", async () => {
    await enter("as-of", "2026-04-01");
    await enter("list-year", "2025");
    await press("Build a client list");
    await status().toBe("Added the sheet Clients 2. Replace the example with your clients.");
    const made = async (): Promise<ModelSheet | undefined> => (await book()).sheets[1];
    const rowsOfStatus = async (): Promise<unknown[]> => {
      const cells = (await made())?.cells ?? {};
      return ["3,1", "4,1"].map((place) => cells[place]?.shows);
    };
    await expect.poll(rowsOfStatus).toEqual(["not requested", ""]);
    const sheet = await made();
    expect(sheet?.frozen).toBe(3);
    expect(sheet?.frozenColumns).toBe(1);
    expect(sheet?.fills["3,0"]).toBe("#FFF2CC");
    expect(sheet?.fills["3,1"]).toBeUndefined();
  });
});
