import { describe, expect, it } from "vitest";
import { clientFacts } from "../../../src/addin/client/clientFacts";
import { clientCalculation, clientSheet } from "../../../src/addin/client/clientFormulas";
import { clientRow } from "../../../src/addin/list/clientRow";
import { liveAnswer } from "../../../src/addin/answers/liveAnswer";
import { NotDone } from "../../../src/addin/workbook/workbookHost";
import { columnNumber } from "../../../src/host/cellAddress";
import { changed, listOf, rowOf, sampleList, serial, settingsOn } from "../list/sampleList";

const settings = settingsOn("2026-06-01");

/** A formula with the values of the cells that it refers to, sums added up. */
function withValues(formula: string, list = sampleList): string {
  const values = formula
    .replaceAll("$B$3", '"6/1/2026"')
    .replaceAll(/'Clients'!([A-Z]+)(\d+)/g, (_whole, column: string, row: string) => {
      const cell = list.rows[Number(row) - 4]?.[columnNumber(column) - 1];
      return typeof cell === "number" ? String(cell) : `"${String(cell)}"`;
    });
  return values.replaceAll(/\d+(?:\.\d+)?(?:\+\d+(?:\.\d+)?)+/g, (sum) =>
    String(sum.split("+").reduce((total, part) => total + Number(part), 0))
  );
}
const shown = (formula: string): string => liveAnswer(withValues(formula))[0]?.[0]?.text ?? "";

describe("the sheet of a client", () => {
  it.each(sampleList.rows.map(([name], index) => [String(name), index] as const))(
    "has formulas whose answers are those of the pane: %s",
    (_name, index) => {
      const client = clientRow(sampleList, index, 2025);
      if (!client) throw new Error("The row is blank.");
      const facts = clientFacts(client, settings);
      if (facts.problems.length > 0) return;
      const { cells } = clientSheet(client, facts, settings);
      const { answers, waiting } = facts;
      const wanted: Readonly<Record<string, string>> = {
        "Regular due date": answers["Regular due date"].text,
        "Extended due date": answers["Extended due date"].text,
        "Payment due date": answers["Payment due date"].text,
        "Balance due": answers["Balance due"].text,
        "Pay now": answers["Pay now"].text,
        "Penalties and interest with extension": waiting.withExtension.text,
        "Penalties and interest without extension": waiting.without.text,
        Status: answers.Status.text,
        "Next deadline": answers["Next deadline"].text,
      };
      const made: Record<string, string> = Object.fromEntries(
        cells.slice(3).map(([label, formula]) => [String(label), shown(String(formula))])
      );
      const withoutSigns = Object.fromEntries(
        Object.entries(wanted).map(([label, text]) => [label, text.replace("$", "")])
      );
      expect(made).toEqual(withoutSigns);
    }
  );

  it("adds the parts of the payments", () => {
    const list = listOf(["Client", "Total tax", "W/H", "ES paid"], [["Anise", 20000, 9000, 4000]]);
    const client = rowOf("Anise", list);
    const { cells } = clientSheet(client, clientFacts(client, settings), settings);
    expect(cells.flat()).toContain("=EXT.SHORTFALL('Clients'!B4,'Clients'!C4+'Clients'!D4)");
  });
});

describe("the calculation of a client", () => {
  it("is that of the cost of waiting which counts for the client", () => {
    const client = rowOf("Bramble");
    const sheet = clientCalculation(client, clientFacts(client, settings), settings);
    expect(sheet.name).toBe("Calculation Bramble");
    expect(sheet.cells[0]).toEqual([
      "Penalties and interest of Bramble as of 6/1/2026. If filed and paid on 7/20/2026.",
    ]);
    const labeled = new Map(sheet.cells.map(([label, cell]) => [label, String(cell)]));
    expect(shown(labeled.get("Penalties and interest") ?? "")).toBe("1,667.63");
    expect(labeled.get("Total tax")).toBe(`=IF('Clients'!E9="","",'Clients'!E9)`);
    expect(labeled.get("Valid extension")).toBe('="no"');
    const formula = String(sheet.cells.at(-1)?.[0]);
    expect(formula).toMatch(/^=EXT\.CHARGELINES\('Clients'!B9,'Clients'!E9,'Clients'!F9,/);
    const [headings = [], ...lines] = liveAnswer(withValues(formula));
    const amount = headings.findIndex(({ text }) => text === "Amount");
    const amounts = lines.map((line) => Number(line[amount]?.text.replaceAll(",", "")));
    expect(amounts.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1667.63, 6);
  });

  it("is refused in a sentence where a cell cannot be read, or a late request took a payment", () => {
    const refused = (cells: Readonly<Record<string, unknown>>) => () => {
      const client = rowOf("Bramble", changed("Bramble", cells));
      clientCalculation(client, clientFacts(client, settings), settings);
    };
    expect(refused({ "Estimated total tax": "n/a" })).toThrow(NotDone);
    expect(refused({ "Requested on": serial("2026-05-01"), "Paid with request": 1000 })).toThrow(
      /^The payment with the late request and the balance are paid on two dates\./
    );
  });
});
