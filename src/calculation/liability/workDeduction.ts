import { atLeastZero, Decimal, ZERO } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { FilingStatus } from "../filingStatus";
import type { TaxYear } from "../taxYear";

/** Pay that may be deducted from 2025 to 2028. */
export type DeductiblePay = "tips" | "overtime";

const STEP = 1_000;

/**
 * Deduction of 2025 to 2028 for qualified tips, or for the premium part of overtime.
 *
 * Held to its cap first, then $100 less for each whole $1,000 of income above the threshold: parts of a thousand do not count.
 *
 * @param pay - Which of the two.
 * @param taxYear - The year of the return.
 * @param status - Filing status; a separate filer has none.
 * @param amount - Dollars received.
 * @param adjustedGrossIncome - Dollars.
 * @param rules - Caps and thresholds.
 * @returns Dollars; nothing before 2025.
 * @throws NotInTableError for a year that is not held.
 * @see 26 U.S.C. 224, 225
 *
 * @example
 * workDeduction("tips", 2025, "single", 10_000, 152_999) //=> 9800
 */
export function workDeduction(
  pay: DeductiblePay,
  taxYear: TaxYear,
  status: FilingStatus,
  amount: Decimal,
  adjustedGrossIncome: Decimal,
  rules: Pick<Rulebook, "additionalDeductions">
): Decimal {
  const { figures } = entryOn(rules.additionalDeductions, taxYear.firstDay);
  if (status === "separate") return ZERO;
  const joint = status === "joint";
  const cap = {
    tips: figures.tipsCap,
    overtime: joint ? figures.overtimeCapJoint : figures.overtimeCap,
  }[pay];
  const threshold = joint ? figures.workJoint : figures.workOthers;
  const steps = atLeastZero(adjustedGrossIncome.minus(threshold)).div(STEP).floor();
  return atLeastZero(Decimal.min(amount, cap).minus(steps.times(figures.workPerThousand)));
}
