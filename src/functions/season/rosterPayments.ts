import { shortfall } from "../../calculation/request/shortfall";
import { suggestedPayment } from "../../calculation/request/suggestedPayment";
import { recordAsOf } from "../../calculation/season/recordAsOf";
import { entryOn } from "../../rules/datedTable";
import { toCents, ZERO } from "../../money/dollars";
import { BLANK, moneyCell, percentCell, type AnswerCell } from "../cells/answerCell";
import type { RosterClient } from "./rosterClient";

/** Dollars still to be paid after the payment with the request. */
export function remaining({ totalTax, payments, given }: RosterClient): AnswerCell {
  return moneyCell(toCents(shortfall(totalTax(), payments().plus(given("paidWithRequest")))));
}

function sharePaid({ totalTax, payments, given }: RosterClient) {
  const [tax, paid] = [totalTax(), payments()];
  return tax.isZero() ? undefined : paid.plus(given("paidWithRequest")).div(tax);
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
export function enoughPaid({ totalTax, plan, rules, dates }: RosterClient): AnswerCell {
  const { figures } = entryOn(rules.reasonableCauseTest, dates().regular.statutory);
  const needed = totalTax().times(figures.shareToPay);
  return plan().paidOnTime.greaterThanOrEqualTo(needed) ? "yes" : "no";
}

/** The suggested payment with the target and the cushion of the row. */
export function suggested({ totalTax, payments, given, rules }: RosterClient): AnswerCell {
  const input = {
    totalTax: totalTax(),
    payments: payments(),
    target: given("target"),
    cushion: given("cushion"),
    firstInstallment: given("firstInstallment"),
  };
  return moneyCell(suggestedPayment(input, rules));
}

/** Dollars to pay now: the whole balance without a cushion, less what was paid with a request already made. */
export function payNow(client: RosterClient): AnswerCell {
  const { totalTax, payments, given, record, rules } = client;
  const { requestedOn, paidOn } = recordAsOf(record(), given("asOf"));
  if (paidOn !== undefined) return moneyCell(ZERO);
  const sent = requestedOn === undefined ? ZERO : given("paidWithRequest");
  const input = { totalTax: totalTax(), payments: payments().plus(sent), target: "full" } as const;
  return moneyCell(suggestedPayment(input, rules));
}
