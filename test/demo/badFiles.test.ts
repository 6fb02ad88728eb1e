import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { strToU8, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { REFUSED } from "../../src/demo/terminal/exitCode";
import { goodWorkbook, run } from "./commandFixture";
import { newFolder, workbookFile } from "./workbookFixture";

describe("a file that is not a workbook", () => {
  const cases: [what: string, bytes: Uint8Array, sentence: RegExp][] = [
    ["text", strToU8("a,b\n1,2\n"), /is not an \.xlsx workbook/],
    ["nothing", new Uint8Array(), /is empty/],
    ["an old workbook", Uint8Array.of(0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1), /old \.xls/],
    [
      "a protected workbook",
      Buffer.concat([
        Uint8Array.of(0xd0, 0xcf, 0x11, 0xe0),
        Buffer.from("EncryptedPackage", "utf16le"),
      ]),
      /protected by a password/,
    ],
    ["another zip file", zipSync({ "a.txt": strToU8("a") }), /is a zip file but not a workbook/],
    ["a binary workbook", zipSync({ "xl/workbook.bin": strToU8("a") }), /\.xlsb/],
    [
      "a broken workbook",
      zipSync({ "xl/workbook.xml": strToU8("<workbook") }),
      /could not be read/,
    ],
  ];

  it.each(cases)("is rejected in one sentence: %s", async (_what, bytes, sentence) => {
    const path = join(newFolder(), "given.xlsx");
    writeFileSync(path, bytes);
    const { code, printed, complaints } = await run(path);
    expect(code).toBe(REFUSED);
    expect(printed).toBe("");
    expect(complaints).toHaveLength(1);
    expect(complaints[0]).toMatch(sentence);
    expect(existsSync(path.replace("given.xlsx", "given.recalculated.xlsx"))).toBe(false);
  });

  it("is rejected when it is incomplete, missing or a folder", async () => {
    const whole = readFileSync(await goodWorkbook());
    const folder = newFolder();
    const cut = join(folder, "cut.xlsx");
    writeFileSync(cut, whole.subarray(0, whole.length / 2));
    mkdirSync(join(folder, "folder.xlsx"));
    expect((await run(cut)).complaints[0]).toMatch(/damaged or incomplete/);
    expect((await run(join(folder, "none.xlsx"))).complaints[0]).toMatch(/does not exist/);
    expect((await run(join(folder, "folder.xlsx"))).complaints[0]).toMatch(/is a folder/);
  });

  it("is rejected when it uses the 1904 date system", async () => {
    const path = await workbookFile((workbook) => {
      workbook.addWorksheet("Sheet").getCell("A1").value = 1;
      workbook.properties.date1904 = true;
    });
    expect((await run(path)).complaints[0]).toMatch(/uses the 1904 date system/);
  });
});
