import { DAY, MONEY, PERCENT, worksheetDate, YEAR } from "./sheetStyle";
import type { SeasonClient } from "./clients";
import { logOf } from "./seasonLog";

/** A column the preparer types. */
export interface TypedColumn {
  readonly heading: string;
  readonly width: number;
  readonly format?: string;
  value(client: SeasonClient): string | number | Date | null;
}

/** A column worked out: once for the whole column when it is ours, else row by row. */
export interface WorkedColumn {
  readonly heading: string;
  readonly width: number;
  readonly format: string;
  readonly formula: string;
  readonly spills: boolean;
}

function dayOrNothing(iso: string | undefined): Date | null {
  return iso === undefined ? null : worksheetDate(iso);
}

/** What was done when, as the preparer keeps it through the season. */
const LOG_COLUMNS: readonly TypedColumn[] = (
  [
    ["Asked on", "requestedOn"],
    ["Confirmed on", "confirmedOn"],
    ["Rejected on", "rejectedOn"],
    ["Filed on", "filedOn"],
  ] as const
).map(([heading, kept]) => ({
  heading,
  width: 11,
  format: DAY,
  value: ({ client }) => dayOrNothing(logOf(client)[kept]),
}));

/** Columns A to R. */
export const TYPED_COLUMNS: readonly TypedColumn[] = [
  { heading: "Client", width: 14, value: (row) => row.client },
  {
    heading: "Tax year (or its last day)",
    width: 12,
    format: YEAR,
    value: ({ taxYear }) => (typeof taxYear === "number" ? taxYear : worksheetDate(taxYear)),
  },
  { heading: "State", width: 8, value: (row) => row.state || null },
  { heading: "FilerType", width: 12, value: (row) => row.filerType || null },
  { heading: "Total tax (estimate)", width: 12, format: MONEY, value: (row) => row.totalTax },
  { heading: "Payments so far", width: 12, format: MONEY, value: (row) => row.payments },
  { heading: "Paid with request", width: 12, format: MONEY, value: (row) => row.paidWithRequest },
  {
    heading: "Relief begins",
    width: 11,
    format: DAY,
    value: (row) => dayOrNothing(row.postponementBegins),
  },
  {
    heading: "Postponed to",
    width: 11,
    format: DAY,
    value: (row) => dayOrNothing(row.postponementEnds),
  },
  { heading: "Extended", width: 9, value: (row) => row.extended },
  { heading: "Planned paid on", width: 11, format: DAY, value: (row) => worksheetDate(row.paidOn) },
  {
    heading: "Planned filed on",
    width: 11,
    format: DAY,
    value: (row) => worksheetDate(row.filedOn),
  },
  ...LOG_COLUMNS,
  { heading: "Still missing", width: 26, value: ({ client }) => logOf(client).missing ?? null },
  { heading: "About", width: 36, value: (row) => row.about },
];

function column(
  heading: string,
  formula: string,
  format: string,
  spills = true,
  width = 12
): WorkedColumn {
  return { heading, formula, format, spills, width };
}

/**
 * Columns S onwards. In a formula {B} stands for column B: its whole block of clients where the
 * formula spills, its cell in the same row where it does not.
 */
export const WORKED_COLUMNS: readonly WorkedColumn[] = [
  column("Due", "EXT.DUE({B},{C},{D},{H},{I})", DAY),
  column("Extended due", "EXT.EXTENDED({B},{C},{D},{H},{I})", DAY),
  column("Pay by", "EXT.PAYBY({B},{C},{D},{H},{I})", DAY),
  column("Shortfall", "EXT.SHORTFALL({E},{F})", MONEY),
  column("Suggested payment", "EXT.SUGGEST({E},{F},Aim,Cushion)", MONEY),
  column(
    "Charges as planned",
    "EXT.CHARGES({B},{E},{F}+{G},{K},{L},{J},{C},{D},AssumedRate,,{H},{I})",
    MONEY
  ),
  column(
    "Late filing alone",
    "EXT.LATEFILE({B},EXT.SHORTFALL({E},{F}+{G}),{L},{J},{C},{D},{H},{I})",
    MONEY
  ),
  column(
    "Late payment alone",
    "EXT.LATEPAY({B},EXT.SHORTFALL({E},{F}+{G}),{K},{C},{D},,{H},{I})",
    MONEY
  ),
  column("Rate when due", "EXT.UNDERPAYRATE({U},AssumedRate)", PERCENT),
  column("Due, in words", 'TEXT({S},"ddd, mmm d, yyyy")', "General", false, 18),
  column("Still to send", "MAX({W}-{G},0)", MONEY, false),
  column("Share paid", "IF({E}=0,1,({F}+{G})/{E})", PERCENT, false),
  column("Presumption met", 'IF({G}>=EXT.SUGGEST({E},{F},"protect"),"yes","no")', "General", false),
  column("Filed in time", 'IF({L}<=IF({J}="yes",{T},{S}),"yes","no")', "General", false),
  column(
    "What to do",
    'IF({V}=0,"nothing is due",IF({AC}=0,"nothing more",IF({G}>={V},"only the cushion",IF({AE}="yes","rest with the return","send more now"))))',
    "General",
    false,
    20
  ),
];
