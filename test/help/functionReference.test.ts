import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { functionReference } from "../../src/help/functionReference";
import { gatherHelp } from "../../src/help/helpModel";
import { hostOfBuiltAddIn } from "../../src/host/builtAddIn";

describe("the reference in src/help/functions.md", () => {
  const text = readFileSync(new URL("../../src/help/functions.md", import.meta.url), "utf8");

  it("is what the catalog and the built add-in give; otherwise run npm run reference", async () => {
    expect(text).toBe(await functionReference(gatherHelp(hostOfBuiltAddIn("null"))));
  });

  it("has lines of at most 130 characters, unless one word is longer", () => {
    const long = text.split("\n").filter(
      (line) =>
        line.length > 130 &&
        line
          .replace(/"[^"]*"/g, "")
          .replace(/^- /, "")
          .includes(" ")
    );
    expect(long).toEqual([]);
  });
});
