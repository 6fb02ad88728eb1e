import { describe, expect, it } from "vitest";
import { withCellAddresses } from "../../../src/addin/workbook/tableReferences";
import { NotDone, type TablePlace } from "../../../src/addin/workbook/workbookHost";

const TABLES: readonly TablePlace[] = [
  {
    name: "Clients",
    sheet: "Client list",
    headings: ["Tax year", "State", "Paid #1", "It's"],
    headingRow: 3,
    firstColumn: 2,
    rows: 5,
  },
  { name: "Rates", sheet: "O'Hara", headings: ["Rate"], headingRow: 1, firstColumn: 1, rows: 2 },
];
const at = (formula: string, sheet = "Client list", row = 6): string =>
  withCellAddresses(formula, sheet, row, TABLES);

// The forms of a reference are those of Microsoft's page "Using structured references with Excel tables".
describe("references to table columns", () => {
  it.each([
    ["=EXT.DUE([@[Tax year]],[@State])", "=EXT.DUE('Client list'!B6,'Client list'!C6)"],
    ["=EXT.DUE(Clients[@[tax year]])", "=EXT.DUE('Client list'!B6)"],
    ["=EXT.DUE(clients[[#This Row],[State]])", "=EXT.DUE('Client list'!C6)"],
    ["=EXT.DUE(Clients[State],2)", "=EXT.DUE('Client list'!C4:C8,2)"],
    ["=EXT.DUE([[Tax year]])", "=EXT.DUE('Client list'!B4:B8)"],
    ["=EXT.DUE([@[Paid '#1]],[@[It''s]])", "=EXT.DUE('Client list'!D6,'Client list'!E6)"],
    ["=EXT.DUE(Rates[Rate])", "=EXT.DUE('O''Hara'!A2:A3)"],
    ['=EXT.DUE("[@State]",A1,Sheet2!B2)', '=EXT.DUE("[@State]",A1,Sheet2!B2)'],
  ])("%s becomes %s", (formula, addresses) => {
    expect(at(formula)).toBe(addresses);
  });

  it.each([
    "=EXT.DUE([@Unknown])",
    "=EXT.DUE(Nowhere[@State])",
    "=EXT.DUE(Clients[#All])",
    "=EXT.DUE(Clients[[Tax year]:[State]])",
    "=EXT.DUE(Clients[@[Tax year]:[State]])",
  ])("%s is refused with a sentence", (formula) => {
    expect(() => at(formula)).toThrow(NotDone);
    expect(() => at(formula)).toThrow(/^The reference .* cannot be read\. Use a single column/);
  });

  it("without a name are refused outside a table", () => {
    expect(() => at("=EXT.DUE([@State])", "Elsewhere")).toThrow(NotDone);
    expect(() => at("=EXT.DUE([@State])", "Client list", 9)).toThrow(NotDone);
  });
});
