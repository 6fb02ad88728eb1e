import { childNodes, type FormulaNode, plainFunctionName } from "./formulaTree";

/**
 * Built-in functions for which the calculating library reads only the first cell, where Excel returns a result for every cell. Measured.
 * The positions are those of arguments that take one value.
 */
const EVERY_POSITION = new Set(
  `ABS ACOSH ASIN ATAN2 CEILING CEILING.MATH CHAR CLEAN CODE COMBIN CONCATENATE COS COSH DATE DATEDIF DATEVALUE DAY DAYS DAYS360
  DEGREES DOLLAR EDATE EOMONTH ERROR.TYPE EVEN EXACT EXP FACT FIND FIXED FLOOR FLOOR.MATH HOUR
  HYPERLINK IFS INT ISBLANK ISERR ISERROR ISEVEN ISLOGICAL ISNA ISNONTEXT ISNUMBER ISODD ISOWEEKNUM
  ISTEXT LEFT LEN LN LOG LOG10 LOWER MID MINUTE MOD MONTH MROUND NOT NUMBERVALUE ODD POWER PROPER
  QUOTIENT RADIANS REPLACE REPT RIGHT ROUND ROUNDDOWN ROUNDUP SEARCH SECOND SIGN SIN SQRT SUBSTITUTE TANH
  SWITCH TAN TEXT TEXTAFTER TEXTBEFORE TIME TIMEVALUE TRIM TRUNC UNICHAR UNICODE UPPER VALUE WEEKDAY
  WEEKNUM YEAR YEARFRAC`.split(/\s+/)
);
const SOME_POSITIONS: Readonly<Record<string, (position: number) => boolean>> = {
  CHOOSE: (position) => position === 0,
  COUNTIF: (position) => position === 1,
  COUNTIFS: (position) => position % 2 === 1,
  AVERAGEIF: (position) => position === 1,
  AVERAGEIFS: (position) => position > 0 && position % 2 === 0,
  INDEX: (position) => position > 0,
  MATCH: (position) => position === 0,
  MAXIFS: (position) => position > 0 && position % 2 === 0,
  MINIFS: (position) => position > 0 && position % 2 === 0,
  NETWORKDAYS: (position) => position < 2,
  SUMIF: (position) => position === 1,
  SUMIFS: (position) => position > 0 && position % 2 === 0,
  VLOOKUP: (position) => position === 0 || position === 2,
  HLOOKUP: (position) => position === 0 || position === 2,
  WORKDAY: (position) => position < 2,
  XLOOKUP: (position) => position === 0,
  XMATCH: (position) => position === 0,
};
const GIVES_SEVERAL = new Set(
  `BYCOL BYROW CHOOSECOLS CHOOSEROWS DROP EXPAND FILTER HSTACK MAKEARRAY MAP MUNIT RANDARRAY SCAN
  SEQUENCE SORT SORTBY TAKE TEXTSPLIT TOCOL TOROW TRANSPOSE UNIQUE VSTACK WRAPCOLS WRAPROWS`.split(
    /\s+/
  )
);
const PASSES_SEVERAL_ON = new Set(["IF", "IFERROR", "IFNA"]);

/** What the workbook tells about whether a part of a formula is one cell or several. */
export interface SeveralCellsWorld {
  isOwnFunction(name: string): boolean;
  /** Whether a name refers to more than one cell. */
  nameIsSeveral(name: string): boolean;
}

function takesOneValue(name: string, position: number): boolean {
  return EVERY_POSITION.has(name) || SOME_POSITIONS[name]?.(position) === true;
}

function isSeveral(node: FormulaNode, world: SeveralCellsWorld): boolean {
  switch (node.type) {
    case 6:
      return node.start.row !== node.end.row || node.start.col !== node.end.col;
    case 10:
      return node.rows.length > 1 || (node.rows[0]?.length ?? 0) > 1;
    case 13:
    case 14:
      return true;
    case 15:
      return !node.specials.includes("#This Row");
    case 12:
      return world.nameIsSeveral(node.name);
    case 7:
    case 8:
    case 11:
      return childNodes(node).some((child) => isSeveral(child, world));
    case 9: {
      const name = plainFunctionName(node.name);
      if (GIVES_SEVERAL.has(name)) return true;
      const passesOn = PASSES_SEVERAL_ON.has(name) || world.isOwnFunction(name);
      return passesOn && node.args.some((argument) => isSeveral(argument, world));
    }
    default:
      return false;
  }
}

/**
 * The first built-in function of a formula that receives several cells, of which the library would read only the first; undefined when
 * there is none.
 */
export function functionReadingOnlyFirstCell(
  node: FormulaNode,
  world: SeveralCellsWorld
): string | undefined {
  if (node.type === 9) {
    const name = plainFunctionName(node.name);
    const misread = node.args.some(
      (argument, position) => takesOneValue(name, position) && isSeveral(argument, world)
    );
    if (misread) return name;
  }
  for (const child of childNodes(node)) {
    const found = functionReadingOnlyFirstCell(child, world);
    if (found !== undefined) return found;
  }
  return undefined;
}
