import { shortfall } from "../../calculation/request/shortfall";
import { suggestedPayment } from "../../calculation/request/suggestedPayment";
import { recordAsOf } from "../../calculation/season/recordAsOf";
import { entryOn } from "../../rules/datedTable";
import { toCents, ZERO } from "../../money/dollars";
import { BLANK, moneyCell, percentCell, type AnswerCell } from "../cells/answerCell";
import type { RosterClient } from "./rosterClient";

/** Dollars still to be paid after the payment with the request. */
export function remaining({ amounts, given }: RosterClient): AnswerCell {
  const { totalTax, payments } = amounts;
  return moneyCell(toCents(shortfall(totalTax, payments.plus(given.paidWithRequest))));
}

function sharePaid({ amounts, given }: RosterClient) {
  const { totalTax, payments } = amounts;
  return totalTax.isZero() ? undefined : payments.plus(given.paidWithRequest).div(totalTax);
}

/** The share of the total tax that is paid with the request; blank without a tax. */
export function percentPaid(client: RosterClient): AnswerCell {
  const share = sharePaid(client);
  return share ? percentCell(share) : BLANK;
}

/**
 * Whether enough of the tax is paid by the payment due date for the reasonable-cause test. The rest of the test, a valid extension and
 * the balance paid with the return, looks at what has not happened yet, so the heading does not say that the test is met.
 */
export function enoughPaid({ amounts, plan, rules, dates }: RosterClient): AnswerCell {
  const { figures } = entryOn(rules.reasonableCauseTest, dates().regular.statutory);
  const needed = amounts.totalTax.times(figures.shareToPay);
  return plan().paidOnTime.greaterThanOrEqualTo(needed) ? "yes" : "no";
}

/** The suggested payment with the target and the cushion of the row. */
export function suggested({ amounts, given, rules }: RosterClient): AnswerCell {
  const { target, cushion, firstInstallment } = given;
  const { totalTax, payments } = amounts;
  return moneyCell(
    suggestedPayment({ totalTax, payments, target, cushion, firstInstallment }, rules)
  );
}

/** Dollars to pay now: the whole balance without a cushion, less what was paid with a request already made. */
export function payNow({ amounts, given, record, rules }: RosterClient): AnswerCell {
  const { requestedOn, paidOn } = recordAsOf(record(), given.asOf);
  if (paidOn !== undefined) return moneyCell(ZERO);
  const sent = requestedOn === undefined ? ZERO : given.paidWithRequest;
  const payments = amounts.payments.plus(sent);
  return moneyCell(
    suggestedPayment({ totalTax: amounts.totalTax, payments, target: "full" }, rules)
  );
}
