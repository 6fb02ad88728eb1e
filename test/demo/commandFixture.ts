import { demoCommand } from "../../src/demo/terminal/demoCommand";
import { recalculateFile } from "../../src/demo/workbook/workbook";
import { fixtureHost } from "../host/fixtureAddIn";
import { formula, workbookFile } from "./workbookFixture";

/** Runs the program with the fixture add-in and keeps what it says. */
export async function run(...words: string[]) {
  const printed: string[] = [];
  const complaints: string[] = [];
  const code = await demoCommand(words, {
    print: (line) => printed.push(line),
    complain: (sentence) => complaints.push(sentence),
    host: ({ blankHabit }) => fixtureHost(blankHabit),
    recalculate: (path, { blankHabit }) => recalculateFile(path, fixtureHost(blankHabit)),
  });
  return { code, printed: printed.join("\n"), complaints };
}

/** A workbook with one good answer, one error and one function that shows what arrives. */
export function goodWorkbook(): Promise<string> {
  return workbookFile((workbook) => {
    const sheet = workbook.addWorksheet("Sheet");
    sheet.getCell("A1").value = formula("EXT.DOUBLE(4)");
    sheet.getCell("A2").value = formula('EXT.DOUBLE("x")');
    sheet.getCell("A3").value = formula("EXT.ECHO(B3)");
  });
}
