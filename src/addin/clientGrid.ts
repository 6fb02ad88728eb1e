import { FILER_TYPES } from "../calculation/filerType";
import { STATES } from "../calculation/state";
import type { NewSheet } from "./workbookHost";

const DAY = "yyyy-mm-dd";
const MONEY = "#,##0.00";
const YES_NO = ["yes", "no"];

interface Column {
  readonly heading: string;
  readonly width: number;
  readonly format?: string;
  readonly choices?: readonly string[];
  /** What the preparer types in the first row, as an example to be overwritten. */
  readonly example?: string | number;
  /** A formula, {Heading} standing for the cell of that column in the same row, {day} for the day looked at. */
  readonly formula?: string;
}

const COLUMNS: readonly Column[] = [
  { heading: "Client", width: 18, example: "Example" },
  { heading: "Tax year", width: 9, format: "0", example: 2025 },
  { heading: "State", width: 8, choices: STATES, example: "OH" },
  { heading: "FilerType", width: 12, choices: FILER_TYPES },
  { heading: "Total tax", width: 13, format: MONEY, example: 20000 },
  { heading: "Payments", width: 13, format: MONEY, example: 15000 },
  { heading: "Paying with request", width: 13, format: MONEY, example: 3000 },
  { heading: "Asked on", width: 12, format: DAY },
  { heading: "Confirmed on", width: 12, format: DAY },
  { heading: "Rejected on", width: 12, format: DAY },
  { heading: "Filed on", width: 12, format: DAY },
  { heading: "Planned on", width: 12, format: DAY, example: "2026-10-15" },
  { heading: "Extended", width: 10, choices: YES_NO, example: "yes" },
  { heading: "Relief begins", width: 12, format: DAY },
  { heading: "Postponed to", width: 12, format: DAY },
  {
    heading: "Due",
    width: 12,
    format: DAY,
    formula: "EXT.DUE({Tax year},{State},{Filer},{Relief begins},{Postponed to})",
  },
  {
    heading: "Extended due",
    width: 12,
    format: DAY,
    formula: "EXT.EXTENDED({Tax year},{State},{Filer},{Relief begins},{Postponed to})",
  },
  {
    heading: "Shortfall",
    width: 13,
    format: MONEY,
    formula: "EXT.SHORTFALL({Total tax},{Payments})",
  },
  {
    heading: "Suggested payment",
    width: 13,
    format: MONEY,
    formula: "EXT.SUGGEST({Total tax},{Payments})",
  },
  {
    heading: "Charges to planned day",
    width: 13,
    format: MONEY,
    formula:
      "EXT.CHARGES({Tax year},{Total tax},{Payments}+{Paying with request},{Planned on},{Planned on},{Extended},{State},{Filer},$E$1,,{Relief begins},{Postponed to})",
  },
  {
    heading: "Stage",
    width: 12,
    formula:
      "EXT.STAGE({Tax year},{day},{Asked on},{Confirmed on},{Rejected on},{Filed on},{State},{Filer},{Relief begins},{Postponed to})",
  },
  {
    heading: "Days left",
    width: 9,
    format: "0",
    formula:
      "EXT.DAYSLEFT({Tax year},{day},{Asked on},{Confirmed on},{Rejected on},{Filed on},,{State},{Filer},{Relief begins},{Postponed to})",
  },
  {
    heading: "Wrong or risky",
    width: 9,
    format: "0",
    formula:
      "EXT.ISSUECOUNT({Tax year},{Total tax},{Payments},{Paying with request},{day},{Asked on},{Confirmed on},{Rejected on},{Filed on},{State},{Filer},,,,,,{Relief begins},{Postponed to})",
  },
];

function letterOf(heading: string): string {
  const index = COLUMNS.findIndex((column) => column.heading === heading);
  if (index < 0 || index > 25) throw new RangeError(`the grid has no column ${heading}`);
  return String.fromCharCode("A".charCodeAt(0) + index);
}

/**
 * A sheet for a client list: headings, one example row, formulas beside it, and above it the day looked at and the rate assumed.
 *
 * @param asOf - The day looked at, such as 2026-04-01.
 * @returns The sheet; its rows below the example are added by typing under the table.
 */
export function clientGrid(asOf: string): NewSheet {
  const headingRow = 3;
  const row = String(headingRow + 1);
  const inRow = (formula: string) =>
    `=${formula.replaceAll("{day}", "$B$1").replaceAll(/\{([^}]+)\}/g, (_whole, heading: string) => letterOf(heading) + row)}`;
  return {
    name: "Extension clients",
    cells: [
      ["Season on", asOf, "", "Assumed rate", "latest"],
      ["Estimates only: check the current official text; the licensed preparer decides."],
      COLUMNS.map(({ heading }) => heading),
      COLUMNS.map(({ example, formula }) =>
        formula === undefined ? (example ?? "") : inRow(formula)
      ),
    ],
    widths: COLUMNS.map(({ width }) => width),
    formats: COLUMNS.map(({ format }) => format ?? ""),
    choices: COLUMNS.map(({ choices }) => choices ?? []),
    headingRow,
    isTable: true,
  };
}
