import { isBlankOrZero, shown } from "../cells/cellValue";
import { InputError } from "../cells/inputError";
import type { CellKind } from "./argumentKind";
import { isPlaceholder } from "./placeholder";

const LONGEST = 2_000;

/** Words of the preparer, without the period that the sentence around them adds. A blank cell is no words. */
export const text: CellKind<string> = {
  id: "text",
  title: "Text",
  description: "Any text of at most 2,000 characters. A blank cell is no text.",
  accepted: ['"K-1 of the partnership"', '""'],
  notAccepted: ['"n/a"', '"TBD"'],
  takes: "cell",
  isEmpty: isBlankOrZero,
  whenBlank: { means: "" },
  read: (value, name) => {
    if (isPlaceholder(value))
      throw new InputError(
        name,
        `${shown(value)} is not text for a letter. Enter the words, or leave the cell blank.`
      );
    const words = String(value).trim();
    if (words.length > LONGEST)
      throw new InputError(
        name,
        `The text has ${words.length.toLocaleString("en-US")} characters. Shorten it to ${LONGEST.toLocaleString("en-US")} or fewer.`
      );
    return words.replace(/[\s.]+$/, "");
  },
};
