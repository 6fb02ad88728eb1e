import { readdirSync, readFileSync } from "node:fs";
import ts from "typescript";
import * as account from "../../src/functions/account";
import * as charges from "../../src/functions/charges";
import * as checking from "../../src/functions/checking";
import * as deductions from "../../src/functions/deductions";
import * as dueDates from "../../src/functions/dueDates";
import * as estimates from "../../src/functions/estimates";
import * as filing from "../../src/functions/filing";
import * as interest from "../../src/functions/interest";
import * as liability from "../../src/functions/liability";
import * as memo from "../../src/functions/memo";
import * as request from "../../src/functions/request";
import * as roster from "../../src/functions/roster";
import * as rulesInForce from "../../src/functions/rulesInForce";
import * as season from "../../src/functions/season";
import * as standing from "../../src/functions/standing";
import * as states from "../../src/functions/states";
import * as taxes from "../../src/functions/taxes";
import type { WorksheetFunction } from "./sheet";

const folder = new URL("../../src/functions/", import.meta.url);
const families: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  account,
  charges,
  checking,
  deductions,
  dueDates,
  estimates,
  filing,
  interest,
  liability,
  memo,
  request,
  roster,
  rulesInForce,
  season,
  standing,
  states,
  taxes,
};

/** A worksheet function as its source declares it. */
export interface Declared {
  readonly id: string;
  /** The file's name without its ending. */
  readonly family: string;
  readonly parameters: readonly string[];
  readonly example: string;
}

function tagText(declaration: ts.FunctionDeclaration, name: string): string | undefined {
  const tag = ts.getJSDocTags(declaration).find(({ tagName }) => tagName.text === name);
  return tag && (ts.getTextOfJSDocComment(tag.comment)?.trim() ?? "");
}

function declaredIn(family: string): (Declared & { readonly name: string })[] {
  const text = readFileSync(new URL(`${family}.ts`, folder), "utf8");
  const file = ts.createSourceFile(family, text, ts.ScriptTarget.Latest, true);
  return file.statements.filter(ts.isFunctionDeclaration).flatMap((declaration) => {
    const id = tagText(declaration, "customfunction");
    if (id === undefined) return [];
    return {
      id,
      family,
      name: declaration.name?.text ?? "",
      parameters: declaration.parameters.map((parameter) => parameter.name.getText(file)),
      example: tagText(declaration, "example") ?? "",
    };
  });
}

const inSource = readdirSync(folder)
  .filter((file) => file.endsWith(".ts"))
  .flatMap((file) => declaredIn(file.slice(0, -".ts".length)));

/** Every worksheet function that a file of src/functions declares. */
export const declaredFunctions: readonly Declared[] = inSource;

/** A worksheet function by its id, from the source. */
export function worksheetFunction(id: string): WorksheetFunction {
  const declared = inSource.find((one) => one.id === id);
  const found = declared && families[declared.family]?.[declared.name];
  if (typeof found !== "function")
    throw new RangeError(`no worksheet function ${id} is known here`);
  return found as WorksheetFunction;
}
