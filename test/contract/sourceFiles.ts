import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** One import, re-export or dynamic import of a source file. */
export interface Import {
  /** Path from the root for a file of the project, the package's name for another. */
  readonly target: string;
  readonly isPackage: boolean;
  /** Whether anything of it is there at run time. */
  readonly atRunTime: boolean;
}

/** A source file, parsed. */
export interface SourceFile {
  /** Path from the root, with forward slashes. */
  readonly path: string;
  readonly text: string;
  readonly tree: ts.SourceFile;
}

/** Files under a folder of the project, by path from the root. */
export function filesUnder(folder: string, ending: string): string[] {
  return readdirSync(path.join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(ending))
    .map((entry) => path.relative(root, path.join(entry.parentPath, entry.name)))
    .map((file) => file.replaceAll("\\", "/"))
    .toSorted();
}

/** Reads and parses a file. */
export function sourceFile(file: string): SourceFile {
  const text = readFileSync(path.join(root, file), "utf8");
  return { path: file, text, tree: ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true) };
}

/** All nodes of a tree, comments aside. */
export function* nodesOf(node: ts.Node): Generator<ts.Node> {
  yield node;
  const children: ts.Node[] = [];
  ts.forEachChild(node, (child) => {
    children.push(child);
  });
  for (const child of children) yield* nodesOf(child);
}

function targetOf(file: string, specifier: string): Pick<Import, "target" | "isPackage"> {
  if (!specifier.startsWith(".")) {
    const [scope = "", name = ""] = specifier.split("/");
    return { target: scope.startsWith("@") ? `${scope}/${name}` : scope, isPackage: true };
  }
  const place = path.posix.join(path.posix.dirname(file), specifier);
  return { target: path.posix.extname(place) === "" ? `${place}.ts` : place, isPackage: false };
}

function hasRunTimePart(clause: ts.ImportClause | undefined): boolean {
  if (!clause) return true;
  if (clause.phaseModifier === ts.SyntaxKind.TypeKeyword) return false;
  const { name, namedBindings } = clause;
  if (name || !namedBindings || ts.isNamespaceImport(namedBindings)) return true;
  return namedBindings.elements.some(({ isTypeOnly }) => !isTypeOnly);
}

/** Everything a file imports or passes on. */
export function importsOf({ path: file, tree }: SourceFile): Import[] {
  const found: Import[] = [];
  const add = (specifier: ts.Node, atRunTime: boolean): void => {
    if (ts.isStringLiteralLike(specifier))
      found.push({ ...targetOf(file, specifier.text), atRunTime });
  };
  for (const node of nodesOf(tree)) {
    if (ts.isImportDeclaration(node)) add(node.moduleSpecifier, hasRunTimePart(node.importClause));
    else if (ts.isExportDeclaration(node) && node.moduleSpecifier)
      add(node.moduleSpecifier, !node.isTypeOnly);
    else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument))
      add(node.argument.literal, false);
    else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword)
      for (const argument of node.arguments) add(argument, true);
  }
  return found;
}

function isMemberOrKey(node: ts.Node): boolean {
  const { parent } = node;
  const isMember = ts.isPropertyAccessExpression(parent) && parent.name === node;
  const isKey =
    (ts.isPropertyAssignment(parent) || ts.isPropertySignature(parent)) && parent.name === node;
  return isMember || isKey || (ts.isBindingElement(parent) && parent.propertyName === node);
}

function isInType(node: ts.Node): boolean {
  for (let at: ts.Node = node; !ts.isStatement(at); at = at.parent) {
    if (ts.isTypeNode(at)) return true;
  }
  return false;
}

/** The names a file uses at run time, whatever they mean there: members, keys and types aside. */
export function namesUsedIn({ tree }: SourceFile): Set<string> {
  const used = new Set<string>();
  for (const node of nodesOf(tree)) {
    if (ts.isIdentifier(node) && !isMemberOrKey(node) && !isInType(node)) used.add(node.text);
  }
  return used;
}

/** Names of the functions a file exports. */
export function exportedFunctions({ tree }: SourceFile): string[] {
  return tree.statements.flatMap((statement) => {
    const isExported =
      ts.canHaveModifiers(statement) &&
      ts.getModifiers(statement)?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword) === true;
    return isExported && ts.isFunctionDeclaration(statement) ? [statement.name?.text ?? ""] : [];
  });
}
