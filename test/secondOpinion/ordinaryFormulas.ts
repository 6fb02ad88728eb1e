import { allForYear } from "@18f/us-federal-holidays";
import { dayNumber, dayWritten } from "./civilDays";
import { LEAST } from "./monthByMonth";
import { percentOn } from "./quarterlyRates";
import { serialOfDay } from "./typedFormula";
import type { Sheets, Written } from "./workbookRows";

/**
 * A late return in ordinary worksheet formulas, as a preparer without the add-in would write them. Separate sheets have tables of
 * holidays, announced dates, rates and minimum penalties. Each return has one row with WORKDAY, EDATE, SUMPRODUCT, MIN, MAX and
 * differences of dates. The holidays are those of "@18f/us-federal-holidays", with a formula each for Emancipation Day and Patriots' Day.
 */
const YEARS = Array.from({ length: 18 }, (_, index) => 2010 + index);
const FIRST_RATE_YEAR = 2010;
const LAST_RATE_YEAR = 2026;

const formula = (text: string): { readonly formula: string } => ({ formula: text });
const column = (cells: readonly Written[]): readonly (readonly Written[])[] =>
  cells.map((cell) => [cell]);

const federal = YEARS.flatMap((year) =>
  allForYear(year).map(({ dateString }) => serialOfDay(dayWritten(dateString)))
);
const emancipation = YEARS.map((year) => {
  const april16 = `DATE(${String(year)},4,16)`;
  return formula(`${april16}+CHOOSE(WEEKDAY(${april16}),1,0,0,0,0,0,-1)`);
});
/** Patriots' Day, from 2016 (Rev. Rul. 2015-13): the first Monday of April plus two weeks. */
const patriots = YEARS.filter((year) => year >= 2016).map((year) => {
  const april1 = `DATE(${String(year)},4,1)`;
  return formula(`${april1}+MOD(9-WEEKDAY(${april1}),7)+14`);
});
const district = [...federal, ...emancipation];
const newEngland = [...district, ...patriots];

/** Deadline before, deadline after, and the date from which delinquency then counts: IR-2018-100, Notice 2020-23, Notice 2021-21. */
const announced = [
  ["2018-04-17", "2018-04-18", "2018-04-15"],
  ["2020-04-15", "2020-07-15", "2020-07-15"],
  ["2020-06-15", "2020-07-15", "2020-07-15"],
  ["2021-04-15", "2021-05-17", "2021-05-17"],
].map((days) => days.map((text) => serialOfDay(dayWritten(text))));

const quarters = Array.from({ length: (LAST_RATE_YEAR - FIRST_RATE_YEAR + 1) * 4 }, (_, index) => {
  const year = FIRST_RATE_YEAR + Math.floor(index / 4);
  const month = (index % 4) * 3 + 1;
  const before = dayNumber(year, month, 1) - 1;
  const end = dayNumber(month === 10 ? year + 1 : year, month === 10 ? 1 : month + 3, 1) - 1;
  const row = String(index + 1);
  const divisor = formula(`IF(MONTH(DATE(YEAR(B${row}),2,29))=2,366,365)`);
  return [
    serialOfDay(before),
    serialOfDay(end),
    percentOn(end) / 100,
    divisor,
    formula(`LN(1+C${row}/D${row})`),
  ];
});
const least = Object.entries(LEAST).map(([year, amount]) => [Number(year), amount]);

const rows = (name: string, columns: string, count: number): string => {
  const [first = "", last = first] = columns.split(":");
  return `${name}!$${first}$1:$${last}$${String(count)}`;
};
const DISTRICT = rows("District", "A", district.length);
const NEW_ENGLAND = rows("NewEngland", "A", newEngland.length);
const ANNOUNCED = rows("Announced", "A:C", announced.length);
const STARTS = rows("Rates", "A", quarters.length);
const ENDS = rows("Rates", "B", quarters.length);
const LOGARITHMS = rows("Rates", "E", quarters.length);
const LEASTS = rows("Least", "A:B", least.length);

/** The tables on the other sheets. */
export const tables: Sheets = {
  District: column(district),
  NewEngland: column(newEngland),
  Announced: announced,
  Rates: quarters,
  Least: least,
};

/** The given cells of a row, before its formulas: serial numbers of dates, and dollars. */
export interface OrdinaryReturn {
  readonly taxYear: number;
  readonly totalTax: number;
  readonly paidOnTime: number;
  readonly paidOn: number;
  readonly filedOn: number;
  readonly extended: "yes" | "";
  readonly state: string;
  readonly filerType: string;
}

const workday = (named: string): string =>
  `IF(OR(G#="ME",G#="MA"),WORKDAY(${named}-1,1,${NEW_ENGLAND}),WORKDAY(${named}-1,1,${DISTRICT}))`;
/** The deadline and the date from which delinquency counts, after a look-up of announced dates. */
const moved = (last: string, otherwise: string, place: 2 | 3): string =>
  `IFERROR(VLOOKUP(${last},${ANNOUNCED},${String(place)},FALSE),${otherwise})`;
/** Months and parts of a month from a 15th or 17th to a date. */
const months = (from: string, to: string): string =>
  `(YEAR(${to})-YEAR(${from}))*12+MONTH(${to})-MONTH(${from})+IF(DAY(${to})>DAY(${from}),1,0)`;
/** Daily compounding as a sum of logarithms over the quarters. The engine evaluates this as an array, but not a product of powers. */
const interest = (amount: string, from: string, to: string): string => {
  const begins = `IF(${STARTS}>${from},${STARTS},${from})`;
  const ends = `IF(${ENDS}<${to},${ENDS},${to})`;
  const days = `IF(${ends}>${begins},${ends}-${begins},0)`;
  return `ROUND(${amount}*(EXP(SUMPRODUCT(${days},${LOGARITHMS}))-1),2)`;
};

/** A percent of an amount, in whole cents. In dollars, the engine rounds half a cent down where its binary number is smaller. */
const inCents = (amount: string, share: string): string =>
  `ROUND(ROUND(${amount}*100,0)*${share},0)/100`;

/** The formulas by their result, in the columns from I on. `#` is the row, and {names} are earlier columns. */
const FORMULAS = {
  filingNamed: 'DATE(A#+1,IF(H#="",4,6),15)',
  payingNamed: 'DATE(A#+1,IF(H#="nonresident",6,4),15)',
  extendedNamed: "EDATE({payingNamed},6)",
  filingWorkday: workday("{filingNamed}"),
  payingWorkday: workday("{payingNamed}"),
  filingLast: moved("{filingWorkday}", "{filingWorkday}", 2),
  filingFrom: moved("{filingWorkday}", "{filingNamed}", 3),
  payingLast: moved("{payingWorkday}", "{payingWorkday}", 2),
  payingFrom: moved("{payingWorkday}", "{payingNamed}", 3),
  extendedLast: workday("{extendedNamed}"),
  dueLast: 'IF(F#="yes",{extendedLast},{filingLast})',
  dueFrom: 'IF(F#="yes",{extendedNamed},{filingFrom})',
  owed: "MAX(0,ROUND(B#-C#,2))",
  netTax: "IF(D#<={filingLast},0,{owed})",
  late: "IF(D#<={payingLast},0,{owed})",
  presumed: 'IF(AND(F#="yes",E#<={extendedLast},D#<=E#,ROUND({netTax}*10-B#,2)<=0),1,0)',
  payMonths: `IF(OR({netTax}=0,{presumed}=1),0,MIN(50,${months("{filingFrom}", "D#")}))`,
  fileMonths: `IF(OR({netTax}=0,E#<={dueLast}),0,MIN(5,${months("{dueFrom}", "E#")}))`,
  firstMonth: months("{filingFrom}", "({dueFrom}+1)"),
  bothMonths: "MAX(0,MIN({firstMonth}+{fileMonths}-1,{payMonths})-{firstMonth}+1)",
  minimum: `IF(AND({fileMonths}>0,E#-{dueFrom}>60),MIN({netTax},VLOOKUP(YEAR({filingFrom}),${LEASTS},2,TRUE)),0)`,
  lateFileAlone: `MAX(${inCents("{netTax}", "{fileMonths}/20")},{minimum})`,
  lateFile: `MAX(${inCents("{netTax}", "({fileMonths}*10-{bothMonths})/200")},{minimum})`,
  latePay: inCents("{netTax}", "{payMonths}/200"),
  interestOnTax: `IF({late}=0,0,${interest("{late}", "{payingFrom}", "D#")})`,
  interestOnAddition: `IF({lateFile}=0,0,${interest("{lateFile}", "{dueFrom}", "MAX(D#,E#)")})`,
  charges: "{lateFile}+{latePay}+{interestOnTax}+{interestOnAddition}",
} as const;

/** The results of the formulas. */
export type Figure = keyof typeof FORMULAS;

const figures = Object.keys(FORMULAS) as Figure[];
const INPUTS = 8;

function letters(index: number): string {
  const rest = String.fromCharCode(65 + (index % 26));
  return index < 26 ? rest : `${letters(Math.floor(index / 26) - 1)}${rest}`;
}

/** The formula for a result in a row of the sheet. */
export function formulaOf(figure: Figure, row: number): string {
  return FORMULAS[figure]
    .replace(/\{(\w+)\}/g, (_, name: Figure) => `${letters(INPUTS + figures.indexOf(name))}#`)
    .replaceAll("#", String(row));
}

/** A row of the sheet: the given cells, then the formulas. */
export function rowOf(given: OrdinaryReturn, row: number): readonly Written[] {
  const { taxYear, totalTax, paidOnTime, paidOn, filedOn, extended, state, filerType } = given;
  return [
    taxYear,
    totalTax,
    paidOnTime,
    paidOn,
    filedOn,
    extended,
    state,
    filerType,
    ...figures.map((figure) => formula(formulaOf(figure, row))),
  ];
}

/** A result of a row as calculated. */
export const figureIn = (cells: readonly unknown[], figure: Figure): unknown =>
  cells[INPUTS + figures.indexOf(figure)];
