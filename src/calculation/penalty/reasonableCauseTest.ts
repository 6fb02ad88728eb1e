import type { CalendarDate } from "../../calendar/calendarDate";
import { ZERO, type Decimal } from "../../money/dollars";
import { entryOn } from "../../rules/datedTable";
import type { Rulebook } from "../../rules/rulebook";
import type { Source } from "../../rules/source";
import type { DueDate } from "../dueDate/dueDate";

/** What the presumption asks about. */
export interface ReasonableCauseTestInput {
  readonly extended: boolean;
  readonly regular: DueDate;
  readonly extendedDue: DueDate;
  readonly totalTax: Decimal;
  /** Dollars unpaid after the regular due date. */
  readonly unpaid: Decimal;
  /** The day the rest was paid; `undefined` while some of it is open. */
  readonly paidInFullOn: CalendarDate | undefined;
  readonly filedOn: CalendarDate;
}

/**
 * Whether reasonable cause is presumed for paying the rest during the extension, so that no failure-to-pay addition is charged.
 *
 * A valid extension, at least 90% of the tax shown paid by the regular due date, and the rest paid with the return or before it.
 * A return later than the extended date is taken to lose it altogether, as the manual for examiners is reported to hold; the
 * regulation's own words would protect the extension period even then. The test is made on the final tax, so that an estimate
 * can fail it in hindsight.
 *
 * @param input - The facts.
 * @param rules - The share to pay.
 * @returns The law, where the presumption holds; `undefined` where not.
 * @see 26 CFR 301.6651-1(c)(3)
 */
export function reasonableCauseTest(
  input: ReasonableCauseTestInput,
  rules: Pick<Rulebook, "reasonableCauseTest">
): Source | undefined {
  const { extended, regular, extendedDue, totalTax, unpaid, paidInFullOn, filedOn } = input;
  if (!extended || filedOn > extendedDue.lastDay) return undefined;
  if (paidInFullOn === undefined || paidInFullOn > filedOn) return undefined;
  const { figures, source } = entryOn(rules.reasonableCauseTest, regular.countedFrom);
  const paid = totalTax.minus(unpaid);
  const enough = paid.greaterThanOrEqualTo(totalTax.times(figures.shareToPay));
  return enough && unpaid.greaterThan(ZERO) ? source : undefined;
}
