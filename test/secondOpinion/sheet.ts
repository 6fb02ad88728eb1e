import { Workbook } from "@cj-tech-master/excelts";
import { installFormulaEngine } from "@cj-tech-master/excelts/formula";
import { dayNumber } from "./civilDays";

installFormulaEngine();

/** January 1, 1970 in the 1900 date system of worksheets. */
const SERIAL_OF_1970 = 25_569;

/** A date as a worksheet serial number. */
export function serialOf(text: string): number {
  const [year = 0, month = 0, date = 0] = text.split("-").map(Number);
  return dayNumber(year, month, date) + SERIAL_OF_1970;
}

/**
 * Results of worksheet formulas, calculated together by a spreadsheet engine.
 *
 * @param formulas - Without the equals sign. They may refer to the columns.
 * @param columns - Formulas or numbers, written from the first row down in columns H, I and so on.
 */
export function answers(
  formulas: readonly string[],
  columns: readonly (readonly (number | string)[])[] = []
): readonly number[] {
  const workbook = new Workbook();
  const sheet = workbook.addWorksheet("Sheet");
  columns.forEach((cells, index) => {
    const column = String.fromCharCode("H".charCodeAt(0) + index);
    cells.forEach((cell, row) => {
      sheet.getCell(`${column}${String(row + 1)}`).value =
        typeof cell === "number" ? cell : { formula: cell };
    });
  });
  formulas.forEach((formula, row) => {
    sheet.getCell(`A${String(row + 1)}`).value = { formula };
  });
  workbook.calculateFormulas();
  return formulas.map((formula, row) => {
    const { result } = sheet.getCell(`A${String(row + 1)}`);
    if (typeof result !== "number")
      throw new TypeError(`${formula} returns ${JSON.stringify(result)}`);
    return result;
  });
}
