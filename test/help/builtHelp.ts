import { readdirSync, readFileSync } from "node:fs";
import { BUILD_FOLDER } from "../../src/host/builtAddIn";

const folder = new URL("help/", BUILD_FOLDER);

/** The text of every page of the help by its file name. */
export const pages: ReadonlyMap<string, string> = new Map(
  readdirSync(folder)
    .filter((name) => name.endsWith(".html"))
    .map((name) => [name, readFileSync(new URL(name, folder), "utf8")])
);

/** The text of a page of the help. */
export function page(name: string): string {
  const text = pages.get(name);
  if (text === undefined) throw new RangeError(`There is no dist/help/${name}.`);
  return text;
}

const ENTITIES: readonly (readonly [entity: string, sign: string])[] = [
  ["&lt;", "<"],
  ["&gt;", ">"],
  ["&quot;", '"'],
  ["&#39;", "'"],
  ["&amp;", "&"],
];

/** The text that a reader sees of a piece of a page, with single spaces. */
export function textOf(markup: string): string {
  const bare = markup.replace(/<wbr \/>/g, "").replace(/<[^>]*>/g, " ");
  return ENTITIES.reduce((text, [entity, sign]) => text.replaceAll(entity, sign), bare)
    .replace(/\s+/g, " ")
    .trim();
}

/** The rows of the table bodies in a piece of a page: the text of the row heading, then that of its cells. */
export function bodyRows(markup: string): string[][] {
  const bodies = [...markup.matchAll(/<tbody>(.*?)<\/tbody>/gs)].map(([, body = ""]) => body);
  const rows = bodies.flatMap((body) => [...body.matchAll(/<tr[^>]*>(.*?)<\/tr>/gs)]);
  return rows.map(([, row = ""]) =>
    [...row.matchAll(/<(t[hd])[^>]*>(.*?)<\/\1>/gs)].map(([, , cell = ""]) => textOf(cell))
  );
}

/** The section of a page under the heading of this id. */
export function section(text: string, id: string): string {
  const found = new RegExp(`<section aria-labelledby="${id}">(.*?)</section>`, "s").exec(text)?.[1];
  if (found === undefined) throw new RangeError(`The page has no section ${id}.`);
  return found;
}
