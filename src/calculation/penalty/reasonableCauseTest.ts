import type { CalendarDate } from "../../calendar/calendarDate";
import { isMoreThanZero, type Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { Source } from "../../rules/source";
import type { DueDate } from "../dueDate/dueDate";

/** The facts for the 90% reasonable-cause test. */
export interface ReasonableCauseTestInput {
  readonly validExtension: boolean;
  readonly regular: DueDate;
  readonly extendedDue: DueDate;
  readonly totalTax: Decimal;
  /** Dollars of tax unpaid after the regular due date. */
  readonly unpaidTax: Decimal;
  /** The date the remaining balance was paid; `undefined` while some of it is unpaid. */
  readonly paidInFullOn: CalendarDate | undefined;
  readonly filedOn: CalendarDate;
}

/**
 * The 90% reasonable-cause test: reasonable cause is presumed for the balance paid during the extension, so that there is no
 * failure-to-pay penalty.
 *
 * It needs a valid extension, at least 90% of the tax shown on the return paid by the regular due date, and the remaining balance
 * paid with the return or earlier. A return filed after the extended due date fails the test, as the Internal Revenue Manual is
 * reported to say; under the regulation's own words the extension period would still pass. The test uses the final tax, so an
 * estimate that was too low can fail it later.
 *
 * @param input - The facts.
 * @param rules - The share of the tax that must be paid.
 * @returns The law, if the test is met; `undefined` if not.
 * @see 26 CFR 301.6651-1(c)(3)
 */
export function reasonableCauseTest(
  input: ReasonableCauseTestInput,
  rules: Pick<Rulebook, "reasonableCauseTest">
): Source | undefined {
  const { validExtension, regular, extendedDue, totalTax, unpaidTax, paidInFullOn, filedOn } =
    input;
  if (!validExtension || filedOn > extendedDue.lastDay) return undefined;
  if (paidInFullOn === undefined || paidInFullOn > filedOn) return undefined;
  const { figures, source } = entryOn(rules.reasonableCauseTest, regular.statutory);
  const paid = totalTax.minus(unpaidTax);
  const enough = paid.greaterThanOrEqualTo(totalTax.times(figures.shareToPay));
  return enough && isMoreThanZero(unpaidTax) ? source : undefined;
}
