import { element } from "./element";
import type { GuideFunction } from "./functionGuide";
import type { FunctionText } from "./functionText";
import type { Example, GuideContent } from "./guideContent";
import { liveAnswer } from "./liveAnswer";
import { renderAnswer } from "./renderAnswer";

/** What the buttons beside an example do; nothing where there is no workbook. */
export type PutFormula = ((formula: string) => void) | undefined;

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

function exampleEntry({ formula }: Example, put: PutFormula): HTMLElement {
  const entry = element("div", element("p", element("code", formula)));
  entry.className = "example";
  entry.append(renderAnswer(liveAnswer(formula), `Answer of ${formula}`));
  if (put) {
    const button = element("button", "Put it in the selected cell");
    button.type = "button";
    button.addEventListener("click", () => {
      put(formula);
    });
    entry.append(button);
  }
  return entry;
}

function functionEntry(
  entry: FunctionText,
  examples: readonly Example[],
  put: PutFormula
): HTMLElement {
  const body = element("div");
  const article = element(
    "details",
    element("summary", element("strong", entry.name), " ", entry.description),
    body
  );
  article.id = entry.name;
  article.className = "function";
  // Its answers are worked out when it is opened, so that the page stands at once.
  const fill = (): void => {
    const help = element("a", "All about it");
    help.href = `help/${entry.name}.html`;
    help.target = "_blank";
    help.rel = "noopener";
    body.append(
      element("p", element("code", formulaOf(entry))),
      ...argumentList(entry),
      ...examples.map((example) => exampleEntry(example, put)),
      element("p", help)
    );
  };
  article.addEventListener("toggle", fill, { once: true });
  return article;
}

/**
 * The function guide: a heading for each task, and below it the functions that serve it.
 *
 * @param guide - The functions in the order to show them.
 * @param content - How each is explained.
 * @param put - What to do with a formula that is to go into the workbook.
 * @returns What goes under the heading of the guide.
 */
export function renderFunctions(
  guide: readonly GuideFunction[],
  content: GuideContent,
  put: PutFormula
): HTMLElement[] {
  const tasks = [...new Set(guide.map(({ task }) => task))];
  return tasks.map((task) => {
    const entries = guide.flatMap((entry) => {
      const text = content.texts.get(entry.name);
      if (entry.task !== task || !text) return [];
      return [functionEntry(text, content.examples.get(entry.name) ?? [], put)];
    });
    const group = element("section", element("h3", task), ...entries);
    group.className = "task";
    return group;
  });
}
