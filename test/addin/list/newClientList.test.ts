import { describe, expect, it } from "vitest";
import { listAround } from "../../../src/addin/workbook/listArea";
import { newClientList, usualTaxYear } from "../../../src/addin/list/newClientList";
import { usersOwn } from "../../../src/addin/list/ownList";
import { rosterAnswers } from "../../../src/addin/list/rosterAnswers";
import { calendarDate, type CalendarDate } from "../../../src/calendar/calendarDate";
import { addDays } from "../../../src/calendar/calendarDate";

const settings = (asOf: CalendarDate) => ({
  taxYear: usualTaxYear(asOf),
  asOf,
  assumedRate: "latest",
});
const made = newClientList(settings(calendarDate("2026-04-01")));
const { cells, widths, formats, choices, headingRow } = made;
const headings = cells[headingRow - 1] ?? [];

/** The days from New Year 2026 on. */
const DAYS = Array.from({ length: 53 }, (_day, week) =>
  addDays(calendarDate("2026-01-01"), week * 7)
);

describe("a new client list", () => {
  it("has a width, a format and choices for each heading, and each heading once", () => {
    expect(new Set(headings).size).toBe(headings.length);
    for (const list of [widths, formats, choices]) expect(list).toHaveLength(headings.length);
    for (const row of cells.slice(headingRow)) expect(row).toHaveLength(headings.length);
  });

  it("offers the states, the filer types, and yes or no as choices", () => {
    expect(choices[headings.indexOf("State")]).toContain("ME");
    expect(choices[headings.indexOf("Filer type")]).toEqual([
      "resident",
      "out of country",
      "nonresident",
    ]);
    expect(choices[headings.indexOf("Valid extension")]).toEqual(["yes", "no"]);
  });

  it("has the answers beside the name, and formulas in every row that refer to its own inputs", () => {
    expect(headings.slice(0, 4)).toEqual(["Client", "Status", "Next deadline", "Days left"]);
    expect(cells[headingRow]?.[1]).toBe(
      '=EXT.ROSTERROWS($L$3:$AB$3,$L4:$AB4,$D$1,$B$1,$F$1,"Status")'
    );
    expect(cells.at(-1)?.[1]).toBe(
      '=EXT.ROSTERROWS($L$3:$AB$3,$L28:$AB28,$D$1,$B$1,$F$1,"Status")'
    );
    expect(made.inputs).toEqual(["B1", "D1", "F1", "A4:A28", "L4:AB28"]);
    expect(made.frozenColumns).toBe(1);
  });

  it.each(DAYS)("starts without an issue on %s", (asOf) => {
    const sheet = newClientList(settings(asOf));
    const list = usersOwn(
      listAround(
        { sheet: "Clients", top: 1, left: 1, values: sheet.cells, formulas: sheet.cells },
        4,
        12
      )
    );
    expect(list.headings[0]).toBe("Client");
    const at = headings.indexOf("Tax year or fiscal year end");
    const inputs = sheet.cells.slice(2, 4).map((row) => row.slice(at));
    const [answer] = rosterAnswers(inputs[0] ?? [], inputs.slice(1), settings(asOf), [
      "Status",
      "Issues",
      "Most serious issue",
      "Severity",
      "Unreadable",
      "Penalties and interest (planned)",
    ]);
    expect([answer?.Issues.value, answer?.Unreadable.text, answer?.Status.text]).toEqual([
      0,
      "",
      expect.stringMatching(/^(not requested|extended|filed)$/),
    ]);
    expect(answer?.["Penalties and interest (planned)"].value).toBe(0);
  });
});
