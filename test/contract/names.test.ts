import { describe, expect, it } from "vitest";
import { metadata } from "./builtAddIn";

/**
 * One-word functions and commands of the Excel 4.0 macro language. A defined name or function must not have such a name.
 *
 * Source: Microsoft, Excel 4.0 Macro Functions Reference, contents.
 */
const MACRO_WORDS =
  `ABSREF ACTIVATE ALERT ALIGNMENT ARGUMENT BEEP BORDER BREAK CALCULATION CALL CALLER CLEAR CLOSE COMBINATION
  CONSOLIDATE COPY CREATE CUT DEMOTE DEREF DIRECTORY DOCUMENTS DUPLICATE ECHO EDIT ELSE ERROR EVALUATE EXEC EXECUTE FCLOSE FILES
  FONT FOPEN FOR FORMULA FPOS FREAD FREADLN FSIZE FULL FUNCTION FWRITE FWRITELN GALLERY GOTO GRIDLINES GROUP HALT HELP HIDE HLINE
  HPAGE HSCROLL INITIATE INPUT INSERT JUSTIFY LEGEND LINKS MESSAGE MOVE NAMES NEW NEXT NOTE OPEN OUTLINE OVERLAY PARSE PASTE
  PATTERNS PAUSE PLACEMENT POKE PRECISION PREFERRED PRINT PROMOTE QUIT REFTEXT REGISTER RELREF REPORT REQUEST RESTART RESULT RESUME
  RETURN RUN SAVE SCALE SCENARIO SELECT SELECTION SERIES SIZE SORT SPELLING SPLIT STEP STYLE TABLE TERMINATE TEXTREF UNDO UNGROUP
  UNHIDE UNREGISTER VLINE VOLATILE VPAGE VSCROLL WAIT WHILE WINDOW WINDOWS WORKBOOK WORKGROUP WORKSPACE ZOOM`.split(
    /\s+/
  );

/**
 * Built-in functions whose names come from the subjects of this add-in: dates, rates, amounts and look-ups.
 *
 * Source: Microsoft, Excel functions (alphabetical).
 */
const BUILT_IN =
  `ACCRINT ACCRINTM ADDRESS AMORDEGRC AMORLINC AND AREAS AVERAGE CELL CHOOSE COLUMN COLUMNS CONVERT COUNT COUPDAYBS
  COUPDAYS COUPDAYSNC COUPNCD COUPNUM COUPPCD CUMIPMT CUMPRINC DATE DATEDIF DATEVALUE DAY DAYS DB DDB DISC DOLLAR DOLLARDE DOLLARFR
  DROP DURATION EDATE EFFECT EOMONTH EVEN EXACT EXPAND FILTER FIND FIXED FLOOR FORECAST FV FVSCHEDULE GROWTH HOUR IF IFERROR IFNA
  IFS INDEX INDIRECT INFO INT INTRATE IPMT IRR ISBLANK ISPMT LAMBDA LEFT LET LINEST LOOKUP MAP MATCH MAX MDURATION MID MIN MINUTE
  MIRR MOD MONTH NA NETWORKDAYS NOMINAL NOT NOW NPER NPV ODD OFFSET OR PDURATION PERCENTILE PMT PPMT PRICE PRICEDISC PRICEMAT
  PROB PROPER PV QUARTILE RANDARRAY RANK RATE RECEIVED REDUCE REPLACE REPT RIGHT ROUND ROUNDUP ROW ROWS RRI SCAN SEARCH SECOND
  SEQUENCE SHEET SHEETS SIGN SLN SMALL SORTBY SUM SUMIF SWITCH SYD TAKE TBILLEQ TBILLPRICE TBILLYIELD TEXT TIME TIMEVALUE TODAY
  TREND TRIM TRUNC TYPE UNIQUE VALUE VDB VLOOKUP VSTACK WEEKDAY WEEKNUM WORKDAY WRAPROWS XIRR XLOOKUP XMATCH XNPV XOR YEAR YEARFRAC
  YIELD YIELDDISC YIELDMAT`.split(/\s+/);

const LAST_COLUMN = 16_384;
const LAST_ROW = 1_048_576;

/** Whether a sheet would read a word as a cell: `A1` to `XFD1048576`, or `R1C1`. */
function namesCell(word: string): boolean {
  if (/^(R\d*C?\d*|C\d*)$/i.test(word)) return true;
  const [, letters, digits] = /^([A-Z]{1,3})(\d{1,7})$/i.exec(word) ?? [];
  if (letters === undefined || digits === undefined) return false;
  const column = Array.from(letters.toUpperCase()).reduce(
    (sum, letter) => sum * 26 + letter.charCodeAt(0) - 64,
    0
  );
  return column <= LAST_COLUMN && Number(digits) >= 1 && Number(digits) <= LAST_ROW;
}

const ids = metadata.functions.map(({ id }) => id);

describe("the name of a function", () => {
  it.each(ids)("is not a cell, a macro word or a built-in function: %s", (id) => {
    expect(namesCell(id)).toBe(false);
    expect(MACRO_WORDS).not.toContain(id);
    expect(BUILT_IN).not.toContain(id);
  });

  // A workbook file writes EXT.NAME as _xldudf_EXT_NAME: with a dot or underscore inside, two names could become one.
  it.each(ids)("has no dot and no underscore: %s", (id) => {
    expect(id).not.toMatch(/[._]/);
  });

  it.each([
    ["A1", true],
    ["XFD1048576", true],
    ["TAX2025", true],
    ["R1C1", true],
    ["RC", true],
    ["XFE1", false],
    ["A1048577", false],
    ["DUE", false],
    ["DUES2025", false],
  ])("%s is read as a cell: %j", (word, cell) => {
    expect(namesCell(word)).toBe(cell);
  });
});
