import { isBlankOrZero } from "../cells/cellValue";
import { InputError } from "../cells/inputError";
import type { CellKind } from "./argumentKind";

const LONGEST = 2_000;

/** Words of the preparer, without the period that the sentence around them adds. A blank cell is no words. */
export const text: CellKind<string> = {
  id: "text",
  title: "Text",
  description: "Any text of at most 2,000 characters. A blank cell is no text.",
  accepted: ['"K-1 of the partnership"', '""'],
  notAccepted: [],
  takes: "cell",
  isEmpty: isBlankOrZero,
  whenBlank: { means: "" },
  read: (value, name) => {
    const words = String(value).trim();
    if (words.length > LONGEST)
      throw new InputError(
        name,
        `The text has ${words.length.toLocaleString("en-US")} characters. Shorten it to ${LONGEST.toLocaleString("en-US")} or fewer.`
      );
    return words.replace(/[\s.]+$/, "");
  },
};
