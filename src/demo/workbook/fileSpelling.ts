import { joined } from "../../host/formulaPieces";
import { formulaVariables, storedWord } from "./formulaVariables";
import type { OwnFunctionNames } from "./ownFunctionNames";

/** Built-in functions that files store with the prefix `_xlfn.`, and those with `_xlfn._xlws.`. */
const NEWER = new Set(
  `ACOT ACOTH AGGREGATE ARABIC BASE BETA.DIST BETA.INV BINOM.DIST BINOM.DIST.RANGE BINOM.INV
  BITAND BITLSHIFT BITOR BITRSHIFT BITXOR BYCOL BYROW CEILING.MATH CEILING.PRECISE CHISQ.DIST
  CHISQ.DIST.RT CHISQ.INV CHISQ.INV.RT CHISQ.TEST CHOOSECOLS CHOOSEROWS COMBINA CONCAT
  CONFIDENCE.NORM CONFIDENCE.T COT COTH COVARIANCE.P COVARIANCE.S CSC CSCH DAYS DECIMAL DROP
  ERF.PRECISE ERFC.PRECISE EXPAND EXPON.DIST F.DIST F.DIST.RT F.INV F.INV.RT F.TEST FILTERXML
  FLOOR.MATH FLOOR.PRECISE FORECAST.ETS FORECAST.ETS.CONFINT FORECAST.ETS.SEASONALITY
  FORECAST.ETS.STAT FORECAST.LINEAR FORMULATEXT GAMMA GAMMA.DIST GAMMA.INV GAMMALN.PRECISE GAUSS
  HSTACK HYPGEOM.DIST IFNA IFS IMCOSH IMCOT IMCSC IMCSCH IMSEC IMSECH IMSINH IMTAN ISFORMULA
  ISOMITTED ISOWEEKNUM LAMBDA LET LOGNORM.DIST LOGNORM.INV MAKEARRAY MAP MAXIFS MINIFS MODE.MULT
  MODE.SNGL MUNIT NEGBINOM.DIST NORM.DIST NORM.INV NORM.S.DIST NORM.S.INV NUMBERVALUE PDURATION
  PERCENTILE.EXC PERCENTILE.INC PERCENTRANK.EXC PERCENTRANK.INC PERMUTATIONA PHI POISSON.DIST
  QUARTILE.EXC QUARTILE.INC RANDARRAY RANK.AVG RANK.EQ REDUCE RRI SCAN SEC SECH SEQUENCE SHEET
  SHEETS SKEW.P SORTBY STDEV.P STDEV.S SWITCH T.DIST T.DIST.2T T.DIST.RT T.INV T.INV.2T T.TEST
  TAKE TEXTAFTER TEXTBEFORE TEXTJOIN TEXTSPLIT TOCOL TOROW UNICHAR UNICODE UNIQUE VALUETOTEXT
  VAR.P VAR.S VSTACK WEBSERVICE WEIBULL.DIST WRAPCOLS WRAPROWS XLOOKUP XMATCH XOR Z.TEST`.split(
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
  const variables = formulaVariables(joined(pieces));
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
