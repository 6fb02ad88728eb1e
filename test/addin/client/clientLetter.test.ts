import { describe, expect, it } from "vitest";
import {
  clientLetter,
  greetingLine,
  letterSheet,
  letterText,
} from "../../../src/addin/client/clientLetter";
import { calendarDate } from "../../../src/calendar/calendarDate";
import { fromCatalog } from "../../functions/fromCatalog";
import { readLetter } from "../../secondOpinion/letterReading";
import { changed, rowOf, sampleList, serial, settingsOn } from "../list/sampleList";

const settings = settingsOn("2026-06-01");
const letterOf = (name: string, on = "2026-06-01") => clientLetter(rowOf(name), settingsOn(on), "");
const cell = (row: readonly unknown[], heading: string): unknown =>
  row[sampleList.headings.indexOf(heading)];

describe("the letter to a client", () => {
  it.each(sampleList.rows.map((row) => [String(row[0]), row] as const))(
    "is the full letter of MEMO, by paragraphs: %s",
    (name, row) => {
      const at = (heading: string): unknown[][] => [[cell(row, heading)]];
      const arguments_ = [
        at("Tax year or fiscal year end"),
        at("Estimated total tax"),
        at("Total payments"),
        at("Paid with request"),
        [[serial("2026-06-01")]],
        at("Requested on"),
        at("Confirmed on"),
        at("Rejected on"),
        at("Filed on"),
        null,
        at("Planned filing date"),
        at("Planned payment date"),
        [["full"]],
        null,
        at("State"),
        at("Filer type"),
        null,
        at("Postponement begins"),
        at("Postponement ends"),
      ];
      const isRecorded = ["Requested on", "Confirmed on", "Rejected on", "Filed on"].some(
        (heading) => cell(row, heading) !== ""
      );
      let memo: unknown;
      try {
        memo = (fromCatalog("MEMO")(...arguments_) as unknown[][])[0]?.[0];
      } catch {
        expect(() => letterOf(name)).toThrow(/^The letter cannot be written\. Cell /);
        return;
      }
      const text = letterOf(name).paragraphs.join(" ");
      // The list has a column for an extension that is planned, which MEMO has no argument for.
      if (isRecorded || cell(row, "Valid extension") === "no") expect(text).toBe(memo);
      else expect(text.slice(0, 40)).toBe(String(memo).slice(0, 40));
    }
  );

  it.each([
    ["Celandine", "request rejected and not resent in time", 814.31],
    ["Bramble", "no extension requested, return late", 1667.63],
    ["Oxlip", "no extension requested, return late", 551.75],
  ])("is true for %s on June 1, 2026", (name, version, cost) => {
    // What the usability trial found false: an extension that does not exist, and a cost that is too low.
    const letter = letterOf(name);
    const read = readLetter(letter.paragraphs.join(" "));
    expect(letter.version).toBe(version);
    expect(read.cost).toBe(cost);
    expect(read.countsOnExtension).toBe(false);
    expect(read.hasUntil).toBeUndefined();
    expect(read.wasDue.length).toBeGreaterThan(0);
    expect(read.past.every((date) => date <= serial("2026-06-01"))).toBe(true);
    expect(read.future.every((date) => date >= serial("2026-06-01"))).toBe(true);
  });

  it("changes with the as-of date", () => {
    const versions = ["2026-04-14", "2026-04-15", "2026-04-16", "2026-04-21"].map(
      (date) => letterOf("Celandine", date).version
    );
    expect(versions).toEqual([
      "extension not yet requested",
      "requested, no proof yet",
      "request rejected, to be resent",
      "request rejected and not resent in time",
    ]);
  });

  it("asks for what is still needed, once", () => {
    const { paragraphs } = clientLetter(rowOf("Bramble"), settings, "Form 1099-B. ");
    expect(paragraphs.filter((text) => text.includes("1099-B"))).toEqual([
      "We still need the following from you: Form 1099-B.",
    ]);
  });

  it("leaves out the cost and says so where a rate is missing", () => {
    const list = changed("Bramble", { "Planned payment date": serial("2027-04-15") });
    const { leftOut, paragraphs } = clientLetter(rowOf("Bramble", list), settings, "");
    expect(leftOut).toMatch(/^The letter does not state the cost of waiting\. .*12\/31\/2026/);
    expect(readLetter(paragraphs.join(" ")).cost).toBeUndefined();
  });

  it("is refused with the cell that cannot be read", () => {
    const list = changed("Bramble", { "Estimated total tax": "n/a" });
    expect(() => clientLetter(rowOf("Bramble", list), settings, "")).toThrow(
      /^The letter cannot be written\. Cell E\d+ \(Estimated total tax\): "n\/a" is not/
    );
  });
});

describe("a letter on paper", () => {
  const letter = { version: "", paragraphs: ["One.", "Two."], leftOut: "" };

  it("has a greeting with a blank to fill in", () => {
    expect(greetingLine("")).toMatch(/^Dear _+:$/);
    expect(letterText(" Ms. Bramble ", letter)).toBe("Dear Ms. Bramble:\n\nOne.\n\nTwo.");
  });

  it("prints on one page with its date, and the client in the footer", () => {
    const sheet = letterSheet("Bramble/Co", calendarDate("2026-06-01"), "", letter);
    expect(sheet.name).toBe("Letter Bramble Co");
    expect(sheet.cells[0]).toEqual(["June 1, 2026"]);
    expect(sheet.cells.flat().filter((text) => text !== "")).toEqual([
      "June 1, 2026",
      greetingLine(""),
      "One.",
      "Two.",
    ]);
    expect(sheet.page).toEqual({
      footer: "Bramble/Co, 6/1/2026",
      isLandscape: false,
      wrapsText: true,
    });
  });
});
