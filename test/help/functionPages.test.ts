import { describe, expect, it } from "vitest";
import { fileURLToPath } from "node:url";
import { knownThroughText } from "../../src/addin/renderTables";
import { kindOf } from "../../src/help/argumentKinds";
import { readFunctionDocs } from "../../src/help/functionDocs";
import { version } from "../../src/rules/version";
import { ruleTables } from "../../src/rules/ruleTables";
import { metadata } from "../contract/builtAddIn";
import { bodyRows, page, pages, section, textOf } from "./builtHelp";

const { functions } = metadata;
const docs = readFunctionDocs(fileURLToPath(new URL("../../src/functions", import.meta.url)));
const told = functions.map((one) => ({ ...one, text: () => page(`${one.id}.html`) }));

describe("the help", () => {
  it("has a page for every function, and the contents", () => {
    const names = functions.map(({ id }) => `${id}.html`);
    expect([...pages.keys()].toSorted()).toEqual([...names, "index.html"].toSorted());
  });

  it("lists every function with its purpose in the contents", () => {
    const listed = section(page("index.html"), "functions");
    for (const { id, description } of functions)
      expect(textOf(listed)).toContain(`${id} ${description}`);
  });

  it("lists every table of the rules, and through when it is known", () => {
    const listed = bodyRows(section(page("index.html"), "tables"));
    expect(listed).toEqual(
      [...ruleTables.values()].map(({ id, title, knownThrough }) => [
        `${title} ${id}`,
        knownThroughText(knownThrough),
      ])
    );
  });

  it("knows of every argument what kind it is", () => {
    const unknown = functions.flatMap(({ id, parameters }) =>
      parameters.filter(({ name }) => !kindOf(id, name)).map(({ name }) => `${id} ${name}`)
    );
    expect(unknown, "to be given a kind in src/help/argumentKinds.ts").toEqual([]);
  });
});

describe.each(told)("the page of $id", ({ id, description, parameters, helpUrl, text }) => {
  it("is where the host is told to look for help", () => {
    expect(helpUrl).toMatch(/^https:\/\/.+\/help\/[^/]+$/);
    expect(pages.has(helpUrl?.split("/").at(-1) ?? "")).toBe(true);
    expect(helpUrl).toContain(`/${id}.html`);
  });

  it("says what the function is for and how it is written", () => {
    const names = parameters.map(({ name, optional }) => (optional ? `[${name}]` : name));
    const read = textOf(text());
    expect(read).toContain(description);
    expect(read).toContain(`=EXT.${id}(${names.join(", ")})`);
  });

  it("explains every argument and how one of its kind is given", () => {
    const read = textOf(section(text(), "arguments"));
    for (const { name, description: meaning, optional } of parameters) {
      const left = optional ? "may be left out " : "";
      expect(read).toMatch(new RegExp(`(^| )${name} `));
      expect(read).toContain(`${left}${meaning}`);
      const kind = kindOf(id, name);
      if (kind) expect(section(text(), "kinds")).toContain(`<h3 id="kind-${kind}">`);
    }
  });

  it("says what it answers and which errors it shows", () => {
    const { returns = "", throws = "" } = docs.get(id) ?? {};
    expect(returns).toMatch(/\.$/);
    expect(textOf(section(text(), "answer"))).toContain(`Answer ${returns}`);
    const errors = textOf(section(text(), "errors"));
    const named = throws.match(/#[A-Z/]+[!?]?/g) ?? [];
    for (const code of [...named, "#BUSY!", "#NAME?"]) expect(errors).toContain(`${code} `);
  });

  it("says of which edition its figures are", () => {
    expect(textOf(section(text(), "examples"))).toContain(`version ${version}`);
  });
});
