import type { ProjectedTaxInput } from "../../calculation/liability/projectedTax";
import type { ReturnItem } from "../../calculation/liability/returnItems";
import { ZERO, type Decimal } from "../../money/dollars";
import { cellValue, shown } from "../cells/cellValue";
import { InputError } from "../cells/inputError";
import { readArgument, type RangeKind } from "./argumentKind";
import { signedDollars } from "./dollars";
import { labeledRows, labelOf } from "./returnItems";

/** The differences from last year that a projection takes. */
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

/** The differences from last year as rows of label and difference. A blank range is no change. */
export const changes: RangeKind<Changes> = {
  id: "change-rows",
  title: "Rows of label and difference",
  description:
    "A range of two columns, a label and the difference from last year in dollars, negative for a decrease. Blank rows are ignored. Some labels cannot be used in a projection. If the argument is left out, nothing changed.",
  accepted: ['{"wages",-5000}', '{"business profit",12000;"children under 17",1}'],
  notAccepted: ['{"withholding",100}'],
  takes: "range",
  whenBlank: {
    means: { ordinary: ZERO, businessProfit: ZERO, gain: ZERO, deductions: ZERO, children: 0 },
  },
  read: (range, name) => {
    const found: Record<Exclude<keyof Changes, "children">, Decimal> = {
      ordinary: ZERO,
      businessProfit: ZERO,
      gain: ZERO,
      deductions: ZERO,
    };
    let children = 0;
    for (const { place, item, cell } of labeledRows(name, range)) {
      const difference = readArgument(signedDollars, place, cell);
      const kind = CHANGED[item];
      if (item === "childrenUnder17") {
        if (!difference.isInteger())
          throw new InputError(
            place,
            `${shown(cellValue(cell))} is not a number of persons. Enter a whole number such as 1.`
          );
        children += difference.toNumber();
      } else if (kind) found[kind] = found[kind].plus(difference);
      else
        throw new InputError(
          place,
          `"${labelOf(item)}" cannot be used in a projection. Use EXT.LIABILITY with all items of the return.`
        );
    }
    return { ...found, children };
  },
};
