import { InputError } from "../inputError";
import { cellValue, shown } from "./cells";

/** The columns of a client list that ROSTER reads, each with the headings it goes by. Case, spaces and punctuation do not matter. */
export const ROSTER_HEADINGS = {
  client: ["client", "name", "client name", "client id", "id"],
  taxYear: ["tax year", "year", "tax year or its last day", "tax year or fiscal year end"],
  state: ["state", "residence", "state of residence"],
  filerType: ["filerType", "kind of filer"],
  totalTax: ["total tax", "estimated total tax", "total tax estimate", "estimate", "line 4"],
  payments: ["payments", "total payments", "payments so far", "line 5"],
  paidWithRequest: ["paidWithRequest", "paying with request", "paid with request", "line 7"],
  target: ["target"],
  cushion: ["cushion"],
  firstInstallment: ["first installment", "first estimate"],
  priorYearTax: ["prior tax", "prior year tax", "last year's tax"],
  requestedOn: ["asked on", "asked", "requested on"],
  confirmedOn: ["confirmed on", "confirmed", "accepted on"],
  rejectedOn: ["rejected on", "rejected"],
  filedOn: ["filed on", "filed", "return filed"],
  paidOn: ["paid on", "paid in full on"],
  plannedFilingDate: ["planned on", "planned", "planned filed on", "planned filing date"],
  plannedPaymentDate: ["planned paid on", "planned payment day", "planned payment date"],
  method: ["method", "way", "goes by"],
  carrier: ["carrier", "delivery service"],
  line8Checked: ["out of country", "out of the country", "line 8"],
  postponementBegins: ["relief begins", "postponement begins"],
  postponementEnds: ["postponed to", "relief ends", "postponement ends"],
} as const;

/** A column that ROSTER reads. */
export type RosterField = keyof typeof ROSTER_HEADINGS;

/** The columns without which no row can be answered. */
const NEEDED: readonly RosterField[] = ["totalTax", "payments"];

/** A heading as it is compared: letters and digits only. */
function bare(heading: string): string {
  return heading.toLowerCase().replace(/[^a-z0-9]/g, "");
}

const FIELDS = Object.keys(ROSTER_HEADINGS) as RosterField[];

const fieldOf: ReadonlyMap<string, RosterField> = new Map(
  FIELDS.flatMap((field) =>
    ROSTER_HEADINGS[field].map((heading) => [bare(heading), field] as const)
  )
);

/**
 * Finds the columns of a client list by their headings; headings that are not known are left alone.
 *
 * @param headings - The list's first row.
 * @returns The column of each field found.
 * @throws InputError when two headings mean the same, or a needed one is missing.
 */
export function rosterColumns(headings: readonly unknown[]): ReadonlyMap<RosterField, number> {
  const columns = new Map<RosterField, number>();
  headings.forEach((cell, index) => {
    const value = cellValue(cell);
    const field = typeof value === "string" ? fieldOf.get(bare(value)) : undefined;
    if (field === undefined) return;
    const other = columns.get(field);
    if (other !== undefined)
      throw new InputError(
        "grid",
        `has two headings for the same column, ${shown(cellValue(headings[other]))} and ${shown(value)}; keep one`
      );
    columns.set(field, index);
  });
  const missing = NEEDED.filter((field) => !columns.has(field));
  if (missing.length > 0) {
    const wanted = missing.map((field) => ROSTER_HEADINGS[field][0]).join(" and ");
    throw new InputError("grid", `has no heading ${wanted} in its first row`);
  }
  return columns;
}
