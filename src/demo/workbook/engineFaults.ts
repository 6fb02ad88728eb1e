import { firstOf, type FormulaNode, plainFunctionName } from "./formulaTree";

/*
 * All that the calculating library, in version 10.2, calculates otherwise than Excel, as far as it is known. What is listed here is
 * corrected in `engineFormula.ts` or named in the report; `nativeCorrections.ts` has own versions of whole functions.
 * test/demo/engineFaults.test.ts has an example of each. A new version of the library may make most of it unnecessary.
 */

const words = (text: string): ReadonlySet<string> => new Set(text.split(/\s+/));

/** Corrected: these count text in a single cell, where Excel counts text only if it is an argument itself. */
export const COUNTS_TEXT_IN_CELLS = words(
  `AND AVERAGE COUNT GEOMEAN HARMEAN MAX MEDIAN MIN OR PRODUCT STDEV STDEV.P STDEV.S STDEVP SUM
  SUMSQ UNIQUE VAR VAR.P VAR.S VARP XOR`
);

/** Corrected: the position of an argument that asks for a search by halves, which finds other cells than in Excel. */
export const SEARCH_BY_HALVES: Readonly<Record<string, number>> = { XLOOKUP: 5, XMATCH: 3 };

/** Corrected: these compare numbers to the last bit; Excel compares fifteen digits. */
export const COMPARISONS = new Set(["=", "<>", "<", ">", "<=", ">="]);

/** Corrected: these do not read a text such as "$1,000" as a number. */
export const ARITHMETIC = new Set(["+", "-", "*", "/", "^"]);

/** Functions that calculate with each cell of a block. In other formulas of older workbooks, Excel reads the cell of the same row or column. */
export const READS_BLOCKS = words(
  `AGGREGATE CHISQ.TEST CHITEST CORREL COVAR COVARIANCE.P COVARIANCE.S F.TEST FORECAST FREQUENCY FTEST
  GROWTH INTERCEPT IRR LINEST LOGEST LOOKUP MDETERM MINVERSE MIRR MMULT MODE PEARSON PROB RSQ SLOPE
  STEYX SUMPRODUCT SUMX2MY2 SUMX2PY2 SUMXMY2 T.TEST TRANSPOSE TREND TTEST XIRR XNPV Z.TEST ZTEST`
);

/** Not calculated: of several cells these read only the first, where Excel returns a result for every cell. */
export const ONE_VALUE = words(
  `ABS ACOSH ASIN ATAN2 CEILING CEILING.MATH CHAR CLEAN CODE COMBIN CONCATENATE COS COSH DATE DATEDIF DATEVALUE DAY DAYS DAYS360
  DEGREES DOLLAR EDATE EOMONTH ERROR.TYPE EVEN EXACT EXP FACT FIND FIXED FLOOR FLOOR.MATH HOUR
  HYPERLINK IFS INT ISBLANK ISERR ISERROR ISEVEN ISLOGICAL ISNA ISNONTEXT ISNUMBER ISODD ISOWEEKNUM
  ISTEXT LEFT LEN LN LOG LOG10 LOWER MID MINUTE MOD MONTH MROUND NOT NUMBERVALUE ODD POWER PROPER
  QUOTIENT RADIANS REPLACE REPT RIGHT ROUND ROUNDDOWN ROUNDUP SEARCH SECOND SIGN SIN SQRT SUBSTITUTE TANH
  SWITCH TAN TEXT TEXTAFTER TEXTBEFORE TIME TIMEVALUE TRIM TRUNC UNICHAR UNICODE UPPER VALUE WEEKDAY
  WEEKNUM YEAR YEARFRAC`
);
const first = (position: number): boolean => position === 0;
const second = (position: number): boolean => position === 1;
const conditions = (position: number): boolean => position > 0 && position % 2 === 0;
/** The same for some of their arguments. */
export const ONE_VALUE_AT: Readonly<Record<string, (position: number) => boolean>> = {
  AVERAGEIF: second,
  AVERAGEIFS: conditions,
  CHOOSE: first,
  COUNTIF: second,
  COUNTIFS: (position) => position % 2 === 1,
  HLOOKUP: (position) => position === 0 || position === 2,
  INDEX: (position) => position > 0,
  MATCH: first,
  MAXIFS: conditions,
  MINIFS: conditions,
  NETWORKDAYS: (position) => position < 2,
  SUMIF: second,
  SUMIFS: conditions,
  VLOOKUP: (position) => position === 0 || position === 2,
  WORKDAY: (position) => position < 2,
  XLOOKUP: first,
  XMATCH: first,
};

/** Whether an argument of a function is one value. */
export function takesOneValue(name: string, position: number): boolean {
  return ONE_VALUE.has(name) || ONE_VALUE_AT[name]?.(position) === true;
}

/** Named: results that differ from Excel's in cases that the formula does not show. */
export const MAY_DIFFER: Readonly<Record<string, string>> = {
  AGGREGATE: "AGGREGATE may count results of other such functions",
  DCOUNT: "DCOUNT may read its conditions otherwise",
  DEVSQ: "DEVSQ may count text otherwise",
  FREQUENCY: "FREQUENCY may fill other cells",
  HLOOKUP: "HLOOKUP may find another column where the first row is not sorted",
  LOOKUP: "LOOKUP may find another cell where the cells are not sorted",
  MODE: "MODE may return another of several values",
  SUMX2PY2: "SUMX2PY2 may count text otherwise",
};

/** Named: results with seven correct digits. */
export const SEVEN_DIGITS = words(
  "ERF ERF.PRECISE ERFC ERFC.PRECISE F.DIST GAUSS LOGNORM.DIST LOGNORMDIST NORM.DIST NORM.S.DIST NORMDIST NORMSDIST"
);

/** Named: these count by conditions, and do not find a number that a cell has as text. */
export const BY_CONDITION = words(
  "AVERAGEIF AVERAGEIFS COUNTIF COUNTIFS MAXIFS MINIFS SUMIF SUMIFS"
);

function ownReason(node: FormulaNode): string | undefined {
  if (node.type === 7 && (node.op === ":" || node.op === " "))
    return "it combines blocks of cells, which the calculation may read otherwise";
  if (node.type !== 9) return undefined;
  const name = plainFunctionName(node.name);
  const [start, format] = node.args;
  if (name === "SUBTOTAL" && node.args.length > 2)
    return "SUBTOTAL may count results of other subtotals";
  if (name === "OFFSET" && start?.type !== 5) return "OFFSET may return other cells of a block";
  if (name === "TEXT" && format !== undefined && format.type !== 2)
    return "TEXT receives a format from a cell, which may have marks that are shown otherwise";
  if (SEVEN_DIGITS.has(name)) return `${name} has seven correct digits`;
  return Object.hasOwn(MAY_DIFFER, name) ? MAY_DIFFER[name] : undefined;
}

/** Why the result of a formula may differ from Excel's; undefined if nothing is known that makes it differ. */
export function reasonToDiffer(tree: FormulaNode): string | undefined {
  return firstOf(tree, ownReason);
}
