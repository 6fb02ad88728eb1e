import { describe, expect, it } from "vitest";
import { readSource } from "../../src/rules/source";
import { documents, sourcedOf, writtenTables, type WrittenEntry } from "./rulesFiles";

/** Entries known only from memory: "table: place in the document". Whoever adds one here checks it first. */
const FROM_MEMORY: readonly string[] = [
  "business-income-deduction: section 3.27; shares of wages and UBIA, IRC section 199A(b)(2)(B)",
  "business-income-deduction: section 3.27; shares of wages and UBIA, IRC section 199A(b)(2)(B)",
  "capital-loss-limit: 1211(b)",
  "dependent-standard-deduction: section 3.15",
  "itemized-limit: 68(f), as in force through 2025",
  "mailing-addresses: chart of addresses",
  "mailing-addresses: chart of addresses",
  "mailing-addresses: chart of addresses",
  "mailing-addresses: chart of addresses",
  "mailing-addresses: chart of addresses",
  "mailing-addresses: chart of addresses",
  "mailing-addresses: chart of addresses",
  "mailing-addresses: chart of addresses",
  "mailing-addresses: chart of addresses",
  "mailing-addresses: chart of addresses",
  "mailing-addresses: chart of addresses",
  "mailing-addresses: chart of addresses",
  "mailing-addresses: chart of addresses",
  "mailing-addresses: chart of addresses",
  "mailing-addresses: chart of addresses",
  "mailing-addresses: chart of addresses",
  "mailing-addresses: chart of addresses",
  "mailing-addresses: chart of addresses",
  "mailing-addresses: chart of addresses",
  "mailing-addresses: chart of addresses",
  "mailing-addresses: chart of addresses",
  "mailing-addresses: chart of addresses",
  "mailing-addresses: chart of addresses",
  "mailing-addresses: chart of addresses",
  "mailing-addresses: chart of addresses",
  "mailing-addresses: chart of addresses",
  "mailing-addresses: chart of addresses",
  "mailing-addresses: chart of addresses",
  "mailing-addresses: chart of addresses",
  "mailing-addresses: chart of addresses",
  "mailing-addresses: chart of addresses",
  "mailing-addresses: chart of addresses",
  "service-center-streets: Austin",
  "state-and-local-cap: 164(b)(6)",
  "state-extensions: Connecticut: interest",
  "state-extensions: Indiana: penalty",
  "state-extensions: Kansas: penalty",
  "state-extensions: Mississippi: federal extension",
  "state-extensions: Wisconsin: interest",
];

const cited = writtenTables.flatMap((table) => {
  const { id, source, confidence } = table;
  const head = source && confidence !== undefined ? [{ source, confidence }] : [];
  return [...head, ...sourcedOf(table)].map((entry: WrittenEntry) => ({ table: id, entry }));
});

describe("the documents of rules/sources.json", () => {
  it("include every one that a table cites", () => {
    const unlisted = cited.filter(({ entry }) => !(entry.source.document in documents));
    expect(unlisted).toEqual([]);
  });

  it("are each cited somewhere", () => {
    const used = new Set(cited.map(({ entry }) => entry.source.document));
    expect(Object.keys(documents).filter((document) => !used.has(document))).toEqual([]);
  });

  it("are each cited by a name of their own", () => {
    const cites = Object.values(documents).map(({ cite }) => cite);
    expect(cites.filter((cite, index) => cites.indexOf(cite) !== index)).toEqual([]);
  });
});

describe("the confidence of the entries", () => {
  it("is memory only where it is known to be", () => {
    const fromMemory = cited.filter(({ entry }) => entry.confidence === "memory");
    expect(fromMemory.map(({ table, entry }) => `${table}: ${entry.source.at}`)).toEqual(
      FROM_MEMORY
    );
  });
});

describe("a source", () => {
  const at = (place: string, document = "usc-26") => ({
    source: { document, at: place },
    confidence: "official" as const,
  });

  // In the style of the IRS instructions: "section 6651(a)(1)", "sections 6651(a)(1) and 6654", "Regulations section 1.6081-4".
  it.each([
    ["attaches a bracket to its document", at("(c)", "usc-5-6103"), "5 U.S.C. 6103(c)"],
    ["puts a section number after a space", at("6651(a)(1)"), "IRC section 6651(a)(1)"],
    ["names a part of one section", at("6654(c)(2), (k)"), "IRC section 6654(c)(2), (k)"],
    [
      "names two sections",
      at("219(f)(3) and 223(d)(4)(B)"),
      "IRC sections 219(f)(3) and 223(d)(4)(B)",
    ],
    [
      "names several sections before a regulation",
      at("6072(a), (c), 6151(a); Regulations section 1.6081-5(a)"),
      "IRC sections 6072(a), (c), 6151(a); Regulations section 1.6081-5(a)",
    ],
    [
      "names one section before a regulation",
      at("6081(a); Regulations section 1.6081-4(a)"),
      "IRC section 6081(a); Regulations section 1.6081-4(a)",
    ],
    [
      "puts a place in words after a comma",
      at("line 4", "form-4868-2025"),
      "Form 4868 (2025) instructions, line 4",
    ],
  ])("%s", (_how, written, citation) => {
    expect(readSource(written)).toEqual({
      document: written.source.document,
      citation,
      confidence: "official",
    });
  });

  it("is refused when its document is not listed", () => {
    expect(() => readSource(at("1", "no-such-document"))).toThrow(
      new RangeError('rules/sources.json does not list "no-such-document"')
    );
  });
});
