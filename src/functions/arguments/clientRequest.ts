import type { ClientRequest } from "../../calculation/request/clientRequest";
import { ZERO } from "../../money/dollars";
import { optional, type Given } from "./argumentKind";
import { carrier } from "./carrier";
import { circumstancesOf, datesOf, postponement, residence } from "./client";
import { date } from "./date";
import { dollars } from "./dollars";
import { record, recordOf } from "./record";
import { taxYear } from "./taxYear";
import { method } from "./words";
import { yesNo } from "./yesNo";

/** A client's request as the preparer records it, to be looked over. A blank estimate is an issue, not an error. */
export const clientRequest = {
  taxYear,
  totalTax: optional(dollars),
  payments: optional(dollars, ZERO),
  paidWithRequest: optional(dollars, ZERO),
  asOf: date,
  ...record,
  ...residence,
  method,
  carrier,
  line8Checked: optional(yesNo),
  priorYearTax: optional(dollars),
  firstInstallment: optional(dollars),
  ...postponement,
};

/** The request that the issues are found in. The cells are read in the order of the arguments, and the first unreadable one is named. */
export function clientRequestOf(given: Given<typeof clientRequest>): ClientRequest {
  const { taxYear: year, totalTax, payments, paidWithRequest, asOf } = given;
  const { requestedOn, confirmedOn, rejectedOn, filedOn, state, filerType } = given;
  const { method: recorded, carrier: delivery, line8Checked } = given;
  const { priorYearTax, firstInstallment, postponementBegins, postponementEnds } = given;
  return {
    taxYear: year,
    circumstances: circumstancesOf({ state, postponementBegins, postponementEnds }),
    dates: datesOf({ taxYear: year, state, filerType, postponementBegins, postponementEnds }),
    record: recordOf({ requestedOn, confirmedOn, rejectedOn, filedOn }),
    filerType,
    totalTax,
    payments,
    paidWithRequest,
    asOf,
    method: recorded,
    carrier: delivery,
    line8Checked,
    priorYearTax,
    firstInstallment,
  };
}
