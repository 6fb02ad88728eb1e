import { cellValue, shown } from "../cells/cellValue";
import { InputError } from "../cells/inputError";

/** The columns of a client list that ROSTER reads, each with its headings. Case, spaces and punctuation do not matter. */
export const CLIENT_LIST_HEADINGS = {
  client: ["client", "name", "client name", "client id", "id"],
  taxYear: ["tax year", "year", "tax year or fiscal year end", "fiscal year end"],
  state: ["state", "residence", "state of residence"],
  filerType: ["filer type", "filer"],
  totalTax: ["estimated total tax", "total tax", "total tax estimate", "line 4"],
  payments: ["total payments", "payments", "line 5"],
  paidWithRequest: ["paid with request", "payment with request", "line 7"],
  target: ["target"],
  cushion: ["cushion"],
  firstInstallment: ["first installment", "first estimated tax installment"],
  priorYearTax: ["prior year tax", "prior tax", "last year's tax"],
  requestedOn: ["requested on", "request date"],
  confirmedOn: ["confirmed on", "confirmed", "accepted on", "proof received on"],
  rejectedOn: ["rejected on", "rejected"],
  filedOn: ["filed on", "filed", "return filed"],
  paidOn: ["paid on", "paid in full on"],
  plannedFilingDate: ["planned filing date", "planned on"],
  plannedPaymentDate: ["planned payment date", "planned paid on"],
  method: ["method", "request method"],
  carrier: ["carrier", "delivery service"],
  line8Checked: ["line 8 checked", "line 8", "out of country", "out of the country"],
  postponementBegins: ["postponement begins"],
  postponementEnds: ["postponement ends"],
} as const;

/** A column that ROSTER reads. */
export type ClientListField = keyof typeof CLIENT_LIST_HEADINGS;

/** The columns that a client list must have. */
const NEEDED: readonly ClientListField[] = ["totalTax", "payments"];

/** A heading as it is compared: lower case, letters and digits only. */
function bare(heading: string): string {
  return heading.toLowerCase().replace(/[^a-z0-9]/g, "");
}

const FIELDS = Object.keys(CLIENT_LIST_HEADINGS) as ClientListField[];

const fieldOf: ReadonlyMap<string, ClientListField> = new Map(
  FIELDS.flatMap((field) =>
    CLIENT_LIST_HEADINGS[field].map((heading) => [bare(heading), field] as const)
  )
);

/**
 * Finds the columns of a client list by their headings. Unknown headings are ignored.
 *
 * @param name - The argument, for the error message.
 * @param headings - The first row of the list.
 * @returns The position of each column found.
 * @throws InputError when two headings mean the same column, or a required one is missing.
 */
export function clientListColumns(
  name: string,
  headings: readonly unknown[]
): ReadonlyMap<ClientListField, number> {
  const columns = new Map<ClientListField, number>();
  headings.forEach((cell, index) => {
    const value = cellValue(cell);
    const field = typeof value === "string" ? fieldOf.get(bare(value)) : undefined;
    if (field === undefined) return;
    const other = columns.get(field);
    if (other !== undefined)
      throw new InputError(
        name,
        `The headings ${shown(cellValue(headings[other]))} and ${shown(value)} mean the same column. Keep one of them.`
      );
    columns.set(field, index);
  });
  const missing = NEEDED.filter((field) => !columns.has(field));
  if (missing.length > 0) {
    const wanted = missing.map((field) => CLIENT_LIST_HEADINGS[field][0]).join(" and ");
    const column = missing.length > 1 ? "those columns" : "that column";
    throw new InputError(name, `The first row has no heading for ${wanted}. Add ${column}.`);
  }
  return columns;
}
