import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { readFunctionDocs } from "../../src/help/functionDocs";
import { gatherHelp } from "../../src/help/helpModel";
import { hostOfBuiltAddIn } from "../../src/host/builtAddIn";
import { markdownRows } from "../markdownTable";

const root = new URL("../../", import.meta.url);
const docs = readFunctionDocs(fileURLToPath(new URL("src/functions", root)));
const help = new Map(
  gatherHelp(hostOfBuiltAddIn("null"), docs).functions.map((one) => [one.name, one])
);
const tablesOf = (name: string): string[] =>
  (help.get(name)?.tables ?? []).map(({ id }) => id).toSorted();

/** Rows of the map for contributors: a worksheet function and a file of its rules. */
const mapped = markdownRows(readFileSync(new URL("DEVELOPERS.md", root), "utf8"), "law").flatMap(
  ([, name = "", , rules = ""]) => {
    const [, id] = /^rules\/(.+)\.json$/.exec(rules) ?? [];
    return id === undefined || id === "sources" ? [] : [{ name: name.replaceAll("`", ""), id }];
  }
);

describe("the tables that a page says its function uses", () => {
  it.each(mapped)("hold what the map in DEVELOPERS.md names: $name, $id", ({ name, id }) => {
    expect(tablesOf(name)).toContain(id);
  });

  // Read off the calculation files by hand.
  it.each([
    ["SHORTFALL", []],
    ["PAYMENTSTOTAL", []],
    ["LINES", ["request-lines"]],
    ["SETAX", ["self-employment-tax"]],
    ["UNDERPAYRATE", ["underpayment-rate"]],
    ["INCOMETAX", ["capital-gain-rates", "income-tax-rates"]],
    ["STANDARDDEDUCTION", ["dependent-standard-deduction", "standard-deduction"]],
    ["DUE", ["extension-of-time", "legal-holidays", "nationwide-postponements", "return-due-date"]],
    [
      "CHARGES",
      [
        "extension-of-time",
        "reasonable-cause-test",
        "failure-to-file",
        "failure-to-file-minimum",
        "failure-to-pay",
        "legal-holidays",
        "nationwide-postponements",
        "return-due-date",
        "underpayment-rate",
      ],
    ],
  ])("are all that %s reaches and no other", (name, tables) => {
    expect(tablesOf(name)).toEqual(tables);
  });

  it("are all of them where tables are looked up by name", () => {
    const any = [...help.values()].filter(({ everyTable }) => everyTable).map(({ name }) => name);
    expect(any.toSorted()).toEqual(["RULETABLES", "KNOWNTHROUGH", "SOURCE"]);
  });
});

describe("the shape of an answer", () => {
  it.each([...help.values()])("is that of the source: $name is a $shape", ({ name, shape }) => {
    const doc = docs.get(name);
    const text = readFileSync(doc?.file ?? "", "utf8");
    const [, body = ""] = text.split(`export function ${doc?.declaredAs ?? ""}(`);
    const own = body.split("\n}\n")[0] ?? "";
    expect(own.includes("answerRows(")).toBe(shape === "row");
  });
});
