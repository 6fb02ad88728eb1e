import { TASKS, type CatalogFunction } from "../functions/catalog";
import type { Example } from "../functions/worksheetFunction";
import { element } from "./element";
import type { FunctionText } from "./functionText";
import { liveAnswer } from "./liveAnswer";
import { renderAnswer } from "./renderAnswer";

/** What the button beside an example does. The button appears as soon as a workbook is open. */
export type InsertFormula = Promise<(formula: string) => void>;

/**
 * How a function is written in a cell, with optional arguments in square brackets.
 *
 * @example
 * formulaOf(due) //=> "=EXT.DUE(taxYear, [state], [filerType])"
 */
export function formulaOf(entry: FunctionText): string {
  const names = entry.parameters.map(({ name, optional }) => (optional ? `[${name}]` : name));
  return `=EXT.${entry.name}(${names.join(", ")})`;
}

function argumentList(entry: FunctionText): HTMLElement[] {
  if (entry.parameters.length === 0) return [];
  const list = element("dl");
  for (const { name, description, optional } of entry.parameters) {
    list.append(
      element("dt", element("code", name), optional ? " (optional)" : ""),
      element("dd", description)
    );
  }
  return [element("details", element("summary", `Arguments of ${entry.name}`), list)];
}

function exampleEntry({ formula }: Example, insert: InsertFormula): HTMLElement {
  const entry = element("div", element("p", element("code", formula)));
  entry.className = "example";
  entry.append(renderAnswer(liveAnswer(formula), `Answer of ${formula}`));
  void insert.then((insertFormula) => {
    const button = element("button", "Insert in selected cell");
    button.type = "button";
    button.addEventListener("click", () => {
      insertFormula(formula);
    });
    entry.append(button);
  });
  return entry;
}

function helpLink(name: string, folder: string): HTMLElement {
  const link = element("a", "Help for this function");
  link.href = `${folder}help/${name}.html`;
  link.target = "_blank";
  link.rel = "noopener";
  return link;
}

function functionEntry(
  text: FunctionText,
  { examples }: CatalogFunction,
  folder: string,
  insert: InsertFormula
): HTMLElement {
  const body = element("div");
  const entry = element(
    "details",
    element("summary", element("strong", text.name), " ", text.description),
    body
  );
  entry.id = text.name;
  entry.className = "function";
  // The examples are answered when the entry is opened, so that the page appears at once.
  const fill = (): void => {
    body.append(
      element("p", element("code", formulaOf(text))),
      ...argumentList(text),
      ...examples.map((example) => exampleEntry(example, insert)),
      element("p", helpLink(text.name, folder))
    );
  };
  entry.addEventListener("toggle", fill, { once: true });
  return entry;
}

/**
 * The functions by task: a heading for each task with its functions below it.
 *
 * @param texts - The descriptions of the functions.
 * @param folder - The folder of the help, with a slash at the end; empty if it is beside the page.
 * @param insert - Inserts a formula into the workbook, once one is open.
 * @returns One section for each task.
 */
export function renderFunctions(
  texts: ReadonlyMap<string, FunctionText>,
  folder: string,
  insert: InsertFormula
): HTMLElement[] {
  return TASKS.map(({ title, functions }) => {
    const entries = Object.entries(functions).flatMap(([name, definition]) => {
      const text = texts.get(name);
      return text ? [functionEntry(text, definition, folder, insert)] : [];
    });
    const section = element("section", element("h3", title), ...entries);
    section.className = "task";
    return section;
  });
}
