import { element } from "./element";

/** What the page shows of a rule table. */
export interface TableInForce {
  readonly id: string;
  readonly title: string;
  /** ISO day, the last for which the table holds what is published. */
  readonly knownThrough: string;
}

/** The day that stands for "no end is published" in the rule tables. */
const noEnd = "9999-12-31";

const months = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
];

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

/**
 * The rule tables the answers rest on, and through when each is known.
 *
 * @param tables - The tables in the order to show them.
 * @returns A table of the page.
 */
export function renderTables(tables: readonly TableInForce[]): HTMLElement {
  const columns = ["Rule table", "Known through"].map((title) => {
    const heading = element("th", title);
    heading.scope = "col";
    return heading;
  });
  const rows = tables.map(({ id, title, knownThrough }) => {
    const heading = element("th", title, " ", element("code", id));
    heading.scope = "row";
    return element("tr", heading, element("td", knownThroughText(knownThrough)));
  });
  return element("table", element("thead", element("tr", ...columns)), element("tbody", ...rows));
}
