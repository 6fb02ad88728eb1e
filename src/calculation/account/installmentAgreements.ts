import { addDays, addMonths, type CalendarDate } from "../../calendar/calendarDate";
import type { Decimal } from "../../money/dollars";
import { requireReach } from "../../rules/listTable";
import type { AgreementFee, AgreementKind, InForce } from "../../rules/agreementTables";
import type { Rulebook } from "../../rules/rulebook";

/** A balance to be paid over time. */
export interface AgreementInput {
  /** Dollars of tax, penalties and interest. */
  readonly owed: Decimal;
  /** Dollars of tax among them. */
  readonly unpaidTax: Decimal;
  readonly agreementOn: CalendarDate;
  /** Number of monthly payments; `undefined` for the longest term of each kind. */
  readonly months: number | undefined;
}

/** A kind of agreement as one text describes it, and whether it is open to the balance. */
export interface AgreementChoice {
  readonly kind: AgreementKind;
  readonly isOpen: boolean;
  /** Number of monthly payments. */
  readonly months: number;
}

/** The kinds of agreement and the setup fees on a date. */
export interface InstallmentAgreements {
  readonly choices: readonly AgreementChoice[];
  readonly fees: readonly AgreementFee[];
}

const isInForce =
  (date: CalendarDate) =>
  ({ from, through }: InForce): boolean =>
    from <= date && (through === undefined || date <= through);

/** The longest term in whole months: so many monthly payments end within it. */
function longestTerm({ term, termUnit }: AgreementKind, begins: CalendarDate): number {
  if (termUnit === "months") return term.toNumber();
  const last = addDays(begins, term.toNumber());
  let months = 0;
  while (addMonths(begins, months + 1) <= last) months++;
  return months;
}

/**
 * The kinds of payment plan and installment agreement on a date, whether a balance may have them, and their setup fees.
 *
 * Open means that the balance and the number of payments are within the limits. The other conditions are for the preparer to check.
 * A text that contradicts the one that is followed has a row of its own. A kind or fee for which no text is known on the date has none.
 *
 * @param input - The balance in dollars, the date, and the number of payments.
 * @param rules - Kinds and fees.
 * @returns The kinds and fees in the order of the tables.
 * @throws NotInTableError for a date that the tables do not cover.
 * @see 26 U.S.C. 6159
 *
 * @example
 * // $50,001: the short-term plan is open, the simple payment plan is not
 */
export function installmentAgreements(
  input: AgreementInput,
  rules: Pick<Rulebook, "installmentAgreements" | "installmentAgreementFees">
): InstallmentAgreements {
  const { owed, unpaidTax, agreementOn } = input;
  const { installmentAgreements: kinds, installmentAgreementFees: fees } = rules;
  requireReach(kinds, agreementOn);
  requireReach(fees, agreementOn);
  const choices = kinds.rows.filter(isInForce(agreementOn)).map((kind) => {
    const balance = kind.limitOf === "tax" ? unpaidTax : owed;
    const isWithin = kind.isBelow
      ? balance.lessThan(kind.limit)
      : balance.lessThanOrEqualTo(kind.limit);
    const longest = longestTerm(kind, agreementOn);
    const months = input.months ?? longest;
    return { kind, months, isOpen: isWithin && months <= longest };
  });
  return { choices, fees: fees.rows.filter(isInForce(agreementOn)) };
}
