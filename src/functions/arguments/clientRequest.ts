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

/** The request that the issues are found in. */
export function clientRequestOf(given: Given<typeof clientRequest>): ClientRequest {
  return {
    ...given,
    circumstances: circumstancesOf(given),
    dates: datesOf(given),
    record: recordOf(given),
  };
}
