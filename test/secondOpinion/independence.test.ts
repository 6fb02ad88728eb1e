/**
 * A second opinion that borrows from what it judges is none. The accounts themselves (every file here but the tests) use nothing of
 * src or rules, not even a type, and no package that src works with; they share the law alone, its figures copied by hand. One file is
 * no account and stands between: it calls the function under test as a sheet does.
 */
import { describe, expect, it } from "vitest";
import { filesUnder, importsOf, sourceFile } from "../contract/sourceFiles";

const files = filesUnder("test/secondOpinion", ".ts").filter((path) => !path.endsWith(".test.ts"));
const CALLERS = ["test/secondOpinion/answerOfCall.ts"];
const accounts = files.filter((path) => !CALLERS.includes(path));
/** A spreadsheet engine, a list of holidays and a source of random cases, none of them known to what is built. */
const PACKAGES = ["@cj-tech-master/excelts", "@18f/us-federal-holidays", "fast-check"];

const borrowed = (path: string): readonly string[] =>
  importsOf(sourceFile(path))
    .filter(({ isPackage, target }) =>
      isPackage ? !PACKAGES.includes(target) : !accounts.includes(target)
    )
    .map(({ target }) => target);

describe("the second opinions", () => {
  it.each(accounts)("take nothing from what they judge: %s", (path) => {
    expect(borrowed(path)).toEqual([]);
  });

  it("are kept apart from the files that call the functions", () => {
    expect(CALLERS.filter((path) => borrowed(path).length === 0)).toEqual([]);
    expect(accounts.length).toBeGreaterThan(15);
  });

  it.each(accounts)("read no figure of the rules: %s", (path) => {
    expect(sourceFile(path).text).not.toMatch(/rules\/|readFile|require\(/);
  });
});
