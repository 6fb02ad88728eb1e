import {
  CALCULATED_COLUMNS,
  type CalculatedColumn,
  WHOLE_NUMBER,
} from "../../addin/list/clientList";
import { DATE_FORMAT, MONEY_FORMAT, PERCENT_FORMAT } from "../../functions/cells/answerCell";
import type { RosterHeading } from "../../functions/season/rosterColumns";

/** A column that the ROSTER formula of the client list fills. */
export interface AnswerColumn {
  readonly heading: RosterHeading;
  /** In characters. */
  readonly width: number;
  readonly format?: string;
}

/** The answers beside the names. */
export const FIRST_ANSWERS: readonly AnswerColumn[] = [
  { heading: "Status", width: 14 },
  { heading: "Next deadline", width: 36 },
  { heading: "Extended due date", width: 12, format: DATE_FORMAT },
  { heading: "Balance due", width: 12, format: MONEY_FORMAT },
  { heading: "Suggested payment", width: 12, format: MONEY_FORMAT },
  { heading: "Remaining to pay", width: 12, format: MONEY_FORMAT },
  { heading: "Penalties and interest (planned)", width: 13, format: MONEY_FORMAT },
  { heading: "Issues", width: 8, format: WHOLE_NUMBER },
];

/** The answers after what the preparer enters. */
export const LAST_ANSWERS: readonly AnswerColumn[] = [
  { heading: "Severity", width: 12 },
  { heading: "Most serious issue", width: 84 },
  { heading: "What to do", width: 100 },
  { heading: "Days left", width: 8, format: WHOLE_NUMBER },
  { heading: "Regular due date", width: 12, format: DATE_FORMAT },
  { heading: "Payment due date", width: 12, format: DATE_FORMAT },
  { heading: "Percent paid", width: 10, format: PERCENT_FORMAT },
  { heading: "Penalties and interest with extension", width: 14, format: MONEY_FORMAT },
  { heading: "Penalties and interest without extension", width: 14, format: MONEY_FORMAT },
  { heading: "Confirm first", width: 90 },
  { heading: "Unreadable", width: 30 },
];

const YEAR = "{Tax year or fiscal year end}";
const TAX = "{Estimated total tax}";
const FILER = "{State},{Filer type}";
const POSTPONEMENT = "{Postponement begins},{Postponement ends}";
const UNPAID = `EXT.SHORTFALL(${TAX},{Paid by the due date})`;
/** The date of the request, or the as-of date while it is not made. */
const REQUEST_DATE = `IF(${known("Requested on")},{Requested on},{as-of date})`;
/** Whether a date of the record is known on the as-of date: 1 or 0 for each client, which AND would not return. */
function known(heading: string): string {
  return `({${heading}}<>0)*({${heading}}<={as-of date})`;
}

function money(heading: string, formula: string): CalculatedColumn {
  return { heading, width: 14, format: MONEY_FORMAT, formula };
}

function text(heading: string, formula: string, width = 13): CalculatedColumn {
  return { heading, width, format: "General", formula };
}

function date(heading: string, formula: string): CalculatedColumn {
  return { heading, width: 12, format: DATE_FORMAT, formula };
}

/** The same amount as the answer of the client list, from the record and the plan. */
const CHARGES = money(
  "Penalties and interest (planned)",
  `EXT.CHARGES(${YEAR},${TAX},{Paid by the due date},{Payment date used},{Filing date used},{Extension counts},${FILER},{assumed rate},,${POSTPONEMENT})`
);

/** Columns of the sheet of column formulas that one formula of the add-in fills for all clients. */
export const FILLED_COLUMNS: readonly CalculatedColumn[] = [
  ...CALCULATED_COLUMNS.map((column) => (column.heading === CHARGES.heading ? CHARGES : column)),
  money("Suggested payment with cushion", `EXT.SUGGEST(${TAX},{Total payments},Target,Cushion)`),
  money("Needed for the 90% test", `EXT.SUGGEST(${TAX},{Total payments},"reasonable cause")`),
  money(
    "Failure-to-file penalty alone",
    `EXT.LATEFILE(${YEAR},${UNPAID},{Filing date used},{Extension counts},${FILER},${POSTPONEMENT})`
  ),
  money(
    "Failure-to-pay penalty alone",
    `EXT.LATEPAY(${YEAR},${UNPAID},{Payment date used},${FILER},,${POSTPONEMENT})`
  ),
  {
    heading: "Interest rate at due date",
    width: 12,
    format: PERCENT_FORMAT,
    formula: "EXT.UNDERPAYRATE({Payment due date},{assumed rate})",
  },
  text(
    "Status before filing",
    `EXT.STAGE(${YEAR},{Status date},{Requested on},{Confirmed on},{Rejected on},,${FILER},${POSTPONEMENT})`
  ),
];

/** Columns of that sheet that an ordinary formula fills for all clients. */
export const ORDINARY_COLUMNS: readonly CalculatedColumn[] = [
  date("Status date", "IF({Extended due date}<{as-of date},{Extended due date},{as-of date})"),
  text(
    "Extension by the record",
    `IF({Status before filing}="past due","no",IF(${known("Filed on")},IF({Status before filing}="not requested","no",IF({Status before filing}="rejected","no","yes")),"yes"))`
  ),
  text(
    "Extension counts",
    `IF({Valid extension}="",{Extension by the record},IF(${known("Requested on")},{Extension by the record},IF(${known("Confirmed on")},{Extension by the record},IF(${known("Rejected on")},{Extension by the record},IF(${known("Filed on")},{Extension by the record},{Valid extension})))))`
  ),
  money(
    "Paid by the due date",
    `{Total payments}+IF(${REQUEST_DATE}<={Payment due date},{Paid with request},0)`
  ),
  date(
    "Planned or latest filing date",
    'IF({Planned filing date}<>0,{Planned filing date},IF({Extension counts}="yes",{Extended due date},{as-of date}))'
  ),
  date(
    "Filing date used",
    `IF(${known("Filed on")},{Filed on},IF({Planned or latest filing date}<{as-of date},{as-of date},{Planned or latest filing date}))`
  ),
  date(
    "Payment date used",
    "IF({Planned payment date}<>0,{Planned payment date},{Filing date used})"
  ),
  money(
    "To reach 90%",
    "IF({Filed on}<>0,0,IF({Needed for the 90% test}>{Paid with request},{Needed for the 90% test}-{Paid with request},0))"
  ),
  text("90% test met", 'IF({Paid with request}>={Needed for the 90% test},"yes","no")'),
  text(
    "Filed on time",
    'IF({Filing date used}<=IF({Extension counts}="yes",{Extended due date},{Regular due date}),"yes","no")'
  ),
  text(
    "Payment status",
    'IF({Balance due}=0,"no balance due",IF({Paid with request}>={Suggested payment with cushion},"paid as suggested",IF({Paid with request}>={Balance due},"cushion only",IF({90% test met}="yes","pay balance with return","pay more now"))))',
    22
  ),
  {
    heading: "Urgency",
    width: 12,
    format: "0.000",
    // The position in the list makes two clients differ who are as urgent as each other.
    formula:
      'IF({Issues}=0,"",IF({Severity}="problem",2,1)*100000-{Days left}-SEQUENCE(ROWS({Issues}))/1000)',
  },
];
