import { element } from "./element";
import type { FunctionText } from "./functionText";
import { searchFunctions } from "./searchFunctions";

/**
 * A search box that hides the functions that are not found.
 *
 * @param texts - The functions' texts.
 * @param groups - The tasks with their functions, as the guide shows them.
 * @returns The box and the line with the number of functions found.
 */
export function searchBox(
  texts: ReadonlyMap<string, FunctionText>,
  groups: readonly HTMLElement[]
): HTMLElement {
  const input = element("input");
  input.type = "search";
  input.id = "search";
  const label = element("label", "Search functions");
  label.htmlFor = input.id;
  const count = element("p");
  count.setAttribute("role", "status");
  input.addEventListener("input", () => {
    const found = searchFunctions(texts, input.value);
    for (const group of groups) {
      const entries = [...group.querySelectorAll<HTMLElement>(".function")];
      for (const entry of entries) entry.hidden = !found.has(entry.id);
      group.hidden = entries.every(({ hidden }) => hidden);
    }
    count.textContent =
      input.value.trim() === "" ? "" : `${String(found.size)} of ${String(texts.size)} functions`;
  });
  return element("div", label, input, count);
}
