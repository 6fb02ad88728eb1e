import { z } from "zod";
import { METHODS, SEVERITIES } from "../requestWords";
import { datedTable, figure, listTable, text } from "./parts";

/** A center to which a private delivery service can deliver. */
const center = z.enum(["Austin", "Kansas City", "Ogden"]);

/** What may be wrong with a request, the most severe first. */
export const requestIssue = z.enum([
  "not requested on time",
  "requested late",
  "extended date missed",
  "perfection period over",
  "perfection period open",
  "estimate blank",
  "fiscal year not on paper",
  "e-file closed",
  "no electronic payment",
  "carrier to a P.O. box",
  "carrier not designated",
  "line 8 checked",
  "line 8 not checked",
  "zero estimate after tax last year",
  "zero estimate",
  "electronic payment closed",
  "below 90% test",
  "90% test missed",
  "no proof",
  "refund claim near",
  "refund claim passed",
  "state asks for its own request",
  "state rule unverified",
  "interest accrues",
  "relief from penalties",
  "refund expected",
  "request gives no time",
  "low estimate beside last year",
  "postponement moves dates",
  "first installment due",
]);

/** What may be wrong with a request. */
export type RequestIssue = z.infer<typeof requestIssue>;

/** Tables of the request itself, by id. */
export const requestTables = {
  "request-lines": listTable("lines", { line: z.string().regex(/^\d$/), what: text }),
  "request-methods": listTable("methods", {
    method: z.enum(METHODS),
    needsPayment: z.boolean(),
    fiscalYear: z.boolean(),
    postponementExtends: z.boolean(),
    how: text,
    proof: text,
  }),
  "perfection-period": datedTable({ days: figure }),
  "estimate-review": datedTable({ shareOfPriorYearTax: figure }),
  "mailing-addresses": listTable("addresses", {
    edition: z.int(),
    residences: z.array(text).min(1),
    paidWithRequest: z.boolean(),
    lines: z.array(text).min(2),
    center: z.exactOptional(center),
  }),
  "service-center-streets": listTable("centers", { center, lines: z.array(text).min(2) }),
  "private-delivery-services": listTable("services", { carrier: text, service: text }),
  "request-issues": listTable("checks", {
    check: requestIssue,
    severity: z.enum(SEVERITIES),
    what: text,
    remedy: text,
  }),
};
