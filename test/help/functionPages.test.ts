import { describe, expect, it } from "vitest";
import { coverageDateText } from "../../src/addin/guide/coverageDate";
import { catalog, TASKS } from "../../src/functions/catalog";
import { rulebook } from "../../src/rules/rulebook";
import { version } from "../../src/rules/version";
import { metadata } from "../contract/builtAddIn";
import { bodyRows, page, pages, section, textOf } from "./builtHelp";

const { functions } = metadata;
const all = functions.map((one) => ({ ...one, text: () => page(`${one.id}.html`) }));

describe("the help", () => {
  it("has a page for every function", () => {
    for (const { id } of functions) expect([...pages.keys()]).toContain(`${id}.html`);
  });

  it("lists the tasks of the catalog, and every function with its purpose", () => {
    const listed = textOf(section(page("index.html"), "functions"));
    for (const { title } of TASKS) expect(listed).toContain(title);
    for (const { id, description } of functions) expect(listed).toContain(`${id} ${description}`);
  });

  it("links every other page from the contents", () => {
    const names = new Set(["index.html", ...functions.map(({ id }) => `${id}.html`)]);
    const links = section(page("index.html"), "topics");
    for (const name of pages.keys())
      if (!names.has(name)) expect(links).toContain(`href="${name}"`);
  });
});

describe.each(all)("the page of $id", ({ id, description, parameters, helpUrl, text }) => {
  it("has the address that the host is given", () => {
    expect(helpUrl).toMatch(/^https:\/\/.+\/help\/[^/]+$/);
    expect(helpUrl?.split("/").at(-1)).toBe(`${id}.html`);
  });

  it("has the purpose and the signature", () => {
    const names = parameters.map(({ name, optional }) => (optional ? `[${name}]` : name));
    const read = textOf(text());
    expect(read).toContain(description);
    expect(read).toContain(`=EXT.${id}(${names.join(", ")})`);
  });

  it("describes every argument, and how to enter it", () => {
    const kinds = Object.values(catalog[id]?.arguments ?? {});
    const read = textOf(section(text(), "arguments"));
    for (const [index, { name, description: meaning, optional }] of parameters.entries()) {
      const kind = kinds[index];
      const mark = optional ? " optional" : "";
      expect(read).toContain(`${name} ${String(kind?.title)}${mark} ${meaning}`);
      expect(section(text(), "kinds")).toContain(`<h3 id="kind-${String(kind?.id)}">`);
    }
  });

  it("lists its rule tables with the dates they cover, and the law", () => {
    const rows = bodyRows(section(text(), "rules"));
    const { tables = [], law = [] } = catalog[id] ?? {};
    expect(rows).toEqual(
      [...new Set(tables)].map((key) => [
        rulebook[key].title,
        coverageDateText(rulebook[key].knownThrough),
      ])
    );
    for (const citation of law) expect(textOf(section(text(), "law"))).toContain(citation);
  });

  it("names the version that calculated the examples", () => {
    expect(textOf(section(text(), "examples"))).toContain(`version ${version}`);
  });
});
