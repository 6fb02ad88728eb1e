import { readdirSync, readFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import type * as CatalogModule from "../../src/functions/catalog";
import { inCell, serial } from "../functions/sheet";

/**
 * An invented year, put into a copy of the rules by the steps of DEVELOPERS.md, "Adding a year": documents, entries and days, no code.
 * Every figure of 2030 here is made up for the drill and shown to nobody.
 */
const DRILL = { document: "drill-2030", at: "invented for the drill" };
const THROUGH = "2031-12-31";
const folder = new URL("../../rules/", import.meta.url);

type Entry = Record<string, unknown>;
interface Rules {
  id?: string;
  knownThrough?: string;
  values?: Entry[];
  documents?: Record<string, unknown>;
  [list: string]: unknown;
}

/** The figures that are new in the invented year, by table; where none is named the year before is carried on. */
const FIGURES: Readonly<Record<string, Entry>> = {
  "underpayment-rate": { rate: "0.11" },
  "failure-to-file-minimum": { amount: "700" },
  "standard-deduction": {
    amount: { single: "30000", joint: "60000", separate: "30000", head: "45000" },
  },
  "perfection-period": { days: "7" },
};

/** The day from which the new entry of a table counts: what the table says its day means. */
function beginsOn(table: string): string {
  if (table === "estimated-tax-installments" || /return-due-date|extension-of-time/.test(table))
    return "2030-12-31";
  return ["failure-to-file-minimum", "perfection-period"].includes(table)
    ? "2031-01-01"
    : "2030-01-01";
}

function withDrill(rules: Rules): Rules {
  if (rules.documents) {
    const told = {
      cite: "Drill of 2030",
      title: "Invented",
      publisher: "Nobody",
      seenIn: "this test",
      read: "2030-12-01",
    };
    return { ...rules, documents: { ...rules.documents, [DRILL.document]: told } };
  }
  const { id = "", knownThrough = "", values } = rules;
  if (knownThrough >= THROUGH) return rules;
  const last = values?.at(-1);
  if (last) {
    const entry = {
      ...last,
      ...FIGURES[id],
      from: beginsOn(id),
      source: DRILL,
      confidence: "secondary",
    };
    return { ...rules, knownThrough: THROUGH, values: [...(values ?? []), entry] };
  }
  if (id !== "mailing-addresses") return { ...rules, knownThrough: THROUGH };
  const addresses = rules["addresses"] as Entry[];
  const edition = addresses
    .filter((row) => row["edition"] === 2025)
    .map((row) => ({
      ...row,
      edition: 2030,
      lines: ["Drill Center", "Drill City, ZZ 00000"],
      source: DRILL,
    }));
  return { ...rules, knownThrough: THROUGH, addresses: [...addresses, ...edition] };
}

let catalog: typeof CatalogModule.catalog;
const answer = (name: string, ...values: unknown[]): unknown => {
  const found = catalog[name];
  if (!found) throw new RangeError(`${name} is not in the catalog`);
  return inCell((...cells: unknown[]) => found.answer(cells), ...values);
};

beforeAll(async () => {
  vi.resetModules();
  for (const name of readdirSync(folder).filter((file) => file.endsWith(".json"))) {
    const rules = JSON.parse(readFileSync(new URL(name, folder), "utf8")) as Rules;
    vi.doMock(`../../rules/${name}`, () => {
      const changed = withDrill(rules);
      return { ...changed, default: changed };
    });
  }
  ({ catalog } = await import("../../src/functions/catalog"));
});
afterAll(() => {
  for (const name of readdirSync(folder).filter((file) => file.endsWith(".json")))
    vi.doUnmock(`../../rules/${name}`);
  vi.resetModules();
});

describe("an invented year 2030, added to the rules alone", () => {
  it.each([
    // April 15, 2031 is a Tuesday, October 15 a Wednesday, June 16 the Monday after a Sunday; January 15, 2031 a Wednesday
    ["DUE", [2030], "2031-04-15"],
    ["EXTENDED", [2030], "2031-10-15"],
    ["DUE", [2030, "", "out of country"], "2031-06-16"],
    ["INSTALLMENT", [2030, 4], "2031-01-15"],
    ["STATEDUE", [2030, "VA"], "2031-05-01"],
  ])("%s%j is %s", (name, values, day) => {
    expect(answer(name, ...values)).toBe(serial(day));
  });

  it("charges interest at the invented rate, a day's worth by 365", () => {
    expect(answer("UNDERPAYRATE", "2031-05-01")).toBe(0.11);
    // 10,000 x 0.11 / 365 = 3.0137
    expect(answer("INTEREST", 10000, "2031-05-01", "2031-05-02")).toBe(3.01);
  });

  it("takes the invented minimum, deduction, address and days to send again", () => {
    expect(answer("LATEFILE", 2030, 700, "2031-09-30")).toBe(700);
    expect(answer("STANDARDDEDUCTION", 2030, "single")).toBe(30000);
    expect(answer("MAILTO", 2030, "TX", 100)).toBe("Drill Center, Drill City, ZZ 00000");
    expect(answer("STAGE", 2030, "2031-04-22", "2031-04-14", "", "2031-04-15")).toBe("rejected");
    expect(answer("STAGE", 2030, "2031-04-23", "2031-04-14", "", "2031-04-15")).toBe("past due");
  });

  it("cites where the invented figure comes from", () => {
    expect(answer("SOURCE", "underpayment rate", "2031-01-01")).toBe(
      "Drill of 2030, invented for the drill (secondary source)"
    );
    expect(answer("KNOWNTHROUGH", "underpayment rate")).toBe(serial(THROUGH));
  });

  it("leaves the years before as they were", () => {
    expect(answer("CHARGES", 2025, 20000, 18500, "2026-10-15", "2026-10-15", "yes")).toBe(50.34);
    expect(answer("STANDARDDEDUCTION", 2025, "single")).toBe(15750);
    expect(answer("LATEFILE", 2025, 2000, "2026-07-01")).toBe(525);
    expect(answer("MAILTO", 2025, "TX", 100)).toBe(
      "Internal Revenue Service, P.O. Box 1302, Charlotte, NC 28201-1302"
    );
  });

  it("still refuses what lies beyond it", () => {
    expect(answer("DUE", 2032)).toMatchObject({ code: "#N/A" });
    expect(answer("UNDERPAYRATE", "2032-01-01")).toMatchObject({ code: "#N/A" });
  });
});
