import {
  MAY_BE_NEGATIVE,
  YES_OR_NO,
  type ReturnItem,
} from "../../calculation/liability/returnItems";
import { ITEM_KINDS, ITEM_LABELS, MOST_PERSONS } from "../../functions/arguments/itemLabels";
import { LEFT_OUT } from "../../functions/liability/leftOut";
import { MONEY_FORMAT } from "../../functions/cells/answerCell";
import type { NewSheet } from "../workbook/newSheet";

type Row = readonly (string | number)[];

/**
 * Items without a row: 0 and not entered mean different things for them, and some builds of Excel send a blank cell as 0. They can be
 * typed in the rows for other labels.
 */
const NOT_LAID_OUT: readonly ReturnItem[] = [
  "ownerWages",
  "qualifiedBusinessIncome",
  "earnedIfDependent",
];
/** Items with a second row, for the documents of the other spouse. */
const TWICE: readonly ReturnItem[] = ["wages", "withholding"];
/** Rows for labels that are not laid out, and for more documents of the same kind. */
const OTHER_ROWS = 5;

const NOTES: Readonly<Partial<Record<ReturnItem, string>>> = {
  wages: "W-2, box 1",
  taxExemptInterest: "1099-INT, box 8",
  interest: "1099-INT, box 1",
  ordinaryDividends: "1099-DIV, box 1a",
  qualifiedDividends: "1099-DIV, box 1b; part of ordinary dividends",
  longTermCarryover: "a positive amount",
  shortTermCarryover: "a positive amount",
  netOperatingLoss: "a positive amount, after the limit of 80% of taxable income",
  charitableDistribution: "part of retirement distributions",
  earlyDistributions: "part of retirement distributions or pensions",
  socialSecurityBenefits: "SSA-1099, box 5",
  taxableSocialSecurity: "only if the benefits above are not entered",
  adjustments: "other than the deduction for self-employment tax",
  itemizedDeductions: "other than state and local taxes",
  withholding: "W-2, box 2, and 1099 forms",
  estimatedPayments: "Form 1040-ES, all four installments",
  livedApart: "yes or no; only if married filing separately",
};

function noteOf(item: ReturnItem): string {
  const note = NOTES[item];
  if (note !== undefined) return note;
  if (YES_OR_NO.includes(item)) return "yes or no";
  if (MOST_PERSONS[item] !== undefined) return "number of persons";
  return MAY_BE_NEGATIVE.includes(item) ? "a loss is negative" : "";
}

/** The rows of one kind, with the kind in the first one. */
function kindRows(title: string, items: readonly ReturnItem[]): readonly Row[] {
  return items
    .filter((item) => !NOT_LAID_OUT.includes(item))
    .flatMap((item) => (TWICE.includes(item) ? [item, item] : [item]))
    .map((item, index) => [
      index === 0 ? title : "",
      ITEM_LABELS[item][0] ?? item,
      "",
      noteOf(item),
    ]);
}

const FIRST_ITEM_ROW = 6;
const TAX_YEAR = "$C$2";
const FILING_STATUS = "$C$3";

/**
 * A sheet for the estimate of total tax: the labels of a return by kind, each with a cell for its amount and a note, and beneath them
 * total tax, total payments, balance due, the calculation and what the estimate leaves out. Blank amounts are not entered.
 *
 * @param taxYear - The tax year, such as 2025.
 * @param filingStatus - A filing status, such as single; the preparer can change it in the sheet.
 * @returns The sheet.
 */
export function estimateSheet(taxYear: number, filingStatus = "single"): NewSheet {
  const items: readonly Row[] = [
    ...ITEM_KINDS.flatMap(({ title, items: ofKind }) =>
      kindRows(title, Object.keys(ofKind) as ReturnItem[])
    ),
    ...Array.from({ length: OTHER_ROWS }, (_row, index): Row => [
      index === 0 ? "Other" : "",
      "",
      "",
      index === 0 ? "another label, or one more document: W-2 spouse, W-2 (Ana)" : "",
    ]),
  ];
  const last = FIRST_ITEM_ROW + items.length - 1;
  const range = (columns: string): string => {
    const [from = "", to = ""] = columns.split(":");
    return `$${from}$${String(FIRST_ITEM_ROW)}:$${to}$${String(last)}`;
  };
  const totals = last + 2;
  const entered = (formula: string): string => `=IF(COUNTA(${range("C:C")})=0,"",${formula})`;
  return {
    name: "Estimate",
    cells: [
      ["An estimate for Form 4868, not a return and not tax advice. Enter what is known so far."],
      ["", "Tax year", taxYear, ""],
      [
        "",
        "Filing status",
        filingStatus,
        "single (S), joint (MFJ), separate (MFS), head (HOH) or survivor (QSS)",
      ],
      [],
      ["Kind", "Item", "Amount", "Note"],
      ...items,
      [],
      [
        "Result",
        "Estimated total tax (line 4)",
        entered(`EXT.LIABILITY(${TAX_YEAR},${FILING_STATUS},${range("B:C")})`),
        "whole dollars",
      ],
      ["", "Total payments (line 5)", `=EXT.PAYMENTSTOTAL(${range("B:C")})`, ""],
      [
        "",
        "Balance due (line 6)",
        entered(`EXT.SHORTFALL(C${String(totals)},C${String(totals + 1)})`),
        "before the amount paid with the request",
      ],
      [],
      ...LEFT_OUT.map((part, index): Row => [index === 0 ? "Left out" : "", part, "", ""]),
      [],
      ["Calculation", entered(`EXT.LIABILITYLINES(${TAX_YEAR},${FILING_STATUS},${range("B:C")})`)],
    ],
    widths: [12, 44, 16, 60],
    formats: ["", "", MONEY_FORMAT, ""],
    choices: [[], [], [], []],
    headingRow: FIRST_ITEM_ROW - 1,
    isTable: false,
  };
}
