import { ruleTables, type RuleTable } from "../../rules/ruleTables";
import { isBlankOrZero, shown } from "../cells/cellValue";
import { InputError } from "../cells/inputError";
import { plainWord, type CellKind } from "./argumentKind";
import { nearName } from "./closestName";

/** The name of a rule table. A blank cell returns an error. */
export const tableName: CellKind<RuleTable> = {
  id: "table-name",
  title: "Table name",
  description:
    "The name or the title of a rule table, in any case, with spaces or hyphens. `EXT.RULETABLES` lists them. For an unknown name the error message gives the closest one.",
  accepted: ['"underpayment rate"', '"failure-to-pay"'],
  notAccepted: ['"rate of interest"', '""'],
  takes: "cell",
  isEmpty: isBlankOrZero,
  whenBlank: {
    enter: "Enter the name of a rule table, such as underpayment rate. EXT.RULETABLES lists them.",
  },
  read: (value, name) => {
    const word = String(plainWord(value)).slice(0, 200);
    const id = word.replace(/ /g, "-");
    const byTitle = [...ruleTables().values()].find(({ title }) => plainWord(title) === word);
    const table = ruleTables().get(id) ?? byTitle;
    if (table) return table;
    const near = nearName(id, [...ruleTables().keys()]);
    const closest = near === undefined ? "" : ` The closest name is ${near}.`;
    throw new InputError(
      name,
      `${shown(value)} is not a rule table.${closest} EXT.RULETABLES lists them all.`
    );
  },
};
