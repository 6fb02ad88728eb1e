import { charges } from "../calculation/penalty/charges";
import { requestIssues } from "../calculation/request/requestIssues";
import { requestMethods } from "../calculation/request/requestMethods";
import { shortfall } from "../calculation/request/shortfall";
import { suggestedPayment } from "../calculation/request/suggestedPayment";
import { extensionInPlan } from "../calculation/season/extensionInPlan";
import { nextDate } from "../calculation/season/nextDate";
import { plannedDates } from "../calculation/season/plannedDates";
import { requestStage } from "../calculation/season/requestStage";
import { toCents, ZERO } from "../money/dollars";
import { rulebook } from "../rules/rulebook";
import { cellValue, isBlankOrZero } from "./cells";
import { paidAtOnce } from "./chargeArguments";
import { client, datesOf } from "./client";
import { day as readDay, optionalDay, requireAfterTaxYear } from "./dayArguments";
import { hostError } from "./errors";
import { assumedRate, cushion, money, optionalMoney, paymentAim } from "./moneyArguments";
import { nextDateText } from "./nextDateText";
import { requestRecord } from "./recordArguments";
import { clientRequest } from "./requestArguments";
import { dayCell, EMPTY, moneyCell, type AnswerCell } from "./results";
import type { RosterField } from "./rosterHeadings";

/** Headings of the answer. */
export const ROSTER_ANSWERS = [
  ...["Client", "Due", "Extended", "Shortfall", "Suggested payment", "Charges to planned day"],
  ...["Way to ask", "Stage", "Days left", "Next", "Wrong or risky"],
] as const;

/** What stands beside the list. */
export interface RosterCells {
  readonly taxYear: unknown;
  readonly asOf: unknown;
  readonly assumedRate: unknown;
}

/** A value worked out once, when a cell first asks for it; an error is met by every cell that asks. */
function once<Value>(work: () => Value): () => Value {
  let kept: { readonly value: Value } | undefined;
  return () => (kept ??= { value: work() }).value;
}

/** An answer, or the error that stands in its stead. */
function cellOf(work: () => AnswerCell): AnswerCell {
  try {
    return work();
  } catch (thrown) {
    return hostError(thrown);
  }
}

/**
 * One client's row of the answer. Each cell is answered for itself, so that a blank estimate does not hide the due date.
 *
 * @param cell - The client's cell of a column; nothing where the list has none.
 * @param list - What stands beside the list.
 * @returns The cells under `ROSTER_ANSWERS`.
 */
export function rosterRow(cell: (field: RosterField) => unknown, list: RosterCells): AnswerCell[] {
  const ownYear = cell("taxYear");
  const cells = {
    taxYear: isBlankOrZero(cellValue(ownYear)) ? list.taxYear : ownYear,
    asOf: list.asOf,
    ...{ state: cell("state"), filerType: cell("filerType") },
    ...{
      postponementBegins: cell("postponementBegins"),
      postponementEnds: cell("postponementEnds"),
    },
    ...{
      totalTax: cell("totalTax"),
      payments: cell("payments"),
      paidWithRequest: cell("paidWithRequest"),
    },
    ...{ requestedOn: cell("requestedOn"), confirmedOn: cell("confirmedOn") },
    ...{ rejectedOn: cell("rejectedOn"), filedOn: cell("filedOn"), paidOn: cell("paidOn") },
    ...{ method: cell("method"), carrier: cell("carrier"), line8Checked: cell("line8Checked") },
    ...{ priorYearTax: cell("priorYearTax"), firstInstallment: cell("firstInstallment") },
  };
  const who = once(() => client(cells));
  const dates = once(() => datesOf(who()));
  const record = once(() => requestRecord(cells, who().taxYear));
  const asOf = once(() => readDay("asOf", list.asOf));
  const paidWithRequest = () => optionalMoney("paidWithRequest", cells.paidWithRequest) ?? ZERO;
  const request = once(() => clientRequest(cells));
  const stage = once(() => requestStage(dates(), record(), asOf(), rulebook).stage);
  const totalTax = () => money("totalTax", cells.totalTax);
  const payments = () => money("payments", cells.payments);
  const next = once(() => nextDate(dates(), record(), asOf(), rulebook));

  const plannedDay = (field: "plannedFilingDate" | "plannedPaymentDate") => {
    const planned = optionalDay(field, cell(field));
    if (planned !== undefined) requireAfterTaxYear(field, planned, who().taxYear);
    return planned;
  };

  const suggested = (): AnswerCell =>
    moneyCell(
      suggestedPayment(
        {
          totalTax: totalTax(),
          payments: payments(),
          target: paymentAim("target", cell("target")),
          cushion: cushion("cushion", cell("cushion")),
          firstInstallment: optionalMoney("firstInstallment", cells.firstInstallment),
        },
        rulebook
      )
    );
  const chargesToPlannedDay = (): AnswerCell => {
    const validExtension = extensionInPlan(dates(), record(), asOf(), rulebook);
    const plannedFilingDate = plannedDay("plannedFilingDate");
    const plannedPaymentDate = plannedDay("plannedPaymentDate");
    const plan = { plannedFilingDate, plannedPaymentDate, validExtension, asOf: asOf() };
    const input = paidAtOnce({
      dates: dates(),
      totalTax: totalTax(),
      paidOnTime: payments().plus(paidWithRequest()),
      ...plannedDates(dates(), { record: record(), ...plan }),
      validExtension,
      assumedRate: assumedRate("assumedRate", list.assumedRate),
    });
    return moneyCell(charges(input, rulebook).total);
  };
  const wayToAsk = (): AnswerCell => {
    if (stage() !== "not requested" && stage() !== "rejected") return EMPTY;
    const { taxYear } = who();
    const { rejectedOn } = record();
    const input = {
      taxYear,
      dates: dates(),
      paidWithRequest: paidWithRequest(),
      asOf: asOf(),
      rejectedOn,
    };
    const [best] = requestMethods(input, rulebook);
    return best && best.closedBecause === undefined ? best.method : "too late";
  };
  const issues = () =>
    requestIssues(request(), rulebook).filter(({ severity }) => severity !== "reminder");

  return [
    cellOf(() => cellValue(cell("client")) ?? EMPTY),
    cellOf(() => dayCell(dates().regular.lastDay)),
    cellOf(() => dayCell(dates().extended.lastDay)),
    cellOf(() => moneyCell(toCents(shortfall(totalTax(), payments())))),
    cellOf(suggested),
    cellOf(chargesToPlannedDay),
    cellOf(wayToAsk),
    cellOf(stage),
    cellOf(() => next()?.daysLeft ?? EMPTY),
    cellOf(() => {
      const due = next();
      return due ? nextDateText(due) : EMPTY;
    }),
    cellOf(() => issues().length),
  ];
}
