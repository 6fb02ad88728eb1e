import type { RequestToCheck } from "../calculation/request/requestToCheck";
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
  readonly paying: unknown;
  readonly asOf: unknown;
  readonly route: unknown;
  readonly carrier: unknown;
  readonly outOfCountry: unknown;
  readonly priorTax: unknown;
  readonly firstInstallment: unknown;
}

/** Reads a client's request to be looked over; a blank estimate is a finding, not an error, and blank payments are none. */
export function requestToCheck(cells: RequestCells): RequestToCheck {
  const who = client(cells);
  return {
    ...who,
    dates: datesOf(who),
    totalTax: optionalMoney("totalTax", cells.totalTax),
    payments: optionalMoney("payments", cells.payments) ?? ZERO,
    paying: optionalMoney("paying", cells.paying) ?? ZERO,
    asOf: readDay("asOf", cells.asOf),
    record: requestRecord(cells, who.taxYear),
    route: requestRoute("route", cells.route),
    carrier: carrierOf("carrier", cells.carrier),
    outOfCountry: isBlankOrZero(cellValue(cells.outOfCountry))
      ? undefined
      : yesNo("outOfCountry", cells.outOfCountry),
    priorTax: optionalMoney("priorTax", cells.priorTax),
    firstInstallment: optionalMoney("firstInstallment", cells.firstInstallment),
  };
}
