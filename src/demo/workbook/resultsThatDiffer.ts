import { cellAddress } from "../../host/cellAddress";
import { isErrorCell } from "../../host/cellValues";
import { ARITHMETIC, BY_CONDITION } from "./engineFaults";
import type { AnalysedFormula } from "./formulaAnalysis";
import { firstOf } from "./formulaTree";
import { numberOfText } from "./nativeArguments";
import type { UncalculatedFormula } from "./recalculationReport";
import type { Area, CellPosition } from "./referenceWorld";
import type { SheetStore, StoredFormula } from "./sheetStore";

/** A sum or difference smaller than this has no digit of the numbers left. */
const NO_DIGIT_LEFT = 1e-9;

/** The cells of a workbook that have a number as text, such as "12" or "$1,000". */
function numbersAsText(sheets: readonly SheetStore[]): CellPosition[] {
  const found: CellPosition[] = [];
  for (const { name: sheet, rows } of sheets)
    for (const [row, cells] of rows)
      for (const [column, { content }] of cells) {
        if (typeof content !== "string" || !/^[-+($.\d]/.test(content.trim())) continue;
        try {
          numberOfText(content);
          found.push({ sheet, row, column });
        } catch {
          // It is another text.
        }
      }
  return found;
}

const isIn = ({ sheet, row, column }: CellPosition, area: Area): boolean =>
  sheet === area.sheet &&
  row >= area.top &&
  row <= area.bottom &&
  column >= area.left &&
  column <= area.right;

/**
 * The formulas whose results may differ from Excel's, with the reason.
 *
 * @param calculated - The formulas that were calculated.
 * @param analysed - What is known of every formula.
 * @param sheets - The sheets with their results.
 * @param doubtful - Formulas in which a number is nearly whole or 0.
 */
export function resultsThatDiffer(
  calculated: readonly StoredFormula[],
  analysed: readonly AnalysedFormula[],
  sheets: readonly SheetStore[],
  doubtful: ReadonlySet<number>
): UncalculatedFormula[] {
  const stores = new Map(sheets.map((store) => [store.name, store]));
  let texts: CellPosition[] | undefined;
  const reasonOf = ({ site, sheet, row, column }: StoredFormula): string | undefined => {
    const { mayDiffer, tree, references } = analysed[site] ?? {};
    if (mayDiffer !== undefined || tree === undefined) return mayDiffer;
    if (doubtful.has(site))
      return "a number in it is so nearly whole or 0 that Excel may read it otherwise";
    const result = stores.get(sheet)?.find(row, column)?.content;
    if (typeof result === "number" && result !== 0 && Math.abs(result) < NO_DIGIT_LEFT)
      if (tree.type === 7 && (tree.op === "+" || tree.op === "-"))
        return "it is nearly 0, where Excel may show 0";
    const isCounted = [...(references?.functions ?? [])].some((name) => BY_CONDITION.has(name));
    const fails = isErrorCell(result) && result.error === "#VALUE!";
    const calculates = (): true | undefined =>
      firstOf(tree, (node) => (node.type === 7 && ARITHMETIC.has(node.op) ? true : undefined));
    if (!isCounted && !(fails && calculates() === true)) return undefined;
    texts ??= numbersAsText(sheets);
    const text = texts.find((cell) => references?.areas.some((area) => isIn(cell, area)));
    if (text === undefined) return undefined;
    return `${text.sheet}!${cellAddress(text.row, text.column)} has a number as text, which Excel may read as a number`;
  };
  return calculated.flatMap((formula) => {
    const { sheet, row, column, text } = formula;
    const reason = reasonOf(formula);
    return reason === undefined ? [] : [{ sheet, row, column, text, reason }];
  });
}
