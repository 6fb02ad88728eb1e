import { requestMethods } from "../../calculation/request/requestMethods";
import { shortfall } from "../../calculation/request/shortfall";
import { toCents } from "../../money/dollars";
import { BLANK, cellOrBlank, dateCell, moneyCell, type AnswerCell } from "../cells/answerCell";
import { readAll } from "../arguments/argumentKind";
import { cellValue } from "../cells/cellValue";
import { isHostError } from "../cells/hostError";
import { bestMethod } from "../request/bestMethod";
import { mailingFunctions } from "../request/mailing";
import { letterFacts } from "../request/letterFacts";
import { letterParagraphs } from "../request/letterParagraphs";
import { stateFunctions } from "../stateReturn/stateDates";
import type { WorksheetFunction } from "../worksheetFunction";
import { confirmFirst } from "./confirmFirst";
import { nextDateText } from "./nextDateText";
import { clientPlan, type RosterClient } from "./rosterClient";
import { enoughPaid, payNow, percentPaid, remaining, suggested } from "./rosterPayments";

/** What a single function answers for a client, or its error. */
function answerOf(single: WorksheetFunction, ...cells: readonly unknown[]): AnswerCell {
  try {
    return single.answer(cells.map((cell) => [[cell]]))[0]?.[0] ?? BLANK;
  } catch (thrown) {
    if (isHostError(thrown)) return thrown as CustomFunctions.Error;
    throw thrown;
  }
}

function method({ given, dates, requestRecord, stage, rules }: RosterClient): AnswerCell {
  if (stage() !== "not requested" && stage() !== "rejected") return BLANK;
  const input = {
    taxYear: given("taxYear"),
    dates: dates(),
    paidWithRequest: given("paidWithRequest"),
    asOf: given("asOf"),
    rejectedOn: requestRecord().rejectedOn,
  };
  return bestMethod(requestMethods(input, rules));
}

function nextDeadline({ next }: RosterClient): AnswerCell {
  const due = next();
  return due ? nextDateText(due) : BLANK;
}

function counted({ issues }: RosterClient): AnswerCell {
  return issues().filter(({ severity }) => severity !== "reminder").length;
}

/** Whether the regular due date has passed, so that an extension needs a request by then. */
function isPast({ dates, given }: RosterClient): boolean {
  return given("asOf") > dates().regular.lastDay;
}

function isToMail(client: RosterClient): boolean {
  const best = method(client);
  return best !== BLANK && (client.given("method") ?? best) === "paper";
}

function toConfirm(client: RosterClient): AnswerCell {
  const { given, requestRecord, stage, rules } = client;
  if (stage() === "filed") return BLANK;
  const noDate =
    given("validExtension") === true && requestRecord().requestedOn === undefined && isPast(client)
      ? "the extension is entered as yes, without the date of the request"
      : "";
  const others = confirmFirst(given, () => isToMail(client), rules);
  return [noDate, others].filter((part) => part !== "").join(". ");
}

/** The text of the letter, without the cost, which needs a planned date or a rate. */
function letter(client: RosterClient): AnswerCell {
  const { given, totalTax, payments, dates, record, rules } = client;
  const facts = letterFacts(
    {
      ...readAll(clientPlan, given),
      totalTax: totalTax(),
      payments: payments(),
      dates: dates(),
      record: record(),
    },
    rules
  );
  return letterParagraphs(facts, { cost: undefined, stillNeeded: "" })
    .flatMap(({ sentences }) => sentences)
    .join(" ");
}

/** The answers that ROSTER can give for a client, by their headings. */
export const ROSTER_COLUMNS = {
  Client: ({ cell }) => cellValue(cell("client")) ?? BLANK,
  "Regular due date": ({ dates }) => dateCell(dates().regular.lastDay),
  "Extended due date": ({ dates }) => dateCell(dates().extended.lastDay),
  "Payment due date": ({ dates }) => dateCell(dates().payment.lastDay),
  "Balance due": ({ totalTax, payments }) => moneyCell(toCents(shortfall(totalTax(), payments()))),
  "Suggested payment": suggested,
  "Pay now": payNow,
  "Remaining to pay": remaining,
  "Percent paid": percentPaid,
  "90% paid": enoughPaid,
  "Penalties and interest (planned)": ({ plan, chargesWith }) =>
    moneyCell(chargesWith(plan().validExtension).total),
  "Penalties and interest with extension": ({ chargesWith }) => moneyCell(chargesWith(true).total),
  "Penalties and interest without extension": ({ chargesWith }) =>
    moneyCell(chargesWith(false).total),
  Method: method,
  Status: ({ stage }) => stage(),
  "Days left": ({ next }) => next()?.daysLeft ?? BLANK,
  "Next deadline": nextDeadline,
  Issues: counted,
  "Most serious issue": ({ issues }) => issues()[0]?.what ?? BLANK,
  Severity: ({ issues }) => issues()[0]?.severity ?? BLANK,
  "What to do": ({ issues }) => issues()[0]?.remedy ?? BLANK,
  "State due date": ({ cell }) => answerOf(stateFunctions.STATEDUE, cell("taxYear"), cell("state")),
  "State extended due date": ({ cell, plan }) =>
    answerOf(
      stateFunctions.STATEEXTENDED,
      cell("taxYear"),
      cell("state"),
      plan().validExtension ? "yes" : "no"
    ),
  "First installment": ({ given }) => cellOrBlank(given("firstInstallment"), moneyCell),
  "Mailing address": ({ cell, given }) =>
    answerOf(
      mailingFunctions.MAILTO,
      cell("taxYear"),
      cell("state"),
      given("paidWithRequest").greaterThan(0) ? "yes" : "no",
      cell("carrier"),
      cell("filerType")
    ),
  Letter: letter,
  "Confirm first": toConfirm,
} as const satisfies Readonly<Record<string, (client: RosterClient) => AnswerCell>>;

/** The last column: cells of the row that cannot be read. */
export const UNREADABLE = "Unreadable";

/** A heading that ROSTER can answer under. */
export type RosterHeading = keyof typeof ROSTER_COLUMNS | typeof UNREADABLE;

/** Every heading that can be chosen. */
export const ROSTER_HEADINGS = [...Object.keys(ROSTER_COLUMNS), UNREADABLE] as RosterHeading[];

/** The headings of the answer if none are chosen. */
export const DEFAULT_HEADINGS: readonly RosterHeading[] = [
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
  UNREADABLE,
];
