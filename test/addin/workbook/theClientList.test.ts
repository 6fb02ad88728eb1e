import { describe, expect, it } from "vitest";
import { theClientList } from "../../../src/addin/workbook/theClientList";
import { NotDone } from "../../../src/addin/workbook/workbookHost";

const clients = (sheet: string) => ({
  sheet,
  values: [
    ["Season 2025", "", "", ""],
    ["", "", "", ""],
    ["", "Name", "Est. total tax", "W/H"],
    ["", "Abbott", 12400, 10000],
  ],
});
const other = {
  sheet: "Totals",
  values: [
    ["Status", "Total tax"],
    ["filed", 3],
    ["#N/A", null],
  ],
};

describe("the client list of a workbook", () => {
  it("is found by its headings, and the first client below them is selected", () => {
    expect(theClientList([other, clients("Clients")], 2025)).toEqual({
      sheet: "Clients",
      address: "B4",
    });
  });

  it("has more of its columns than another table with tax and payments", () => {
    const small = { sheet: "Estimates", values: [["2025 tax", "Payments"]] };
    expect(theClientList([small, clients("Clients")], 2025).sheet).toBe("Clients");
  });

  it("is not chosen among several", () => {
    expect(() => theClientList([clients("Clients"), other, clients("2024")], 2025)).toThrow(
      new NotDone(
        "Several sheets have a client list: Clients, 2024. Select a client on one of them."
      )
    );
  });

  it("is missed where no sheet has one", () => {
    for (const tops of [[], [other]])
      expect(() => theClientList(tops, 2025)).toThrow(
        new NotDone(
          "No sheet has a client list in its first 20 rows. A client list has headings such as Client, Total tax and Total payments."
        )
      );
  });
});
