import type { ProjectedTaxInput } from "../calculation/liability/projectedTax";
import type { ReturnItem } from "../calculation/liability/returnItems";
import { InputError } from "../inputError";
import { ZERO, type Decimal } from "../money/dollars";
import { cellValue, shown } from "./cells";
import { labelledRows } from "./itemArguments";
import { ITEM_LABELS } from "./itemLabels";
import { signedMoney } from "./moneyArguments";

/** The differences from last year that a projection knows. */
export type Changes = Pick<
  ProjectedTaxInput,
  "ordinary" | "businessProfit" | "gain" | "deductions" | "children"
>;

const CHANGED: Readonly<Partial<Record<ReturnItem, Exclude<keyof Changes, "children">>>> = {
  wages: "ordinary",
  interest: "ordinary",
  ordinaryDividends: "ordinary",
  pensions: "ordinary",
  retirementDistributions: "ordinary",
  unemployment: "ordinary",
  rentalIncome: "ordinary",
  partnershipIncome: "ordinary",
  shortTermGain: "ordinary",
  taxableSocialSecurity: "ordinary",
  otherIncome: "ordinary",
  businessProfit: "businessProfit",
  qualifiedDividends: "gain",
  longTermGain: "gain",
  adjustments: "deductions",
  itemizedDeductions: "deductions",
};

/**
 * Reads what is different from last year, from rows of label and difference; falls are negative.
 *
 * @param name - The argument, for the message.
 * @param argument - A block two columns wide, or nothing.
 * @returns The differences, added up.
 * @throws InputError naming the row whose label is unknown, or is one that a projection does not know.
 */
export function changes(name: string, argument: unknown): Changes {
  const found: Record<Exclude<keyof Changes, "children">, Decimal> = {
    ordinary: ZERO,
    businessProfit: ZERO,
    gain: ZERO,
    deductions: ZERO,
  };
  let children = 0;
  const rows = argument === null || argument === undefined ? [] : labelledRows(name, argument);
  for (const { place, item, cell } of rows) {
    const difference = signedMoney(place, cell);
    const kind = CHANGED[item];
    if (item === "childrenUnder17") {
      if (!difference.isInteger()) {
        throw new InputError(place, `${shown(cellValue(cell))} is no number of persons`);
      }
      children += difference.toNumber();
    } else if (kind) found[kind] = found[kind].plus(difference);
    else {
      const label = ITEM_LABELS[item][0] ?? item;
      throw new InputError(
        place,
        `"${label}" is nothing a projection knows; give the whole return to EXT.LIABILITY`
      );
    }
  }
  return { ...found, children };
}
