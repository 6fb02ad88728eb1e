import { describe, expect, it } from "vitest";
import { clientFacts } from "../../../src/addin/client/clientFacts";
import { clientRow } from "../../../src/addin/list/clientRow";
import { fromCatalog } from "../../functions/fromCatalog";
import { changed, listOf, rowOf, sampleList, serial, settingsOn } from "../list/sampleList";

const asOf = "2026-06-01";
const settings = settingsOn(asOf);
const factsOf = (name: string, on = asOf) => clientFacts(rowOf(name), settingsOn(on));

/** One answer of a single function for a client of the sample, by the headings of its arguments. */
function single(
  id: string,
  row: readonly unknown[],
  names: readonly string[]
): string | number | undefined {
  const cells = names.map((name) => {
    if (name === "") return null;
    if (name === "asOf") return [[serial(asOf)]];
    const at = sampleList.headings.indexOf(name);
    return at < 0 ? [[name]] : [[row[at]]];
  });
  try {
    return (fromCatalog(id)(...cells) as (string | number)[][])[0]?.[0];
  } catch {
    return undefined;
  }
}
const YEAR = "Tax year or fiscal year end";
const FILER = ["State", "Filer type"];
const MOVED = ["Postponement begins", "Postponement ends"];
const RECORD = ["Requested on", "Confirmed on", "Rejected on", "Filed on"];

describe("the facts of a client", () => {
  it.each(sampleList.rows.map((row, index) => [String(row[0]), index] as const))(
    "are the answers of the single functions: %s",
    (_name, index) => {
      const row = sampleList.rows[index] ?? [];
      const client = clientRow(sampleList, index, 2025);
      if (!client) throw new Error("The row is blank.");
      const { answers, stage } = clientFacts(client, settings);
      const dates = [YEAR, ...FILER, ...MOVED];
      expect(answers["Regular due date"].value).toBe(single("DUE", row, dates));
      expect(answers["Extended due date"].value).toBe(single("EXTENDED", row, dates));
      const amounts = ["Estimated total tax", "Total payments"];
      expect(answers["Balance due"].value).toBe(single("SHORTFALL", row, amounts));
      expect(stage).toBe(single("STAGE", row, [YEAR, "asOf", ...RECORD, ...FILER, ...MOVED]));
      const next = [YEAR, "asOf", ...RECORD, "", ...FILER, ...MOVED];
      expect(answers["Days left"].text).toBe(String(single("DAYSLEFT", row, next) ?? ""));
    }
  );

  it("have as the amount to pay now the whole balance, without a cushion", () => {
    // SUGGEST with target full and no cushion; nothing was sent with a request.
    const answer = fromCatalog("SUGGEST")([[27600]], [[20000]], [["full"]], [[0]]);
    expect(answer).toEqual([[7600]]);
    expect(factsOf("Bramble").answers["Pay now"]).toMatchObject({ text: "$7,600.00", value: 7600 });
  });

  it("take off what was paid with a request once the request is made", () => {
    // 42,300 less 36,000 is 6,300; 4,000 went with the request of April 8.
    expect(factsOf("Betony", "2026-04-07").answers["Pay now"].value).toBe(6300);
    expect(factsOf("Betony", "2026-04-08").answers["Pay now"].value).toBe(2300);
  });

  it("leave nothing to pay once the balance is recorded as paid", () => {
    const list = listOf(
      ["Client", "Total tax", "Payments", "Paid on"],
      [["Anise", 20000, 15000, serial("2026-05-20")]]
    );
    const on = (date: string) => clientFacts(rowOf("Anise", list), settingsOn(date));
    expect(on("2026-05-19").answers["Pay now"].value).toBe(5000);
    expect(on("2026-05-20").answers["Pay now"].value).toBe(0);
  });

  it("price the wait to the planned dates, with the extension and without", () => {
    const { waiting } = factsOf("Bramble");
    // The season's answer for Bramble, checked in test/functions/request/letter.test.ts too.
    expect(waiting.when).toBe("If filed and paid on 7/20/2026");
    expect(waiting.without).toMatchObject({ text: "$1,667.63", value: 1667.63 });
    expect(waiting.isExtended).toBe(false);
    const charges = (extension: string) =>
      fromCatalog("CHARGES")(
        ...[2025, 27600, 20000, "7/20/2026", "7/20/2026", extension, "NY"].map((cell) => [[cell]])
      );
    expect(charges("yes")).toEqual([[waiting.withExtension.value]]);
    expect(charges("no")).toEqual([[waiting.without.value]]);
  });

  it("price the wait to the extended due date if nothing is planned", () => {
    const list = listOf(["Client", "Total tax", "Payments"], [["Anise", 42000, 27000]]);
    const { waiting } = clientFacts(rowOf("Anise", list), settings);
    expect(waiting.when).toBe("If filed and paid on 10/15/2026");
    // Client 3 of the usability trial, agreed to the cent by daily compounding by hand.
    expect(waiting.withExtension.value).toBe(953.42);
    expect(waiting.without.value).toBe(4441.69);
    expect(waiting.isExtended).toBe(false);
  });

  it.each([
    ["Celandine", 814.31],
    ["Bramble", 1667.63],
    ["Oxlip", 551.75],
  ])("state the cost without an extension for %s, who has none", (name, cost) => {
    // The figures of the season list in the usability trial.
    const { waiting, stage } = factsOf(name);
    expect(waiting.isExtended).toBe(false);
    expect(waiting.without.value).toBe(cost);
    expect(stage).toBe("past due");
  });
});

describe("what a client's return is", () => {
  it.each([
    ["Alder", "tax year 2025, Ohio"],
    ["Foxglove", "year ending 6/30/2026, Illinois"],
    ["Comfrey", "tax year 2025, foreign"],
  ])("is said with year and state: %s", (name, about) => {
    expect(factsOf(name).about).toBe(about);
  });
});

describe("a row with faults", () => {
  it("names the cell of each value that cannot be read, and shows the rest", () => {
    const list = changed("Bramble", { State: "Texass", "Estimated total tax": "n/a" });
    const { unreadable, problems, answers, stage } = clientFacts(rowOf("Bramble", list), settings);
    const at = sampleList.rows.findIndex(([name]) => name === "Bramble") + 4;
    expect(unreadable).toEqual([
      { address: `C${at}`, heading: "State" },
      { address: `E${at}`, heading: "Estimated total tax" },
    ]);
    expect(problems).toContain(
      `Cell E${at} (Estimated total tax): "n/a" is not a dollar amount. Enter a number such as 1234.56 or $1,234.56.`
    );
    expect(problems.find((problem) => problem.startsWith(`Cell C${at} (State)`))).toBeDefined();
    expect(answers["Balance due"].text).toBe("");
    expect(stage).toBeUndefined();
  });

  it("names the part of the payments that cannot be read", () => {
    const list = listOf(["Client", "Total tax", "W/H", "ES paid"], [["Anise", 20000, 9000, "?"]]);
    expect(clientFacts(rowOf("Anise", list), settings).problems).toEqual([
      expect.stringMatching(/^Cell D4 \(ES paid\): "\?" is not a dollar amount/) as string,
    ]);
  });

  it("says why a state's extended date depends on what is paid", () => {
    // Massachusetts: 80% of the tax is to be paid by the due date; a list has no column for it.
    expect(factsOf("Celandine").answers["State extended due date"].problem).toBe(
      "Massachusetts grants the extension only if 80% of its tax is paid by the due date."
    );
  });

  it("names a cell with an error of the worksheet", () => {
    const list = changed("Anise", { "Total payments": "#REF!" });
    const { unreadable } = clientFacts(rowOf("Anise", list), settings);
    expect(unreadable.map(({ heading }) => heading)).toEqual(["Total payments"]);
  });

  it("says that a rate is missing where the wait goes beyond the published quarters", () => {
    const list = changed("Bramble", {
      "Planned filing date": serial("2027-04-15"),
      "Planned payment date": serial("2027-04-15"),
    });
    const { waiting } = clientFacts(rowOf("Bramble", list), settings);
    expect(waiting.without.problem).toMatch(/12\/31\/2026/);
    const rated = clientFacts(rowOf("Bramble", list), settingsOn(asOf, "7%"));
    expect(rated.waiting.without.problem).toBe("");
  });
});
