import { isBlankOrZero, shown, type CellValue } from "../cells/cellValue";
import { InputError } from "../cells/inputError";
import { plainWord, type CellKind } from "./argumentKind";
import { readDate } from "./date";

const YES: readonly CellValue[] = [true, 1, "yes", "y", "x", "true", "1"];
const NO: readonly CellValue[] = [false, 0, "no", "n", "false", "0"];

/** Whether a value says yes or no; `undefined` when it says neither. */
export function yesOrNo(value: CellValue): boolean | undefined {
  const word = plainWord(value);
  if (YES.includes(word)) return true;
  return NO.includes(word) ? false : undefined;
}

/** Yes or no. A blank cell is no. */
export const yesNo: CellKind<boolean> = {
  id: "yes-no",
  title: "Yes or no",
  description:
    "One of the words below, in any case. A blank cell is no, unless the argument says otherwise. A date is not yes: enter it where a date is asked for, such as `requestedOn` in `ISSUES` or `ROSTER`.",
  accepted: ['"yes"', '"no"', "TRUE", "FALSE", '"x"', "1", "0", '""'],
  notAccepted: ['"maybe"', "2", '"4/10/2026"'],
  takes: "cell",
  isEmpty: isBlankOrZero,
  whenBlank: { means: false },
  read: (value, name) => {
    const answer = yesOrNo(value);
    if (answer !== undefined) return answer;
    const isDate = readDate(value) !== undefined && !(typeof value === "number" && value < 10_000);
    throw new InputError(
      name,
      isDate
        ? `${shown(value)} is a date, not yes or no. Enter yes or no here; STAGE, ISSUES and ROSTER take the date of the request.`
        : `${shown(value)} is not yes or no. Enter yes, no, TRUE, FALSE, x, 1 or 0.`
    );
  },
};
