import type { CellValue } from "../../host/cellValues";
import type { CellPart } from "./sheetPart";
import { textOfRuns } from "./workbookPackage";
import { decodedText, plainText } from "./xmlText";

const DAY = 86_400_000;
const DATE_ZERO = Date.UTC(1899, 11, 30);

/** Whether a text of a file means yes. */
export const isTrue = (text: string | undefined): boolean => text === "1" || text === "true";

/** The value of a cell as its part contains it; undefined if there is none or it cannot be read. */
export function cellContent(cell: CellPart, shared: readonly string[]): CellValue | undefined {
  const { type, value, inlineText } = cell;
  if (type === "inlineStr")
    return inlineText === undefined ? undefined : decodedText(textOfRuns(inlineText.inside));
  if (value === undefined) return undefined;
  const text = plainText(value.inside);
  switch (type) {
    case "s": {
      const found = shared[Number(text.trim())];
      return found === undefined ? undefined : decodedText(found);
    }
    case "str":
      return decodedText(text);
    case "b":
      return isTrue(text.trim());
    case "e":
      return { error: text.trim() };
    default: {
      if (text.trim() === "") return undefined;
      const number = type === "d" ? (Date.parse(`${text}Z`) - DATE_ZERO) / DAY : Number(text);
      return Number.isFinite(number) ? number : undefined;
    }
  }
}
