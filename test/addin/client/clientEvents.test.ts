import { describe, expect, it } from "vitest";
import { EVENTS, eventEntry, recordedText } from "../../../src/addin/client/clientEvents";
import { calendarDate } from "../../../src/calendar/calendarDate";
import type { SelectedList } from "../../../src/addin/workbook/workbookHost";
import { listOf, rowOf, sampleList, serial, settingsOn } from "../list/sampleList";

const eventOf = (id: string) => {
  const event = EVENTS.find((one) => one.id === id);
  if (!event) throw new RangeError(`There is no event ${id}.`);
  return event;
};
const HEADINGS = ["Client", "Total tax", "Payments", "Requested on", "Confirmed on", "Rejected on"];
const listed = (...record: readonly unknown[]) =>
  listOf(HEADINGS, [["Anise", 20000, 15000, ...record]]);
const entered = (list: SelectedList, id: string, date: string, asOf = date) =>
  eventEntry(rowOf("Anise", list), eventOf(id), calendarDate(date), settingsOn(asOf));

describe("an event of a client", () => {
  it("is entered in the column of the list, answered with the next step", () => {
    const entry = entered(listed("", "", ""), "requested", "2026-04-14");
    expect(entry).toMatchObject({
      cell: { sheet: "Clients", address: "D4", was: "" },
      value: serial("2026-04-14"),
      format: "m/d/yyyy",
    });
    expect(entry.sentence).toBe(
      "Entered 4/14/2026 in cell D4 (Requested on) for Anise. Next: pay by 4/15/2026."
    );
  });

  it("is answered with the method if a request is to be resent", () => {
    // Pub. 1345: a request rejected on April 16 can be corrected within five days; see STAGE.
    const { sentence } = entered(listed(serial("2026-04-15"), "", ""), "rejected", "2026-04-16");
    expect(sentence).toMatch(/Next: resend the request by 4\/2\d\/2026\. Best method: [^.]+\.$/);
  });

  it("does not count yet if it is after the as-of date", () => {
    const { sentence } = entered(listed("", "", ""), "requested", "2026-04-15", "2026-04-01");
    expect(sentence).toContain("The as-of date is 4/1/2026, so this does not count yet.");
  });

  it("is shown as the list has it now", () => {
    const row = rowOf("Anise", listed(serial("2026-04-15"), "soon", ""));
    expect(EVENTS.map((event) => recordedText(row, event))).toEqual([
      "4/15/2026",
      '"soon"',
      "",
      "",
      "",
    ]);
  });

  it("is refused with the name of the column that is missing", () => {
    expect(() => entered(listed("", "", ""), "paid", "2026-04-15")).toThrow(
      'The list has no column for "balance paid". Add a column with the heading "Paid on".'
    );
  });

  it("is refused where the cell has a formula", () => {
    const list = { ...listed("", "", ""), formulas: [["", "", "", "=A1", "", ""]] };
    expect(() => entered(list, "requested", "2026-04-15")).toThrow(
      "Cell D4 (Requested on) has a formula. Change the date where the formula takes it from."
    );
  });

  it("is refused where the record would contradict itself", () => {
    expect(() => entered(listed("", "", ""), "proof", "2026-04-15")).toThrow(
      /^The date was not entered\. Cell D4 \(Requested on\): The cell is blank, but Confirmed on is/
    );
    expect(() => entered(listed(serial("2026-04-14"), "", ""), "rejected", "2026-04-01")).toThrow(
      /^The date was not entered\. Cell F4 \(Rejected on\): 4\/1\/2026 is before the request date/
    );
  });

  it("replaces only what was read", () => {
    const row = rowOf("Celandine");
    const { cell } = eventEntry(
      row,
      eventOf("proof"),
      calendarDate("2026-04-18"),
      settingsOn("2026-04-18")
    );
    expect(cell.was).toBe("");
    expect(cell.address).toBe(`N${sampleList.rows.indexOf(sampleList.rows[row.index] ?? []) + 4}`);
  });
});
