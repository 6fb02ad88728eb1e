import { describe, expect, it } from "vitest";
import { practiceFacts } from "./practiceFacts";
import { changed, listOf, sampleList, settingsOn } from "../list/sampleList";

const settings = settingsOn("2026-06-01");

describe("the troubles of a practice", () => {
  const facts = practiceFacts(sampleList, settings);

  it("count every client once by status", () => {
    expect(facts.clients).toBe(sampleList.rows.length);
    expect(facts.counts.reduce((sum, { count }) => sum + count, 0)).toBe(facts.clients);
    expect(facts.counts[0]?.stage).toBe("past due");
  });

  it("begin with the clients whose deadline was missed", () => {
    // The four whom the usability trial found with a filter of its own.
    const missed = facts.troubles.filter(({ stage }) => stage === "past due");
    expect(missed.map(({ name }) => name).toSorted()).toEqual([
      "Bramble",
      "Celandine",
      "Hornbeam",
      "Oxlip",
    ]);
    expect(facts.troubles.slice(0, missed.length)).toEqual(missed);
    expect(facts.counts[0]?.count).toBe(missed.length);
  });

  it("say what is wrong, by when, what to do, and where the client is", () => {
    const row = sampleList.rows.findIndex(([name]) => name === "Bramble") + 4;
    expect(facts.troubles.find(({ name }) => name === "Bramble")).toEqual({
      name: "Bramble",
      stage: "past due",
      issue: expect.stringContaining("no request was made") as string,
      deadline: "file now (was due 4/15/2026)",
      whatToDo: expect.stringContaining("File the return as soon as possible") as string,
      address: `A${row}`,
    });
  });

  it("have no client with reminders alone", () => {
    const list = listOf(
      ["Client", "Total tax", "Payments", "Requested on", "Confirmed on"],
      [["Anise", 20000, 20000, "4/10/2026", "4/10/2026"]]
    );
    const { troubles, counts } = practiceFacts(list, settingsOn("2026-04-12"));
    expect(troubles).toEqual([]);
    expect(counts).toEqual([{ stage: "extended", count: 1 }]);
  });

  it("list a row that cannot be read with its cell", () => {
    const list = changed("Anise", { State: "Texass" });
    const row = sampleList.rows.findIndex(([name]) => name === "Anise") + 4;
    const { troubles, counts } = practiceFacts(list, settings);
    expect(troubles.find(({ name }) => name === "Anise")).toMatchObject({
      stage: undefined,
      issue: `Cell C${row} (State) cannot be read`,
      address: `C${row}`,
    });
    expect(counts.at(-1)).toEqual({ stage: undefined, count: 1 });
  });

  it("leave out blank rows and totals", () => {
    const list = listOf(
      ["Client", "Total tax", "Payments"],
      [
        ["Anise", 20000, 15000],
        ["", "", ""],
        ["Total", 20000, 15000],
      ]
    );
    expect(practiceFacts(list, settings).clients).toBe(1);
  });

  it("are refused with the heading that is missing", () => {
    expect(() => practiceFacts(listOf(["Client", "Total tax"], [["Anise", 1]]), settings)).toThrow(
      "The first row has no heading for total payments. Add that column."
    );
    expect(() => practiceFacts(listOf(["Client"], []), settings)).toThrow(
      "The list has no row below its headings."
    );
  });
});
