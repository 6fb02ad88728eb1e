import { element } from "./element";
import type { GuideFunction } from "./functionGuide";
import type { FunctionText } from "./functionText";

/**
 * How a function is written in a cell: optional arguments in square brackets.
 *
 * @param entry - The function.
 * @returns Such as "=EXT.DUE(taxYear, [state], [filer])".
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

function functionEntry(entry: FunctionText): HTMLElement {
  const article = element(
    "article",
    element("h4", entry.name),
    element("p", entry.description),
    element("p", element("code", formulaOf(entry))),
    ...argumentList(entry)
  );
  article.id = entry.name;
  return article;
}

/**
 * The function guide: a heading for each task, and below it the functions that serve it.
 *
 * @param guide - The functions in the order to show them.
 * @param texts - How each is explained, by name.
 * @returns What goes under the heading of the guide.
 */
export function renderFunctions(
  guide: readonly GuideFunction[],
  texts: ReadonlyMap<string, FunctionText>
): HTMLElement[] {
  const tasks = [...new Set(guide.map(({ task }) => task))];
  return tasks.flatMap((task) => [
    element("h3", task),
    ...guide
      .filter((entry) => entry.task === task)
      .flatMap(({ name }) => texts.get(name) ?? [])
      .map(functionEntry),
  ]);
}
