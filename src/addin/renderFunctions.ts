import { element } from "./element";
import type { GuideFunction } from "./guideFunction";

/**
 * How a function is written in a cell: optional arguments in square brackets.
 *
 * @param entry - The function.
 * @returns Such as "=EXT.DUE(taxYear, [state], [filer])".
 */
export function formulaOf(entry: GuideFunction): string {
  const names = entry.arguments.map(({ name, optional }) => (optional ? `[${name}]` : name));
  return `=EXT.${entry.name}(${names.join(", ")})`;
}

function argumentList(entry: GuideFunction): HTMLElement[] {
  if (entry.arguments.length === 0) return [];
  const list = element("dl");
  for (const { name, meaning, optional } of entry.arguments) {
    list.append(
      element("dt", element("code", name), optional ? " (optional)" : ""),
      element("dd", meaning)
    );
  }
  return [element("details", element("summary", `Arguments of ${entry.name}`), list)];
}

function functionEntry(entry: GuideFunction): HTMLElement {
  const article = element(
    "article",
    element("h4", entry.name),
    element("p", entry.purpose),
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
 * @returns What goes under the heading of the guide.
 */
export function renderFunctions(guide: readonly GuideFunction[]): HTMLElement[] {
  const tasks = [...new Set(guide.map(({ task }) => task))];
  return tasks.flatMap((task) => [
    element("h3", task),
    ...guide.filter((entry) => entry.task === task).map(functionEntry),
  ]);
}
