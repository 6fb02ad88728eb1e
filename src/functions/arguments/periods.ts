import { once } from "../../calendar/once";
import { annualizationPeriods } from "../../calculation/estimatedTax/annualizationPeriods";
import type { PeriodAmounts } from "../../calculation/estimatedTax/periodAmounts";
import { calendarTaxYear } from "../../calculation/taxYear";
import { ZERO, type Decimal } from "../../money/dollars";
import { rulebook } from "../../rules/rulebook";
import { cellValue, isBlank, isEmptyCell } from "../cells/cellValue";
import { rowsOf } from "../cells/columns";
import { InputError } from "../cells/inputError";
import { readRows } from "../cells/readRows";
import { readArgument, type RangeKind } from "./argumentKind";
import { dollars, signedDollars } from "./dollars";
import { labelReader } from "./labels";
import { periodHeadings, requireHeadings } from "./periodHeadings";

type PeriodItem = keyof PeriodAmounts;

/** The labels of the rows, the first of each as messages and help show it. */
const PERIOD_LABELS: Readonly<Record<PeriodItem, readonly string[]>> = {
  adjustedGrossIncome: ["AGI", "adjusted gross income"],
  itemizedDeductions: ["itemized deductions", "itemized"],
  standardDeduction: ["standard deduction"],
  businessIncomeDeduction: [
    "business income deduction",
    "qualified business income deduction",
    "qbi deduction",
    "other deductions",
  ],
  otherTaxes: ["other taxes"],
  credits: ["credits", "nonrefundable credits"],
  netEarnings: [
    "net self-employment earnings",
    "net earnings from self-employment",
    "self-employment earnings",
  ],
  wages: ["wages", "social security wages"],
  tax: ["tax on the annualized income", "tax on annualized income"],
};
const itemReader = once(() => labelReader({ of: PERIOD_LABELS }));
const COLUMNS = 4;
const MAY_BE_NEGATIVE: readonly PeriodItem[] = ["adjustedGrossIncome", "netEarnings"];

function checkedRows(
  name: string,
  range: unknown,
  headings: readonly string[]
): readonly (readonly unknown[])[] {
  const rows = rowsOf(range);
  const wrong = rows.find((row) => row.length !== COLUMNS + 1);
  if (wrong)
    throw new InputError(
      name,
      `The range has ${String(wrong.length)} ${wrong.length === 1 ? "column" : "columns"}. Select a column of labels and the four columns ${headings.join(", ")}.`
    );
  if (rows.length === 1)
    throw new InputError(
      name,
      "The range has no row below its headings. Select the headings and the labeled rows."
    );
  return rows;
}

function amountsOf(place: string, item: PeriodItem, cells: readonly unknown[]): Decimal[] {
  const kind = MAY_BE_NEGATIVE.includes(item) ? signedDollars : dollars;
  return cells.map((cell, index) =>
    readArgument(kind, `${place}, column ${String(index + 2)}`, cell)
  );
}

/** What a row of zeros means is not known where Excel sends a blank cell as 0, and these rows replace what is calculated. */
const NOT_ALL_ZERO: Readonly<Partial<Record<PeriodItem, string>>> = {
  standardDeduction:
    "Remove the row to use the regular standard deduction, or enter 0.01 if there is none.",
  tax: "Remove the row to have the tax calculated, or enter 0.01 if there is none.",
};

interface PeriodRow {
  readonly item: PeriodItem;
  readonly amounts: readonly Decimal[];
}

/** The item and the amounts of a row below the headings; `undefined` for a blank row and a label without amounts. */
function periodRow({
  place,
  cells: [label, ...cells],
}: {
  readonly place: string;
  readonly cells: readonly unknown[];
}): PeriodRow | undefined {
  const text = cellValue(label);
  if (isBlank(text) || text === 0) {
    if (cells.every((cell) => isEmptyCell(cell) || cell === 0)) return undefined;
    throw new InputError(place, "The row has no label. Enter a label such as AGI.");
  }
  const item = itemReader()(place, String(text));
  if (cells.every(isEmptyCell)) return undefined;
  const amounts = amountsOf(place, item, cells);
  const instead = NOT_ALL_ZERO[item];
  if (instead !== undefined && amounts.every((amount) => amount.isZero()))
    throw new InputError(place, `All amounts of the row are 0. ${instead}`);
  return { item, amounts };
}

/** Wages through a later date are never less: amounts that fall are those of single periods. */
function requireRising(name: string, wages: readonly Decimal[] | undefined): void {
  const falls = wages?.some((amount, index) => amount.lessThan(wages[index - 1] ?? ZERO));
  if (falls)
    throw new InputError(
      name,
      "The wages fall from one period to the next. Enter amounts from the first day of the year, so that each period includes the earlier ones."
    );
}

/** Amounts of the periods of a year: headings of four periods, then labeled rows. */
export const periods: RangeKind<readonly PeriodAmounts[]> = {
  id: "period-rows",
  title: "Periods",
  description:
    "A row of headings, then rows of a label and four amounts. The columns are January–March, January–May, January–August and January–December, or the same months of a fiscal year; a heading can be the last month or last date of its period. Each amount counts from the first day of the year, so that each period includes the earlier ones. Repeated labels add up. Rows: `AGI` (required; after the deduction for self-employment tax of the period, which is line 36 of Schedule AI divided by 8, 4.8, 3 or 2), `itemized deductions`, `business income deduction`, `other taxes`, `credits`, `net self-employment earnings` (after the factor of 92.35%) and `wages` subject to Social Security tax, both of one person, `standard deduction` and `tax on the annualized income`. Enter the business income deduction, other taxes, credits and the tax as calculated on the annualized income. Deductions of 2025 through 2028 such as the senior deduction go with the business income deduction. A standard deduction that is not entered is the regular amount of the filing status. Enter 0 where there is nothing, also in the first column for a nonresident, who does not use it.",
  accepted: [
    '{"","January–March","January–May","January–August","January–December";"AGI",10000,20000,50000,120000}',
    '{"","Mar","May","Aug","Dec";"AGI",-500,0,0,90000;"wages",0,0,8000,8000}',
  ],
  notAccepted: [
    '{"","Q1","Q2","Q3","Q4";"AGI",1,2,3,4}',
    '{"","May","Mar","Aug","Dec";"AGI",1,2,3,4}',
    '{"","Mar","May","Aug","Dec";"income",1,2,3,4}',
  ],
  takes: "range",
  whenBlank: { enter: "Select the headings and the labeled rows of the four periods." },
  read: (range, name, { taxYear = calendarTaxYear(2025) }) => {
    const ends = annualizationPeriods(taxYear, "resident", rulebook);
    const headings = periodHeadings(taxYear, ends);
    const [first = [], ...rows] = checkedRows(name, range, headings);
    requireHeadings(name, first.slice(1), taxYear, ends);
    const found: Partial<Record<PeriodItem, readonly Decimal[]>> = {};
    const placed = rows.map((cells, index) => ({
      place: `${name} row ${String(index + 2)}`,
      cells,
    }));
    for (const row of readRows(name, placed, periodRow)) {
      if (row === undefined) continue;
      const { item, amounts } = row;
      found[item] = amounts.map((amount, column) => amount.plus(found[item]?.[column] ?? ZERO));
    }
    if (!found.adjustedGrossIncome)
      throw new InputError(name, "The range has no row for AGI. Add that row.");
    requireRising(name, found.wages);
    return ends.map((_, index) => {
      const amount = (item: PeriodItem): Decimal => found[item]?.[index] ?? ZERO;
      return {
        adjustedGrossIncome: amount("adjustedGrossIncome"),
        itemizedDeductions: amount("itemizedDeductions"),
        netEarnings: amount("netEarnings"),
        wages: amount("wages"),
        businessIncomeDeduction: amount("businessIncomeDeduction"),
        otherTaxes: amount("otherTaxes"),
        credits: amount("credits"),
        standardDeduction: found.standardDeduction?.[index],
        tax: found.tax?.[index],
      };
    });
  },
};

/** The same where a blank argument means that installments are not annualized. */
export const optionalPeriods: RangeKind<readonly PeriodAmounts[] | undefined> = {
  ...periods,
  whenBlank: { means: undefined },
};
