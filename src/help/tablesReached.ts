import { readFileSync } from "node:fs";
import path from "node:path";
import ts from "typescript";

interface Module {
  /** Top-level functions, classes and constants by name. */
  readonly declared: ReadonlyMap<string, ts.Node>;
  /** Where an imported name comes from, and what it is called there. */
  readonly imported: ReadonlyMap<string, { readonly file: string; readonly name: string }>;
}

/** What the calculation calls the rulebook that is handed to it, and what the functions call their own. */
const RULEBOOK_NAMES = ["rules", "rulebook"];
/** The list of every table, which a function looks through by name. */
const EVERY_TABLE = "ruleTables";

const modules = new Map<string, Module>();

function readModule(file: string): Module {
  const known = modules.get(file);
  if (known) return known;
  const tree = ts.createSourceFile(file, readFileSync(file, "utf8"), ts.ScriptTarget.Latest, true);
  const declared = new Map<string, ts.Node>();
  const imported = new Map<string, { file: string; name: string }>();
  for (const statement of tree.statements) {
    if (ts.isVariableStatement(statement)) {
      for (const variable of statement.declarationList.declarations)
        declared.set(variable.name.getText(), variable);
    } else if (ts.isFunctionDeclaration(statement) || ts.isClassDeclaration(statement)) {
      if (statement.name) declared.set(statement.name.text, statement);
    } else if (ts.isImportDeclaration(statement)) {
      const from = (statement.moduleSpecifier as ts.StringLiteral).text;
      const names = statement.importClause?.namedBindings;
      if (!from.startsWith(".") || !names || !ts.isNamedImports(names)) continue;
      const target = `${path.join(path.dirname(file), from)}.ts`;
      for (const { name, propertyName } of names.elements)
        imported.set(name.text, { file: target, name: (propertyName ?? name).text });
    }
  }
  const read = { declared, imported };
  modules.set(file, read);
  return read;
}

const isRulebook = (node: ts.Node | undefined): boolean =>
  node !== undefined && ts.isIdentifier(node) && RULEBOOK_NAMES.includes(node.text);

/** Keys of the rulebook that a node takes out of it: `rules.failureToPay`, or `const { failureToPay } = rules`. */
function keysTaken(node: ts.Node): string[] {
  if (ts.isPropertyAccessExpression(node) && isRulebook(node.expression)) return [node.name.text];
  if (!ts.isVariableDeclaration(node) || !isRulebook(node.initializer)) return [];
  if (!ts.isObjectBindingPattern(node.name)) return [];
  return node.name.elements.map((element) => (element.propertyName ?? element.name).getText());
}

/** Whether an identifier only names a member or key, so that nothing of that name is used. */
function isMemberName(node: ts.Identifier): boolean {
  const { parent } = node;
  return (
    (ts.isPropertyAccessExpression(parent) && parent.name === node) ||
    (ts.isPropertyAssignment(parent) && parent.name === node) ||
    (ts.isBindingElement(parent) && parent.propertyName === node)
  );
}

/** What of the rules a function's answer may rest on. */
export interface Reached {
  /** Keys of the rulebook. */
  readonly keys: ReadonlySet<string>;
  /** Whether it looks tables up by name, any of them. */
  readonly everyTable: boolean;
}

/**
 * The tables that a function reaches, followed through the functions it calls in the source.
 *
 * @param file - The file that declares the function.
 * @param name - Its name there.
 * @returns What it reaches; never less, at times more where a call depends on its arguments.
 */
export function tablesReached(file: string, name: string): Reached {
  const keys = new Set<string>();
  const visited = new Set<string>();
  let everyTable = false;
  const visit = (from: string, called: string): void => {
    const place = `${from} ${called}`;
    if (visited.has(place) || from.includes(`${path.sep}rules${path.sep}`)) return;
    visited.add(place);
    const { declared, imported } = readModule(from);
    const walk = (node: ts.Node): void => {
      if (ts.isTypeNode(node)) return;
      for (const key of keysTaken(node)) keys.add(key);
      if (ts.isIdentifier(node) && !isMemberName(node)) {
        const target = imported.get(node.text);
        if (target?.name === EVERY_TABLE) everyTable = true;
        if (target) visit(target.file, target.name);
        else if (declared.has(node.text)) visit(from, node.text);
      }
      ts.forEachChild(node, walk);
    };
    const found = declared.get(called);
    if (found) walk(found);
  };
  visit(file, name);
  return { keys, everyTable };
}
