import { describe, expect, it } from "vitest";
import { page, section, textOf } from "./builtHelp";

const errorsOn = (id: string): string => textOf(section(page(`${id}.html`), "errors"));
const codes = (id: string): string[] =>
  [...new Set(errorsOn(id).match(/#(?:VALUE!|N\/A|SPILL!|BUSY!|NAME\?)/g))].toSorted();

describe("the errors on the page of a function", () => {
  it.each([
    ["a row function with rule tables", "DUE", ["#BUSY!", "#N/A", "#NAME?", "#SPILL!", "#VALUE!"]],
    ["a row function without rule tables", "SHORTFALL", ["#BUSY!", "#NAME?", "#SPILL!", "#VALUE!"]],
    ["a function of one cell", "LIABILITY", ["#BUSY!", "#N/A", "#NAME?", "#VALUE!"]],
    ["a table without arguments", "RULETABLES", ["#BUSY!", "#NAME?", "#SPILL!"]],
    ["a look-up in any rule table", "SOURCE", ["#BUSY!", "#N/A", "#NAME?", "#SPILL!", "#VALUE!"]],
    ["a look-up that needs no date", "KNOWNTHROUGH", ["#BUSY!", "#NAME?", "#SPILL!", "#VALUE!"]],
  ])("follow from %s: %s", (_what, id, expected) => {
    expect(codes(id)).toEqual(expected);
  });

  it("advise an assumed rate only where a function takes one", () => {
    expect(errorsOn("CHARGES")).toContain("enter assumedRate");
    expect(errorsOn("DUE")).not.toContain("assumedRate");
  });

  it("are all on the page of error messages", () => {
    const read = textOf(page("errors.html"));
    for (const code of [...codes("DUE"), "########"]) expect(read).toContain(code);
  });
});
