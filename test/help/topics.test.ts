import { describe, expect, it } from "vitest";
import { CLIENT_LIST_HEADINGS } from "../../src/functions/arguments/clientListHeadings";
import { ITEM_LABELS } from "../../src/functions/arguments/itemLabels";
import { USAGE } from "../../src/demo/terminal/commandLine";
import { MOST_UNPACKED } from "../../src/demo/workbook/unpackedParts";
import { ruleTables } from "../../src/rules/ruleTables";
import { page, textOf } from "./builtHelp";

describe("the pages on subjects of several functions", () => {
  it.each([
    ["labels.html", ITEM_LABELS],
    ["headings.html", CLIENT_LIST_HEADINGS],
  ])("list every name that is read: %s", (file, names) => {
    const read = textOf(page(file));
    for (const [first = "", ...others] of Object.values<readonly string[]>(names)) {
      const more = others.length === 0 ? "No other name." : `Also: ${others.join(", ")}.`;
      expect(read).toContain(`${first} ${more}`);
    }
  });

  it("list every rule table with the dates it covers", () => {
    const text = page("tables.html");
    for (const { id, title } of ruleTables().values()) {
      expect(text).toContain(`id="table-${id}"`);
      expect(textOf(text)).toContain(`${title} ${id}`);
    }
    expect(textOf(text)).toMatch(
      /underpayment-rate \. .*?Covers from: 1\/1\/1995\. Covers through: 12\/31\/2026\./
    );
  });

  it("list the steps of the first run in order, with what to see and what to send", () => {
    const read = textOf(page("first-run.html"));
    const count = read.match(/You should see: .+? Otherwise send: ./g)?.length ?? 0;
    expect(count).toBeGreaterThan(10);
    const places = [
      "Open a workbook and open the guide",
      "=EXT.DUE(2025)",
      "Check blank cells",
    ].map((text, index) => read.indexOf(text, read.indexOf(`${String(index + 1)}. `)));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    expect(places).not.toContain(-1);
    expect(read).toContain("Copy a diagnosis");
  });

  it("say what the estimate of total tax leaves out", () => {
    expect(textOf(page("liability.html"))).toMatch(/Left out: .*foreign income/);
  });

  it("list the options and limits of the command that calculates a workbook", () => {
    const read = textOf(page("start.html"));
    const options = USAGE.match(/--?[a-z]+(?=[ ,])/g) ?? [];
    expect(options.length).toBeGreaterThan(5);
    for (const option of options) expect(read).toContain(option);
    expect(read).toContain(`${String(MOST_UNPACKED / 1e6)} MB`);
  });
});
