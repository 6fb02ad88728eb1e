import { charges, type Charges } from "../../calculation/penalty/charges";
import type { ClientDates } from "../../calculation/dueDate/clientDates";
import { requestIssues, type WordedIssue } from "../../calculation/request/requestIssues";
import { nextDate, type NextDate } from "../../calculation/season/nextDate";
import { plannedReturn, type PlannedReturn } from "../../calculation/season/plannedReturn";
import { requestStage, type Stage } from "../../calculation/season/requestStage";
import type { RequestRecord } from "../../calculation/season/requestRecord";
import { once } from "../../calendar/once";
import type { Decimal } from "../../money/dollars";
import type { Rulebook } from "../../rules/rulebook";
import { lazily, optional, readAll, type RowReader } from "../arguments/argumentKind";
import { chargesTables } from "../arguments/chargesInput";
import { client, datesOf } from "../arguments/client";
import { clientRequest, clientRequestOf } from "../arguments/clientRequest";
import { date, dateAfterYear } from "../arguments/date";
import { dollars } from "../arguments/dollars";
import { assumedRate, cushion, target } from "../arguments/percent";
import { record as recordArguments, recordOf } from "../arguments/record";
import { yesNo } from "../arguments/yesNo";

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
/** The rule tables of a client's row. */
export type RosterRules = Pick<Rulebook, (typeof rosterTables)[number]>;

/** The arguments of a client beyond those of the request. */
export const clientPlan = {
  ...clientRequest,
  paidOn: optional(date),
  target,
  cushion,
  plannedFilingDate: optional(dateAfterYear),
  plannedPaymentDate: optional(dateAfterYear),
  assumedRate,
  validExtension: optional(yesNo),
};
/** The amounts without which there is no balance due. */
const amounts = { totalTax: dollars, payments: dollars };
const planOf = lazily(clientPlan);
const amountsOf = lazily(amounts);

/** A client of a list. Each value is calculated when a column first asks for it. */
export interface RosterClient {
  readonly cell: (name: string) => unknown;
  readonly given: RowReader<typeof clientPlan>;
  /** Dollars; a blank cell is refused. */
  readonly totalTax: () => Decimal;
  /** Dollars; a blank cell is refused. */
  readonly payments: () => Decimal;
  readonly rules: RosterRules;
  readonly dates: () => ClientDates;
  readonly record: () => RequestRecord;
  /** The record without the payment of the balance: a payment date that cannot be read does not hide the status. */
  readonly requestRecord: () => RequestRecord;
  readonly stage: () => Stage;
  readonly next: () => NextDate | undefined;
  readonly plan: () => PlannedReturn;
  readonly chargesWith: (validExtension: boolean) => Charges;
  readonly issues: () => readonly WordedIssue[];
}

/**
 * A client of a list, whose cells are each read when first used: a blank estimate does not hide the due date.
 *
 * @param cell - The client's cell of an argument.
 * @param rules - The rule tables.
 */
export function rosterClient(cell: (name: string) => unknown, rules: RosterRules): RosterClient {
  const given = planOf(cell);
  const amount = amountsOf(cell);
  const totalTax = (): Decimal => amount("totalTax");
  const payments = (): Decimal => amount("payments");
  const dates = once(() => datesOf(readAll(client, given)));
  const requestRecord = once(() => recordOf(readAll(recordArguments, given)));
  const record = once(() => ({ ...requestRecord(), paidOn: given("paidOn") }));
  const plan = once(() => {
    const input = {
      dates: dates(),
      record: record(),
      asOf: given("asOf"),
      totalTax: totalTax(),
      payments: payments(),
      paidWithRequest: given("paidWithRequest"),
      plannedFilingDate: given("plannedFilingDate"),
      plannedPaymentDate: given("plannedPaymentDate"),
      assumedRate: given("assumedRate"),
      extensionPlanned: given("validExtension"),
    };
    return plannedReturn(input, rules);
  });
  const chargesIf = (validExtension: boolean): (() => Charges) =>
    once(() => charges({ ...plan(), validExtension }, rules));
  const [withExtension, withoutExtension] = [chargesIf(true), chargesIf(false)];
  return {
    cell,
    given,
    totalTax,
    payments,
    rules,
    dates,
    record,
    requestRecord,
    stage: once(() => requestStage(dates(), requestRecord(), given("asOf"), rules).stage),
    next: once(() => nextDate(dates(), record(), given("asOf"), rules)),
    plan,
    chargesWith: (validExtension) => (validExtension ? withExtension() : withoutExtension()),
    issues: once(() => requestIssues(clientRequestOf(readAll(clientRequest, given)), rules)),
  };
}
