import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import ts from "typescript";

/** What the comment above a worksheet function says beyond what the host is told. */
export interface FunctionDoc {
  readonly id: string;
  /** The file that declares it, and its name there. */
  readonly file: string;
  readonly declaredAs: string;
  readonly returns: string;
  readonly throws: string;
  readonly see: string;
  readonly example: string;
}

/** The words of a tag as they are written: the parser takes the first word after some tags for a name. */
function wordsOf(tag: ts.JSDocTag): string {
  return tag
    .getText()
    .replace(/^@\w+\s*/, "")
    .replace(/^\{[^}]*\}\s*/, "")
    .replace(/\s*\n\s*\*?\s*/g, " ")
    .trim();
}

function docOf(declaration: ts.FunctionDeclaration, file: string): FunctionDoc | undefined {
  const tags = ts.getJSDocTags(declaration);
  const words = (name: string): string => {
    const tag = tags.find(({ tagName }) => tagName.text === name);
    return tag ? wordsOf(tag) : "";
  };
  const id = words("customfunction");
  if (id === "") return undefined;
  return {
    id,
    file,
    declaredAs: declaration.name?.text ?? "",
    returns: words("returns"),
    throws: words("throws"),
    see: words("see"),
    example: words("example"),
  };
}

/**
 * Reads the comments of the worksheet functions.
 *
 * @param folder - Where the functions are declared, a file a family.
 * @returns Each function's words, by its id.
 */
export function readFunctionDocs(folder: string): ReadonlyMap<string, FunctionDoc> {
  const docs = readdirSync(folder)
    .filter((name) => name.endsWith(".ts"))
    .flatMap((name) => {
      const file = path.join(folder, name);
      const text = readFileSync(file, "utf8");
      const tree = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
      return tree.statements
        .filter(ts.isFunctionDeclaration)
        .flatMap((declaration) => docOf(declaration, file) ?? []);
    });
  return new Map(docs.map((doc) => [doc.id, doc]));
}
