import type { ClientListField } from "../../../src/functions/arguments/clientListHeadings";
import { fromCatalog } from "../fromCatalog";
import { inCell, serial } from "../sheet";
import { plannedCost, type PlannedClient } from "./plannedCost";

/** A client under the names of the columns; what cannot be read is in it as typed. */
export type RecordedClient = Partial<Record<ClientListField, unknown>>;

const ISO_DATE = /^\d{4}-\d{2}-\d{2}$/;
const AMOUNTS: readonly ClientListField[] = ["totalTax", "payments", "paidWithRequest"];
const DATES: readonly ClientListField[] = [
  "requestedOn",
  "confirmedOn",
  "rejectedOn",
  "filedOn",
  "paidOn",
  "plannedFilingDate",
  "plannedPaymentDate",
];

/** What a function of the catalog answers; an error by its code alone, because its sentence names the argument. */
function ask(id: string, ...values: unknown[]): unknown {
  const answer = inCell(fromCatalog(id), ...values);
  return typeof answer === "object" && answer !== null && "code" in answer ? answer.code : answer;
}

/** Penalties and interest of the plan; an error if a cell that they need cannot be read. */
function cost(client: RecordedClient, asOf: number): unknown {
  const amounts = AMOUNTS.map((name) => client[name] ?? "");
  const dates = DATES.map((name) => client[name] ?? "");
  const isRead =
    amounts.every((amount) => amount === "" || (typeof amount === "number" && amount >= 0)) &&
    dates.every((date) => date === "" || (typeof date === "string" && ISO_DATE.test(date)));
  if (!isRead) return "#VALUE!";
  const planned = {
    state: "",
    filerType: "",
    postponementBegins: "",
    postponementEnds: "",
    taxYear: 2025,
    ...client,
    ...Object.fromEntries(AMOUNTS.map((name, index) => [name, amounts[index]])),
    ...Object.fromEntries(
      DATES.map((name, index) => {
        const date = dates[index];
        return [name, typeof date === "string" && date !== "" ? serial(date) : ""];
      })
    ),
  };
  return plannedCost(planned as unknown as PlannedClient, asOf);
}

/**
 * A client's row by the functions of the same names, one call each, under the headings of ROSTER.
 *
 * @param client - The client; an empty one stays blank.
 * @param asOf - The as-of date as a worksheet date.
 */
export function singleAnswers(client: RecordedClient, asOf: number): Record<string, unknown> {
  const of = (name: ClientListField): unknown => client[name] ?? "";
  const year = client.taxYear ?? 2025;
  const who = ["state", "filerType"].map((name) => of(name as ClientListField));
  const record = [of("requestedOn"), of("confirmedOn"), of("rejectedOn"), of("filedOn")];
  const paidOn = of("paidOn");
  const amounts = [of("totalTax"), of("payments")];
  const stage = ask("STAGE", year, asOf, ...record, ...who);
  const asks = stage === "not requested" || stage === "rejected" || stage === "#VALUE!";
  const balance = ask("SHORTFALL", ...amounts);
  return {
    Client: of("client"),
    "Regular due date": ask("DUE", year, ...who),
    "Extended due date": ask("EXTENDED", year, ...who),
    "Payment due date": ask("PAYBY", year, ...who),
    "Balance due": balance,
    "Suggested payment": ask("SUGGEST", ...amounts, of("target"), of("cushion")),
    "Penalties and interest (planned)": cost(client, asOf),
    Method: asks
      ? stage === "#VALUE!"
        ? stage
        : ask("METHOD", year, of("paidWithRequest") || 0, asOf, of("rejectedOn"), ...who)
      : "",
    Status: stage,
    "Days left": ask("DAYSLEFT", year, asOf, ...record, paidOn, ...who),
    "Next deadline": ask("NEXTDATE", year, asOf, ...record, paidOn, ...who),
    Issues: ask(
      "ISSUECOUNT",
      year,
      ...amounts,
      of("paidWithRequest"),
      asOf,
      ...record,
      ...who,
      of("method"),
      of("carrier"),
      of("line8Checked"),
      of("priorYearTax")
    ),
  };
}
