import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { XMLValidator } from "fast-xml-parser";
import { describe, expect, it } from "vitest";
import { BUILD_FOLDER } from "../../src/host/builtAddIn";
import { page, pages, textOf } from "./builtHelp";

const all = [...pages].map(([name, text]) => ({ name, text }));
const idsOf = (text: string): string[] =>
  [...text.matchAll(/\sid="([^"]+)"/g)].map(([, id = ""]) => id);

/** The target of a link: a file of the build, and an id in it. */
function target(from: string, link: string): { readonly file: URL; readonly place: string } {
  const file = new URL(link, new URL(`help/${from}`, BUILD_FOLDER));
  const place = file.hash.slice(1);
  file.hash = "";
  return { file, place };
}

describe.each(all)("the page $name", ({ name, text }) => {
  it("is well formed", () => {
    expect(XMLValidator.validate(text.replace(/^<!doctype html>/, ""))).toBe(true);
  });

  it("links only to existing files and ids", () => {
    const links = [...text.matchAll(/\s(?:href|src)="([^"]+)"/g)].map(([, link = ""]) => link);
    expect(links.length).toBeGreaterThan(0);
    for (const link of links) {
      const { file, place } = target(name, link);
      expect(existsSync(file), link).toBe(true);
      if (place === "") continue;
      expect(idsOf(readFileSync(fileURLToPath(file), "utf8")), link).toContain(place);
    }
  });

  it("has each id once", () => {
    expect(idsOf(text)).toEqual([...new Set(idsOf(text))]);
  });

  it("has no outside address, and a policy that allows only its own style sheets and icons", () => {
    expect(text).not.toMatch(/https?:|["'(]\/\//);
    expect(/Content-Security-Policy" content="([^"]*)"/.exec(text)?.[1]).toBe(
      "default-src &#39;none&#39;; style-src &#39;self&#39;; img-src &#39;self&#39;; base-uri &#39;none&#39;; form-action &#39;none&#39;"
    );
  });

  it("has no inline script, handler or style", () => {
    expect(text).not.toMatch(/<(script|style|iframe|object|form)\b/);
    expect(text).not.toMatch(/<[^>]*\s(on\w+|style)=/);
  });

  it("names its language and begins with a link to skip the top", () => {
    expect(text).toMatch(/^<!doctype html>\s*<html lang="en-US">/);
    expect(text).toMatch(/<body>\s*<a class="skip" href="#main">/);
    expect(text).toMatch(/<main id="main" tabindex="-1">/);
  });

  it("has one main heading, and no heading that skips a level", () => {
    const levels = [...text.matchAll(/<h(\d)[\s>]/g)].map(([, level]) => Number(level));
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    expect(levels[0]).toBe(1);
    for (const [index, level] of levels.entries())
      expect(level - (levels[index - 1] ?? 0)).toBeLessThanOrEqual(1);
  });

  it("has the cautions", () => {
    const read = textOf(text);
    expect(read).toContain("an estimate, not tax or legal advice");
    expect(read).toContain("Check it against the current official text");
    expect(read).toContain("The licensed tax professional makes the final decision");
  });
});

describe("the pages of the help", () => {
  it("have different titles", () => {
    const titles = all.map(({ text }) => /<title>(.*?)<\/title>/.exec(text)?.[1]);
    expect(new Set(titles).size).toBe(all.length);
  });

  it("link from each function to the next and back", () => {
    const next = (name: string) => /href="(\w+\.html)" rel="next"/.exec(page(name))?.[1];
    const back = (name: string) => /href="(\w+\.html)" rel="prev"/.exec(page(name))?.[1];
    const ofFunctions = all.filter(({ name }) => /^[A-Z]+\.html$/.test(name));
    const first = ofFunctions.filter(({ name }) => back(name) === undefined);
    expect(first).toHaveLength(1);
    const walked: string[] = [];
    for (let at = first[0]?.name; at !== undefined && !walked.includes(at); at = next(at)) {
      expect(back(at)).toBe(walked.at(-1));
      walked.push(at);
    }
    expect(walked).toHaveLength(ofFunctions.length);
  });
});
