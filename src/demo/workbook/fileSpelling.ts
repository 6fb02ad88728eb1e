import { formulaVariables, storedWord } from "./formulaVariables";
import type { OwnFunctionNames } from "./ownFunctionNames";

/** Built-in functions that files store with the prefix `_xlfn.`, and those with `_xlfn._xlws.`. */
const NEWER = new Set(
  `ACOT ACOTH AGGREGATE ARABIC BASE BITAND BITLSHIFT BITOR BITRSHIFT BITXOR BYCOL BYROW CEILING.MATH
  CHOOSECOLS CHOOSEROWS COMBINA CONCAT COT COTH CSC CSCH DAYS DECIMAL DROP EXPAND FILTERXML FLOOR.MATH
  FORMULATEXT GAMMA GAUSS HSTACK IFNA IFS ISFORMULA ISOMITTED ISOWEEKNUM LAMBDA LET MAKEARRAY MAP
  MAXIFS MINIFS MUNIT NETWORKDAYS.INTL NUMBERVALUE PDURATION PERMUTATIONA PHI RANDARRAY REDUCE RRI SCAN
  SEC SECH SEQUENCE SHEET SHEETS SORTBY SWITCH TAKE TEXTAFTER TEXTBEFORE TEXTJOIN TEXTSPLIT TOCOL TOROW
  UNICHAR UNICODE UNIQUE VALUETOTEXT VSTACK WORKDAY.INTL WRAPCOLS WRAPROWS XLOOKUP XMATCH XOR`.split(
    /\s+/
  )
);
const WORKSHEET_SERVICE = new Set(["FILTER", "SORT"]);

function storedCall(word: string, names: OwnFunctionNames): string {
  const own = names.find(word);
  if (own !== undefined) return names.fileName(own.name);
  const upper = word.toUpperCase();
  if (WORKSHEET_SERVICE.has(upper)) return `_xlfn._xlws.${upper}`;
  return NEWER.has(upper) ? `_xlfn.${upper}` : word;
}

/**
 * A typed formula as a file stores it, so that Excel recognizes every name in it. A formula that is already in this spelling does not
 * change.
 */
export function fileSpelling(formula: string, names: OwnFunctionNames): string {
  const pieces = names.pieces(formula);
  const variables = formulaVariables(pieces);
  return pieces
    .map(({ kind, text }) => {
      if (kind === "word") return storedWord(text, variables);
      if (kind !== "call") return text;
      return variables.has(text.toUpperCase())
        ? storedWord(text, variables)
        : storedCall(text, names);
    })
    .join("");
}
