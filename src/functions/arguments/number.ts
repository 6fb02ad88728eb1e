import type { InstallmentNumber } from "../../calculation/dueDate/installmentNumbers";
import { isBlank, isBlankOrZero, shown } from "../cells/cellValue";
import { InputError } from "../cells/inputError";
import type { CellKind } from "./argumentKind";

const WHICH = "Enter 1, 2, 3 or 4.";

/** The number of an estimated tax installment. */
export const installmentNumber: CellKind<InstallmentNumber> = {
  id: "installment-number",
  title: "Installment number",
  description:
    "A whole number from 1 to 4; a nonresident has 1 to 3. A blank cell returns an error.",
  accepted: ["1", "4", '"2"'],
  notAccepted: ["0", "5", '"first"'],
  takes: "cell",
  isEmpty: isBlank,
  whenBlank: { enter: WHICH },
  read: (value, name) => {
    const number = typeof value === "string" ? Number(value) : value;
    if (number === 1 || number === 2 || number === 3 || number === 4) return number;
    throw new InputError(name, `${shown(value)} is not an installment number. ${WHICH}`);
  },
};

/**
 * A small number of persons or check boxes. A blank cell is 0.
 *
 * @param most - The largest number accepted.
 */
export function count(most: number): CellKind<number> {
  return {
    id: "count",
    title: "Number",
    description: "A whole number. A blank cell is 0.",
    accepted: ["2", "0", '"1"', '""'],
    notAccepted: ["1.5", "-1", '"two"'],
    takes: "cell",
    isEmpty: isBlankOrZero,
    whenBlank: { means: 0 },
    read: (value, name) => {
      const number = typeof value === "string" ? Number(value) : value;
      if (typeof number === "number" && Number.isInteger(number) && number >= 0 && number <= most)
        return number;
      throw new InputError(
        name,
        `${shown(value)} is not a valid number. Enter a whole number from 0 to ${String(most)}.`
      );
    },
  };
}
