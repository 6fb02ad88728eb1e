import { summarize, type RuleTable } from "../rules/ruleTables";
import { coverageDateText } from "./coverageDate";
import { element } from "./element";

/**
 * The rule tables: title, the last date covered, and the number of unverified entries.
 *
 * @param tables - The tables in the order to show them.
 * @returns A table of the page.
 */
export function renderTables(tables: readonly RuleTable[]): HTMLElement {
  const columns = ["Rule table", "Covers through", "Unverified entries"].map((title) => {
    const heading = element("th", title);
    heading.scope = "col";
    return heading;
  });
  const rows = tables.map(summarize).map(({ title, knownThrough, entries, fromMemory }) => {
    const heading = element("th", title);
    heading.scope = "row";
    const unverified = fromMemory === 0 ? "none" : `${String(fromMemory)} of ${String(entries)}`;
    return element(
      "tr",
      heading,
      element("td", coverageDateText(knownThrough)),
      element("td", unverified)
    );
  });
  return element("table", element("thead", element("tr", ...columns)), element("tbody", ...rows));
}
