import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { CountedHand } from "./countedHand";
import { DemoGrid } from "./demoGrid";
import { openSheet } from "./openSheet";

// Thirteen tasks that a preparer tried who saw the product for the first time. The amounts, and the figures that were then checked by
// hand, are hers; a figure with another source names it.
let page: Page;
let grid: DemoGrid;
let hand: CountedHand;
let complaints: readonly string[];
let close: () => Promise<void>;

beforeAll(async () => {
  ({ page, complaints, close } = await openSheet());
  grid = new DemoGrid(page);
  hand = new CountedHand(page, grid);
}, 120_000);
afterAll(async () => {
  await close();
});

const cell = (address: string) => expect.poll(() => grid.cell(address));
const message = () => expect.poll(() => page.locator("#cell-status").textContent());
const textOf = async (selector: string): Promise<string> =>
  (await page.locator(selector).allTextContents()).join(" ").replace(/\s+/g, " ").trim();
const pane = (selector: string) => expect.poll(() => textOf(`#guide ${selector}`));
const button = (name: string) =>
  page.locator("#guide :is(button, fluent-button)", { hasText: name }).first();
/** The functions that a search finds, the best match first. */
async function search(words: string): Promise<string[]> {
  const functions = page.locator("#functions");
  if ((await functions.getAttribute("open")) === null)
    await hand.click(functions.locator("> summary"));
  await hand.click(page.locator("#search"));
  await hand.press("Control+a");
  await hand.type(words);
  await expect.poll(() => textOf("#functions [role=status]")).not.toBe("");
  return page.locator("#functions .function > summary strong").allTextContents();
}
const trouble = (name: string) => page.locator(".trouble button", { hasText: name });
/** The names in the sample's client list, in its order. */
const clientsOf = (): Promise<string[][]> => grid.shown("A2:A48");

describe("a preparer", () => {
  it("1 finds the dates of Maine for two years", async () => {
    await hand.task("1 Maine, 2023 and 2025", async () => {
      await hand.newSheet();
      await hand.enter(
        '=EXT.DUE(2023,"Maine")',
        '=EXT.EXTENDED(2023,"Maine")',
        '=EXT.DUE(2025,"Maine")',
        '=EXT.EXTENDED(2025,"Maine")',
        '=EXT.STATEDUE(2025,"Maine")'
      );
      await expect
        .poll(async () => (await grid.shown("A1:A5")).flat())
        .toEqual(["4/17/2024", "10/15/2024", "4/15/2026", "10/15/2026", "4/15/2026"]);
    });
    await hand.task("1 the same in the pane", async () => {
      await hand.click(page.locator("#typed-taxYear"));
      await hand.press("Control+a");
      await hand.type("2023");
      await hand.choose(page.locator("#typed-state"), "Maine");
      await pane(".four dd").toMatch(/^4\/17\/2024 10\/15\/2024/);
      await hand.click(page.locator("#typed-taxYear"));
      await hand.press("Control+a");
      await hand.type("2025");
      await pane(".four dd").toMatch(/^4\/15\/2026 10\/15\/2026/);
    });
  });

  it("2 has the answers beside six clients under her own headings", async () => {
    await hand.task("2 Six clients, own headings", async () => {
      await hand.newSheet();
      await hand.enterRows([
        ["Name", "ST", "Yr", "Est. total tax", "Withheld", "ES paid"],
        ["Abbott", "Maine", "2025", "12400", "6000", "4000"],
        ["Chavez", "TX", "2025", "60000", "40000", "5000"],
        ["Dorsey", "NY", "2025", "8200", "9000", "0"],
        ["Ellery", "PA", "2025", "20000", "15000", "0"],
        ["Fox", "CA", "2025", "31000", "20000", "10000"],
        ["Gant", "OH", "2025", "5000", "5000", "0"],
      ]);
      await hand.cell("A2");
      await hand.click(page.locator("#tools > summary"));
      await hand.click(button("Use my list"));
      await hand.click(button("Write the answers"));
      await expect.poll(() => textOf("#said")).toMatch(/^Added \d+ columns in /);
      const headings = (await grid.shown("A1:T1")).flat();
      const column = String.fromCharCode(65 + headings.indexOf("Balance due"));
      // line 4 less line 5: total tax less what was withheld and the estimated tax payments
      await expect
        .poll(async () => (await grid.shown(`${column}2:${column}7`)).flat())
        .toEqual(["2,400.00", "15,000.00", "0.00", "5,000.00", "1,000.00", "0.00"]);
    });
    await hand.task("2 a client more, headings W/H and ES paid", async () => {
      await hand.newSheet();
      await hand.enterRows([
        ["Name", "St", "Yr", "Est. total tax", "W/H", "ES paid"],
        ["Abbott", "ME", "2025", "12400", "6000", "4000"],
      ]);
      await hand.cell("A2");
      await hand.click(button("Use my list"));
      await expect.poll(() => textOf("#tools")).toMatch(/headings in row 1, 1 row\./);
      await hand.click(button("Write the answers"));
      await expect.poll(async () => (await grid.shown("A2:T2")).flat()).toContain("2,400.00");
    });
  });

  it("3 sees the cost of October 15 with and without the extension, and its calculation", async () => {
    await hand.task("3 Cost of October 15", async () => {
      await hand.newSheet();
      await hand.enter(
        '=EXT.CHARGES(2025,42000,27000,"10/15/2026","10/15/2026","yes",,,"latest")',
        '=EXT.CHARGES(2025,42000,27000,"10/15/2026","10/15/2026","no",,,"latest")'
      );
      await cell("A1").toBe("953.42");
      await cell("A2").toBe("4,441.69");
      await hand.cell("A1");
      await hand.click(button("Show the calculation"));
      await expect.poll(() => grid.sheetInView()).toMatch(/^Calculation/);
      const shown = async () => (await grid.shown("A1:H40")).flat();
      await expect.poll(shown).toContain("953.42");
      // The entered amounts stand above the result.
      expect(await shown()).toEqual(expect.arrayContaining(["42,000.00", "27,000.00"]));
      expect(await search("penalty")).toContain("CHARGES");
    });
  });

  it("4 compares payments", async () => {
    await hand.task("4 What-if table", async () => {
      await hand.newSheet();
      await hand.enter("0", "5000");
      await hand.enter('=EXT.WHATIF(2025,42000,27000,A1:A2,"10/15/2026","yes",,,"latest")');
      await cell("B4").toBe("953.42");
      expect(await grid.cell("A5")).toBe("5,000.00");
      await hand.cell("B4");
      await hand.click(button("Show the calculation"));
      await expect.poll(() => grid.sheetInView()).toMatch(/^Calculation/);
      await expect.poll(async () => (await grid.shown("A1:H40")).flat()).toContain("953.42");
    });
  });

  it("5 estimates the tax of a couple from the names of their documents", async () => {
    await hand.task("5 Estimate for a couple", async () => {
      await hand.newSheet();
      await hand.enterRows([
        ["W-2 husband", "80000"],
        ["W-2 wife", "57000"],
        ["1099-INT", "829"],
        ["Schedule C profit", "31000"],
        ["children under 17", "2"],
        ["Federal income tax withheld", "9000"],
      ]);
      await hand.enter('=EXT.LIABILITY(2025,"married",A1:B6)');
      await hand.press("ArrowUp");
      await message().toMatch(/can mean two filing statuses\. Enter joint \(MFJ\) or separate/);
      await hand.press("ArrowDown");
      await hand.enter('=EXT.LIABILITY(2025,"joint",A1:B6)');
      // by hand: taxable 129,377 (Form 1040 for 2025), tax 18,291, self-employment tax 4,380, child tax credit 4,400
      await cell("A8").toBe("18,271");
    });
  });

  it("6 finds the address for a request with a check, and which services may carry it", async () => {
    await hand.task("6 Texas address, private carrier", async () => {
      await hand.newSheet();
      await hand.enter(
        '=EXT.MAILTO(2025,"Texas","check")',
        '=EXT.MAILTO(2025,"Texas","check","FedEx")'
      );
      await cell("A1").toMatch(/P\.O\. Box 1302, Charlotte, NC 28201-1302/);
      await hand.press("ArrowUp");
      await message().toMatch(/has no service level\. Only these are designated: First Overnight/);
      expect((await search("mailing address"))[0]).toBe("MAILTO");
    });
  });

  it("7 records a request and its rejection, and is told the next step", async () => {
    await grid.show("Clients");
    const row = (await clientsOf()).findIndex(([name]) => name === "Bramble") + 2;
    await hand.task("7 Request made and rejected", async () => {
      await hand.cell(`A${row}`);
      await pane("#client-title").toBe("Bramble");
      await page.locator("#as-of").fill("2026-04-16");
      await hand.click(button("Record an event"));
      // The month is the first part of the field.
      await hand.click(page.locator("#event-date"), { x: 14, y: 14 });
      await hand.type("04152026");
      await hand.press("Enter");
      await expect.poll(() => textOf("#said")).toMatch(/\(Requested on\) for Bramble/);
      await hand.choose(page.locator("#event"), "Request rejected");
      await hand.click(button("Enter this date in the list"));
      // Pub. 1345: five days to correct and resend a rejected request; April 20, 2026
      await pane("#client .next").toMatch(/Resend the request by 4\/20\/2026/);
      await pane("#client .next").toMatch(/Best method: (electronic payment|e-file|paper)\./);
    });
  });

  it("8 has a letter that tells a client in trouble the truth", async () => {
    await grid.show("Clients");
    const row = (await clientsOf()).findIndex(([name]) => name === "Celandine") + 2;
    await page.locator("#as-of").fill("2026-06-01");
    const tells = async (cost: string): Promise<void> => {
      if ((await page.locator("#letter-text").count()) === 0) await hand.click(button("Letter"));
      const letter = () => page.locator("#letter-text").inputValue();
      await expect.poll(letter).toContain(`${cost} in penalties and interest`);
      expect(await letter()).not.toMatch(/until October 15, 2026|We are asking for more time/);
      expect(await letter()).toMatch(/\n\n/);
    };
    await hand.task("8 Text for two clients", async () => {
      await hand.cell(`A${row}`);
      await pane("#client-title").toBe("Celandine");
      // The cost is what the season list has for the client; neither has an extension.
      await tells("$814.31");
      await hand.click(trouble("Oxlip"));
      await pane("#client-title").toBe("Oxlip");
      await tells("$551.75");
      expect((await search("letter"))[0]).toMatch(/^MEMO/);
    });
  });

  it("9 reads what New York and Pennsylvania ask for", async () => {
    await hand.task("9 New York and Pennsylvania", async () => {
      await hand.newSheet();
      await hand.enter('=EXT.STATERULE(2025,"New York")');
      await cell("C2").toBe("New York: on the state's own request");
      await hand.cell("F1");
      await hand.enter('=EXT.STATERULE(2025,"Pennsylvania")');
      await cell("H2").toMatch(/^Pennsylvania: with the federal extension/);
      expect((await grid.shown("A1:J20")).flat().join(" ")).not.toMatch(/undated rule|from memory/);
      expect(await search("new york")).toContain("STATERULE");
    });
  });

  it("10 sees who is in trouble, and changes a payment", async () => {
    await grid.show("Clients");
    const headings = (await grid.shown("A1:AP1")).flat();
    const letters = (heading: string): string => {
      const index = headings.indexOf(heading);
      return (index > 25 ? "A" : "") + String.fromCharCode(65 + (index % 26));
    };
    const row = (await clientsOf()).findIndex(([name]) => name === "Betony") + 2;
    const planned = `${letters("Penalties and interest (planned)")}${row}`;
    await hand.task("10 Trouble list, change a payment", async () => {
      await hand.cell(`A${row}`);
      for (const name of ["Celandine", "Hornbeam", "Oxlip"])
        await expect.poll(() => trouble(name).count()).toBe(1);
      await cell(planned).toBe("77.19");
      const paid = letters("Paid with request");
      await hand.press(
        ...Array.from({ length: headings.indexOf("Paid with request") }, () => "ArrowRight")
      );
      await expect.poll(() => grid.selected()).toBe(`${paid}${row}`);
      await hand.enter("6300");
      await cell(`${paid}${row}`).toMatch(/^6,?300/);
      await cell(planned).toBe("0.00");
      await hand.click(trouble("Oxlip"));
      const oxlip = (await clientsOf()).findIndex(([name]) => name === "Oxlip") + 2;
      await expect.poll(() => grid.selected()).toBe(`A${oxlip}`);
      await pane("#client-title").toBe("Oxlip");
    });
  });

  it("11 is told what is wrong with three entries", async () => {
    await hand.task("11 Three mistakes", async () => {
      await hand.newSheet();
      await hand.enter('=EXT.DUE(2025,"TXX")');
      await hand.press("ArrowUp");
      await message().toMatch(/state: "TXX" is not a state\. Enter a postal code or a name/);
      await hand.press("ArrowDown");
      await hand.enter('=EXT.STAGE(2025,"4/17/2026","4/15/2026",,"4/16/2026")');
      await cell("A2").toBe("rejected");
      await hand.enter('=EXT.SHORTFALL("n/a",100)');
      await hand.press("ArrowUp");
      await message().toMatch(/totalTax: "n\/a" is not a dollar amount/);
      await hand.press("ArrowDown");
      await hand.enter("=EXT.DEU(2025)");
      await hand.press("ArrowUp");
      await message().toMatch(/The closest name is EXT\.DUE\./);
      await hand.cell("C1");
      // A date that is a text in a cell is read like one that is typed in a formula.
      await hand.enter("'4/15/2026", '=EXT.STAGE(2025,"4/17/2026",C1,,"4/16/2026")');
      await cell("C2").toBe("rejected");
    });
  });

  it("12 saves her work and opens it again", async () => {
    await hand.task("12 Save and open again", async () => {
      const saving = page.waitForEvent("download");
      await hand.click(page.getByRole("button", { name: "Save a copy" }));
      const buffer = readFileSync(await (await saving).path());
      const mimeType = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
      const choosing = page.waitForEvent("filechooser");
      await hand.click(page.getByRole("button", { name: "Open a workbook" }));
      await (await choosing).setFiles({ name: "mine.xlsx", mimeType, buffer });
      await expect.poll(() => textOf("#file-status")).toMatch(/^mine\.xlsx is open\./);
    });
    await hand.task("12 is warned before work is lost", async () => {
      await hand.newSheet();
      await hand.enter("my work");
      await hand.click(page.getByRole("button", { name: "Open the sample again" }));
      await expect.poll(() => textOf("#question-text")).toMatch(/not saved\..*they are lost/);
      await hand.click(page.locator("#question-no"));
      await cell("A1").toBe("my work");
    });
  });

  it("13 prints the request of a client", async () => {
    await grid.show("Extension request");
    await page.evaluate(() => {
      window.print = () => {
        dispatchEvent(new Event("beforeprint"));
        document.body.dataset["printed"] = document.getElementById("print")?.textContent ?? "";
        dispatchEvent(new Event("afterprint"));
      };
    });
    await hand.task("13 Print the request", async () => {
      await hand.click(page.getByRole("button", { name: "Print" }));
      await expect
        .poll(() => page.evaluate(() => document.body.dataset["printed"]))
        .toMatch(/^Extension request.*Form 4868.*Balance due/s);
    });
  });

  it("needs these clicks and keystrokes", () => {
    const width = Math.max(...hand.counts.map(({ task }) => task.length));
    const lines = hand.counts.map(
      ({ task, clicks, keystrokes }) =>
        `${task.padEnd(width)}  ${String(clicks).padStart(3)} clicks  ${String(keystrokes).padStart(4)} keystrokes`
    );
    process.stdout.write(`${lines.join("\n")}\n`);
    expect(hand.counts).toHaveLength(16);
    expect(complaints).toEqual([]);
  });
});
