import { FILER_TYPES } from "../../calculation/filerType";
import { STATES } from "../../calculation/state";
import { DATE_FORMAT, MONEY_FORMAT } from "../../functions/cells/answerCell";

/** Cell format of a tax year or a count. */
export const WHOLE_NUMBER = "0";

const YES_NO = ["yes", "no"];

/** A column that the preparer fills in. */
export interface EnteredColumn {
  readonly heading: string;
  /** In characters. */
  readonly width: number;
  readonly format?: string;
  readonly choices?: readonly string[];
  /** Content of the example row of a new client list. */
  readonly example?: string | number;
}

/** A column that a formula fills. */
export interface CalculatedColumn {
  readonly heading: string;
  /** In characters. */
  readonly width: number;
  readonly format: string;
  /** A formula without its equals sign; `{Heading}` refers to another column, and `{setting}` to one of `ListSetting`. */
  readonly formula: string;
}

/** A choice that applies to every client of a list. */
export type ListSetting = "as-of date" | "assumed rate" | "target" | "cushion";

/** The columns of a client list that the preparer fills in. */
export const ENTERED_COLUMNS: readonly EnteredColumn[] = [
  { heading: "Client", width: 14, example: "Example" },
  { heading: "Tax year or fiscal year end", width: 12, format: WHOLE_NUMBER, example: 2025 },
  { heading: "State", width: 8, choices: STATES, example: "OH" },
  { heading: "Filer type", width: 14, choices: FILER_TYPES },
  { heading: "Estimated total tax", width: 13, format: MONEY_FORMAT, example: 20000 },
  { heading: "Total payments", width: 13, format: MONEY_FORMAT, example: 15000 },
  { heading: "Paid with request", width: 13, format: MONEY_FORMAT, example: 3000 },
  { heading: "Postponement begins", width: 14, format: DATE_FORMAT },
  { heading: "Postponement ends", width: 14, format: DATE_FORMAT },
  { heading: "Valid extension", width: 10, choices: YES_NO, example: "yes" },
  { heading: "Planned payment date", width: 12, format: DATE_FORMAT, example: "2026-10-15" },
  { heading: "Planned filing date", width: 12, format: DATE_FORMAT, example: "2026-10-15" },
  { heading: "Requested on", width: 12, format: DATE_FORMAT },
  { heading: "Confirmed on", width: 12, format: DATE_FORMAT },
  { heading: "Rejected on", width: 12, format: DATE_FORMAT },
  { heading: "Filed on", width: 12, format: DATE_FORMAT },
  { heading: "Still needed", width: 26 },
  { heading: "Notes", width: 44 },
];

const YEAR = "{Tax year or fiscal year end}";
const TAX = "{Estimated total tax},{Total payments}";
const RECORD = "{Requested on},{Confirmed on},{Rejected on},{Filed on}";
const FILER = "{State},{Filer type}";
const POSTPONEMENT = "{Postponement begins},{Postponement ends}";

function calculated(heading: string, format: string, formula: string): CalculatedColumn {
  return { heading, width: 13, format, formula };
}

/** The columns of a client list that follow from the entered ones. */
export const CALCULATED_COLUMNS: readonly CalculatedColumn[] = [
  calculated("Regular due date", DATE_FORMAT, `EXT.DUE(${YEAR},${FILER},${POSTPONEMENT})`),
  calculated("Extended due date", DATE_FORMAT, `EXT.EXTENDED(${YEAR},${FILER},${POSTPONEMENT})`),
  calculated("Payment due date", DATE_FORMAT, `EXT.PAYBY(${YEAR},${FILER},${POSTPONEMENT})`),
  calculated("Balance due", MONEY_FORMAT, `EXT.SHORTFALL(${TAX})`),
  calculated("Suggested payment", MONEY_FORMAT, `EXT.SUGGEST(${TAX},{target},{cushion})`),
  calculated(
    "Penalties and interest (planned)",
    MONEY_FORMAT,
    `EXT.CHARGES(${YEAR},${TAX}+{Paid with request},{Planned payment date},{Planned filing date},{Valid extension},${FILER},{assumed rate},,${POSTPONEMENT})`
  ),
  calculated(
    "Status",
    "General",
    `EXT.STAGE(${YEAR},{as-of date},${RECORD},${FILER},${POSTPONEMENT})`
  ),
  calculated(
    "Days left",
    WHOLE_NUMBER,
    `EXT.DAYSLEFT(${YEAR},{as-of date},${RECORD},,${FILER},${POSTPONEMENT})`
  ),
  calculated(
    "Issues",
    WHOLE_NUMBER,
    `EXT.ISSUECOUNT(${YEAR},${TAX},{Paid with request},{as-of date},${RECORD},${FILER},,,,,,${POSTPONEMENT})`
  ),
];

/**
 * Puts references into a formula of the client list.
 *
 * @param formula - The formula, with headings and settings in braces.
 * @param settings - The reference to each setting.
 * @param columnCells - The reference to the cells of a column, by its heading.
 */
export function fillFormula(
  formula: string,
  settings: Readonly<Record<ListSetting, string>>,
  columnCells: (heading: string) => string
): string {
  return formula.replaceAll(/\{([^}]+)\}/g, (_whole, name: string) =>
    name in settings ? settings[name as ListSetting] : columnCells(name)
  );
}
