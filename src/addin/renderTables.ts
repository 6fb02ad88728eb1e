import { summarize, type RuleTable } from "../rules/ruleTables";
import { element } from "./element";

/** The day that stands for "no end is published" in the rule tables. */
const noEnd = "9999-12-31";

const months =
  "January February March April May June July August September October November December".split(
    " "
  );

/**
 * A day as a preparer reads it.
 *
 * @param day - ISO day.
 * @returns Such as "December 31, 2026", or "until the law changes" for a table without an end.
 */
export function knownThroughText(day: string): string {
  if (day === noEnd) return "until the law changes";
  const [year, month, dayOfMonth] = day.split("-").map(Number);
  return `${months[Number(month) - 1]} ${dayOfMonth}, ${year}`;
}

/** How well the newest entry of a table, and the table as a whole, are known. */
function standing(table: RuleTable): readonly [source: string, standing: string] {
  const rows = "entries" in table ? table.entries : table.rows;
  const source = "entries" in table ? table.entries.at(-1)?.source : table.source;
  const { fromMemory } = summarize(table);
  const read =
    source?.confidence === "official" ? "read in the official text" : "as reported elsewhere";
  const doubt =
    fromMemory === 0 ? "" : `; ${String(fromMemory)} of ${String(rows.length)} from memory: check`;
  return [source?.citation ?? "", read + doubt];
}

/**
 * The rule tables the answers rest on: through when each is known, by which text, how well.
 *
 * @param tables - The tables in the order to show them.
 * @returns A table of the page.
 */
export function renderTables(tables: readonly RuleTable[]): HTMLElement {
  const columns = ["Rule table", "Known through", "Newest source"].map((title) => {
    const heading = element("th", title);
    heading.scope = "col";
    return heading;
  });
  const rows = tables.map((table) => {
    const heading = element("th", table.title, " ", element("code", table.id));
    heading.scope = "row";
    const [source, read] = standing(table);
    const cited = element("td", source, element("small", read));
    return element("tr", heading, element("td", knownThroughText(table.knownThrough)), cited);
  });
  return element("table", element("thead", element("tr", ...columns)), element("tbody", ...rows));
}
