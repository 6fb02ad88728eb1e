import { childNodes, type FormulaNode, parseFormula, plainFunctionName } from "./formulaTree";

const FILE_PREFIX = "_xlpm.";

/** The names that a formula defines with LET and LAMBDA, in capitals. */
export function formulaVariables(formula: string): ReadonlySet<string> {
  const variables = new Set<string>();
  const visit = (node: FormulaNode): void => {
    const name = node.type === 9 ? plainFunctionName(node.name) : "";
    const children = childNodes(node);
    for (const [position, child] of children.entries()) {
      const isDefined = name === "LAMBDA" || (name === "LET" && position % 2 === 0);
      const isLast = position === children.length - 1;
      if (isDefined && !isLast && child.type === 12) variables.add(child.name.toUpperCase());
      visit(child);
    }
  };
  const tree = /\b(?:LET|LAMBDA)\s*\(/i.test(formula) ? parseFormula(formula) : undefined;
  if (tree !== undefined) visit(tree);
  return variables;
}

/** A variable as a file stores it; any other word does not change. */
export function storedWord(word: string, variables: ReadonlySet<string>): string {
  const isStored = word.toLowerCase().startsWith(FILE_PREFIX);
  return !isStored && variables.has(word.toUpperCase()) ? `${FILE_PREFIX}${word}` : word;
}
