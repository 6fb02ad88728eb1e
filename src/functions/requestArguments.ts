import type { ClientRequest } from "../calculation/request/clientRequest";
import { ZERO } from "../money/dollars";
import { cellValue, isBlankOrZero } from "./cells";
import { client, datesOf, type ClientCells } from "./client";
import { day as readDay } from "./dayArguments";
import { carrierOf, requestRoute } from "./filingArguments";
import { optionalMoney } from "./moneyArguments";
import { requestRecord, type RecordCells } from "./recordArguments";
import { yesNo } from "./wordArguments";

/** The cells in which a preparer keeps a client's request. */
export interface RequestCells extends ClientCells, RecordCells {
  readonly totalTax: unknown;
  readonly payments: unknown;
  readonly paidWithRequest: unknown;
  readonly asOf: unknown;
  readonly method: unknown;
  readonly carrier: unknown;
  readonly line8Checked: unknown;
  readonly priorYearTax: unknown;
  readonly firstInstallment: unknown;
}

/** Reads a client's request to be looked over; a blank estimate is a finding, not an error, and blank payments are none. */
export function clientRequest(cells: RequestCells): ClientRequest {
  const who = client(cells);
  return {
    ...who,
    dates: datesOf(who),
    totalTax: optionalMoney("totalTax", cells.totalTax),
    payments: optionalMoney("payments", cells.payments) ?? ZERO,
    paidWithRequest: optionalMoney("paidWithRequest", cells.paidWithRequest) ?? ZERO,
    asOf: readDay("asOf", cells.asOf),
    record: requestRecord(cells, who.taxYear),
    method: requestRoute("method", cells.method),
    carrier: carrierOf("carrier", cells.carrier),
    line8Checked: isBlankOrZero(cellValue(cells.line8Checked))
      ? undefined
      : yesNo("line8Checked", cells.line8Checked),
    priorYearTax: optionalMoney("priorYearTax", cells.priorYearTax),
    firstInstallment: optionalMoney("firstInstallment", cells.firstInstallment),
  };
}
