import { planInstead, recordCell, type ClientListRow } from "../arguments/clientList";
import type { ClientListField } from "../arguments/clientListHeadings";
import { cellValue, isBlankOrZero } from "../cells/cellValue";

/** Dates of what happened, in whose columns "no" and FALSE say that it has not. */
const RECORD: readonly string[] = ["confirmedOn", "rejectedOn", "filedOn", "paidOn"];

/** A client's cell of an argument, from the row or, where the list has none, from the arguments of the whole list. */
export function cellOfClient(
  row: ClientListRow,
  list: Readonly<Record<string, unknown>>
): (name: string) => unknown {
  return (name) => {
    if (name === "asOf" || name === "assumedRate") return list[name];
    if (name === "requestedOn" || name === "validExtension") {
      // A column such as "Extension filed" has dates, which are the record, or yes and no, which are a plan.
      const requested = row.cell("requestedOn");
      const plan = planInstead(requested);
      if (name === "requestedOn") return plan === undefined ? requested : null;
      return plan ?? row.cell("validExtension");
    }
    const own = row.cell(name as ClientListField);
    if (RECORD.includes(name)) return recordCell(own);
    const isOfList = name === "taxYear" && isBlankOrZero(cellValue(own));
    return isOfList ? list[name] : own;
  };
}
