import { existsSync, linkSync, readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { NotBuilt } from "../../src/host/builtAddIn";
import { demoCommand } from "../../src/demo/terminal/demoCommand";
import { DONE, INCOMPLETE, REFUSED } from "../../src/demo/terminal/exitCode";
import { recalculateFile } from "../../src/demo/workbook/workbook";
import { fixtureHost } from "../host/fixtureAddIn";
import { goodWorkbook, run } from "./commandFixture";
import { formula, newFolder, workbookFile } from "./workbookFixture";

describe("a workbook on the command line", () => {
  it("is calculated and saved in the same folder, and errors are listed with their messages", async () => {
    const path = await goodWorkbook();
    const { code, printed, complaints } = await run(path);
    expect(code).toBe(DONE);
    expect(complaints).toEqual([]);
    expect(printed).toContain("3 formulas: 3 use the add-in");
    expect(printed).toContain(
      'Sheet!A2  #VALUE!  amount: "x" is not a number. Enter a number such as 4.'
    );
    expect(existsSync(path.replace("given.xlsx", "given.recalculated.xlsx"))).toBe(true);
  });

  it("lists a formula that was not calculated, and returns another exit code", async () => {
    const path = await workbookFile((workbook) => {
      workbook.addWorksheet("Sheet").getCell("B2").value = formula("FROBNICATE(1)", 7);
    });
    const { code, printed } = await run(path);
    expect(code).toBe(INCOMPLETE);
    expect(printed).toContain("Sheet!B2  =FROBNICATE(1)  the function FROBNICATE is not supported");
  });

  it("returns another exit code when the add-in itself failed", async () => {
    const path = await workbookFile((workbook) => {
      workbook.addWorksheet("Sheet").getCell("B2").value = formula("EXT.BREAK()");
    });
    const { code, printed } = await run(path);
    expect(code).toBe(INCOMPLETE);
    expect(printed).toContain("1 fault of the add-in:");
  });

  it.each([
    ["zero", "[[[0]],null,null]"],
    ["null", "[[[null]],null,null]"],
    ["text", '[[[""]],null,null]'],
  ])("passes blank cells as %s", async (habit, arrived) => {
    const path = await goodWorkbook();
    const out = join(newFolder(), "out.xlsx");
    await run(path, "-o", out, "--blanks", habit);
    const { Workbook } = await import("@cj-tech-master/excelts");
    const workbook = new Workbook();
    await workbook.xlsx.load(readFileSync(out));
    expect(workbook.getWorksheet("Sheet")?.getCell("A3").result).toBe(arrived);
  });
});

describe("the workbook itself", () => {
  it("is never replaced, under any name or link, even with force", async () => {
    const path = await goodWorkbook();
    const before = readFileSync(path);
    const folder = newFolder();
    const [symbolic, hard] = [join(folder, "symbolic.xlsx"), join(folder, "hard.xlsx")];
    symlinkSync(path, symbolic);
    linkSync(path, hard);
    for (const output of [
      path,
      symbolic,
      hard,
      `${folder}/../${path.split("/").slice(-2).join("/")}`,
    ]) {
      const { code, complaints } = await run(path, "-o", output, "--force");
      expect(code).toBe(REFUSED);
      expect(complaints).toEqual([`${output} is the workbook itself. Enter another file name.`]);
    }
    expect((await run(symbolic, "-o", path, "--force")).code).toBe(REFUSED);
    expect(readFileSync(path).equals(before)).toBe(true);
  });

  it("does not replace an existing file without force", async () => {
    const path = await goodWorkbook();
    const out = join(newFolder(), "out.xlsx");
    writeFileSync(out, "older");
    expect(await run(path, "-o", out)).toMatchObject({
      code: REFUSED,
      complaints: [`${out} already exists. Use --force to replace it.`],
    });
    expect(readFileSync(out, "utf8")).toBe("older");
    expect((await run(path, "-o", out, "--force")).code).toBe(DONE);
    expect(readFileSync(out, "utf8").startsWith("PK")).toBe(true);
  });

  it("is not saved over a folder, or in a folder that does not exist", async () => {
    const path = await goodWorkbook();
    const folder = newFolder();
    expect((await run(path, "-o", folder)).code).toBe(REFUSED);
    const { complaints } = await run(path, "-o", join(folder, "none", "out.xlsx"));
    expect(complaints[0]).toMatch(/The folder .*none does not exist/);
  });
});

describe("the command line", () => {
  it.each([
    [["--width", "wide"]],
    [["--width", "12"]],
    [["--blanks", "none"]],
    [["--unheard"]],
    [["one.xlsx", "two.xlsx"]],
    [["--requests", "Nobody"]],
    [["--requests", "all", "one.xlsx"]],
  ])("is rejected in one sentence: %j", async (words) => {
    const { code, complaints } = await run(...words);
    expect(code).toBe(REFUSED);
    expect(complaints).toHaveLength(1);
  });

  it("prints its help", async () => {
    const { code, printed } = await run("--help");
    expect(code).toBe(DONE);
    expect(printed).toContain("npm start");
  });

  it("says so when the add-in has not been built", async () => {
    const complaints: string[] = [];
    const code = await demoCommand([], {
      print: () => undefined,
      complain: (sentence) => complaints.push(sentence),
      host: () => {
        throw new NotBuilt('dist/functions.js does not exist. Run "npm run build" first.');
      },
      recalculate: (path) => recalculateFile(path, fixtureHost()),
    });
    expect(code).toBe(REFUSED);
    expect(complaints).toEqual(['dist/functions.js does not exist. Run "npm run build" first.']);
  });
});
