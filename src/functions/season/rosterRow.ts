import { charges } from "../../calculation/penalty/charges";
import { requestIssues } from "../../calculation/request/requestIssues";
import { requestMethods } from "../../calculation/request/requestMethods";
import { shortfall } from "../../calculation/request/shortfall";
import { suggestedPayment } from "../../calculation/request/suggestedPayment";
import { nextDate } from "../../calculation/season/nextDate";
import { plannedReturn } from "../../calculation/season/plannedReturn";
import { requestStage } from "../../calculation/season/requestStage";
import { toCents } from "../../money/dollars";
import type { Rulebook } from "../../rules/rulebook";
import { lazily, optional } from "../arguments/argumentKind";
import { chargesTables } from "../arguments/chargesInput";
import { datesOf } from "../arguments/client";
import { clientRequest, clientRequestOf } from "../arguments/clientRequest";
import { date, dateAfterYear } from "../arguments/date";
import { dollars } from "../arguments/dollars";
import { assumedRate, cushion, target } from "../arguments/percent";
import { recordOf } from "../arguments/record";
import { BLANK, dateCell, moneyCell, type AnswerCell } from "../cells/answerCell";
import { cellValue } from "../cells/cellValue";
import { hostError } from "../cells/hostError";
import { bestMethod } from "../request/bestMethod";
import { confirmFirst } from "./confirmFirst";
import { nextDateText } from "./nextDateText";

/** The headings of the answer. */
export const ROSTER_HEADINGS = [
  "Client",
  "Regular due date",
  "Extended due date",
  "Balance due",
  "Suggested payment",
  "Penalties and interest (planned)",
  "Method",
  "Status",
  "Days left",
  "Next deadline",
  "Issues",
  "Confirm first",
] as const;

/** The rule tables that a client's row depends on. */
export const rosterTables = [
  ...chargesTables,
  "estimateReview",
  "installments",
  "mailingAddresses",
  "perfectionPeriod",
  "privateDeliveryServices",
  "refundClaims",
  "requestIssues",
  "requestMethods",
  "serviceCenterStreets",
  "stateExtensions",
] as const satisfies readonly (keyof Rulebook)[];

/** The arguments of a client beyond those of the request. */
const plan = {
  ...clientRequest,
  paidOn: optional(date),
  target,
  cushion,
  plannedFilingDate: optional(dateAfterYear),
  plannedPaymentDate: optional(dateAfterYear),
  assumedRate,
};
/** The amounts without which there is no balance due. */
const amounts = { totalTax: dollars, payments: dollars };

/** A value calculated when a cell first asks for it. Every cell that asks gets the same error. */
function once<Value>(work: () => Value): () => Value {
  let known: { readonly value: Value } | undefined;
  return () => (known ??= { value: work() }).value;
}

/** An answer, or the error that the cell shows in its place. */
function cellOf(work: () => AnswerCell): AnswerCell {
  try {
    return work();
  } catch (thrown) {
    return hostError(thrown);
  }
}

/**
 * One client's row. Each cell is calculated for itself, so that a blank estimate does not hide the due date.
 *
 * @param cell - The client's cell of an argument.
 * @param rules - The rule tables.
 * @returns The cells under `ROSTER_HEADINGS`.
 */
export function rosterRow(
  cell: (name: string) => unknown,
  rules: Pick<Rulebook, (typeof rosterTables)[number]>
): AnswerCell[] {
  const given = lazily(plan, cell);
  const needed = lazily(amounts, cell);
  const dates = once(() => datesOf(given));
  const record = once(() => recordOf(given));
  const stage = once(() => requestStage(dates(), record(), given.asOf, rules).stage);
  const next = once(() => nextDate(dates(), record(), given.asOf, rules));

  const suggested = (): AnswerCell => {
    const { totalTax, payments } = needed;
    const { target: aim, cushion: extra, firstInstallment } = given;
    const input = { totalTax, payments, target: aim, cushion: extra, firstInstallment };
    return moneyCell(suggestedPayment(input, rules));
  };
  const plannedCharges = (): AnswerCell => {
    const { asOf, paidWithRequest, plannedFilingDate, plannedPaymentDate } = given;
    const input = {
      dates: dates(),
      record: record(),
      asOf,
      totalTax: needed.totalTax,
      payments: needed.payments,
      paidWithRequest,
      plannedFilingDate,
      plannedPaymentDate,
      assumedRate: given.assumedRate,
    };
    return moneyCell(charges(plannedReturn(input, rules), rules).total);
  };
  const method = (): AnswerCell => {
    if (stage() !== "not requested" && stage() !== "rejected") return BLANK;
    const { taxYear, paidWithRequest, asOf } = given;
    const { rejectedOn } = record();
    const input = { taxYear, dates: dates(), paidWithRequest, asOf, rejectedOn };
    return bestMethod(requestMethods(input, rules));
  };
  const toConfirm = (): AnswerCell => {
    if (stage() === "filed") return BLANK;
    const isToMail = (): boolean => {
      const best = method();
      return best !== BLANK && (given.method ?? best) === "paper";
    };
    return confirmFirst(given, isToMail, rules);
  };
  const issues = (): AnswerCell => {
    const found = requestIssues(clientRequestOf(lazily(clientRequest, cell)), rules);
    return found.filter(({ severity }) => severity !== "reminder").length;
  };

  return [
    () => cellValue(cell("client")) ?? BLANK,
    () => dateCell(dates().regular.lastDay),
    () => dateCell(dates().extended.lastDay),
    () => moneyCell(toCents(shortfall(needed.totalTax, needed.payments))),
    suggested,
    plannedCharges,
    method,
    stage,
    () => next()?.daysLeft ?? BLANK,
    () => {
      const due = next();
      return due ? nextDateText(due) : BLANK;
    },
    issues,
    toConfirm,
  ].map(cellOf);
}
