import {
  CALCULATED_COLUMNS,
  type CalculatedColumn,
  ENTERED_COLUMNS,
  MONEY,
} from "../../addin/clientList";
import { PERCENT } from "./sheetStyle";

const YEAR = "{Tax year or fiscal year end}";
const UNPAID = "EXT.SHORTFALL({Estimated total tax},{Total payments}+{Paid with request})";
const FILER = "{State},{Filer type}";
const POSTPONEMENT = "{Postponement begins},{Postponement ends}";

/** Columns of the sample that one formula of the add-in fills for all clients. */
export const FILLED_COLUMNS: readonly CalculatedColumn[] = [
  ...CALCULATED_COLUMNS,
  {
    heading: "Failure-to-file penalty alone",
    width: 13,
    format: MONEY,
    formula: `EXT.LATEFILE(${YEAR},${UNPAID},{Planned filing date},{Valid extension},${FILER},${POSTPONEMENT})`,
  },
  {
    heading: "Failure-to-pay penalty alone",
    width: 13,
    format: MONEY,
    formula: `EXT.LATEPAY(${YEAR},${UNPAID},{Planned payment date},${FILER},,${POSTPONEMENT})`,
  },
  {
    heading: "Interest rate at due date",
    width: 12,
    format: PERCENT,
    formula: "EXT.UNDERPAYRATE({Payment due date},{assumed rate})",
  },
];

/** Columns of the sample with an ordinary formula for each client. */
export const ROW_COLUMNS: readonly CalculatedColumn[] = [
  {
    heading: "Regular due date (long form)",
    width: 18,
    format: "General",
    formula: 'TEXT({Regular due date},"ddd, mmm d, yyyy")',
  },
  {
    heading: "Remaining to pay",
    width: 12,
    format: MONEY,
    formula: "MAX({Suggested payment}-{Paid with request},0)",
  },
  {
    heading: "Percent paid",
    width: 12,
    format: PERCENT,
    formula:
      "IF({Estimated total tax}=0,1,({Total payments}+{Paid with request})/{Estimated total tax})",
  },
  {
    heading: "90% test met",
    width: 12,
    format: "General",
    formula:
      'IF({Paid with request}>=EXT.SUGGEST({Estimated total tax},{Total payments},"reasonable cause"),"yes","no")',
  },
  {
    heading: "Filed on time",
    width: 12,
    format: "General",
    formula:
      'IF({Planned filing date}<=IF({Valid extension}="yes",{Extended due date},{Regular due date}),"yes","no")',
  },
  {
    heading: "What to do",
    width: 22,
    format: "General",
    formula:
      'IF({Balance due}=0,"no balance due",IF({Remaining to pay}=0,"paid as suggested",IF({Paid with request}>={Balance due},"cushion only",IF({90% test met}="yes","pay balance with return","pay more now"))))',
  },
];

/** Every column of the sample's client list, from left to right. */
export const SAMPLE_COLUMNS = [...ENTERED_COLUMNS, ...FILLED_COLUMNS, ...ROW_COLUMNS];
