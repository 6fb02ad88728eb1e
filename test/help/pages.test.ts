import { existsSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { XMLValidator } from "fast-xml-parser";
import { describe, expect, it } from "vitest";
import { BUILD_FOLDER } from "../../src/host/builtAddIn";
import { page, pages, textOf } from "./builtHelp";

const all = [...pages].map(([name, text]) => ({ name, text }));
const idsOf = (text: string): string[] =>
  [...text.matchAll(/\sid="([^"]+)"/g)].map(([, id = ""]) => id);

/** Where a link of a page leads: a file of the build, and a place in it. */
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

  it("leads only to what is there", () => {
    const links = [...text.matchAll(/\s(?:href|src)="([^"]+)"/g)].map(([, link = ""]) => link);
    expect(links.length).toBeGreaterThan(0);
    for (const link of links) {
      const { file, place } = target(name, link);
      expect(existsSync(file), link).toBe(true);
      if (place === "") continue;
      expect(idsOf(readFileSync(fileURLToPath(file), "utf8")), link).toContain(place);
    }
  });

  it("names each of its places once", () => {
    expect(idsOf(text)).toEqual([...new Set(idsOf(text))]);
  });

  it("names no address elsewhere and allows itself nothing but its own style sheets and icons", () => {
    expect(text).not.toMatch(/https?:|["'(]\/\//);
    expect(/Content-Security-Policy" content="([^"]*)"/.exec(text)?.[1]).toBe(
      "default-src &#39;none&#39;; style-src &#39;self&#39;; img-src &#39;self&#39;; base-uri &#39;none&#39;; form-action &#39;none&#39;"
    );
  });

  it("has no script, handler or style written into it", () => {
    expect(text).not.toMatch(/<(script|style|iframe|object|form)\b/);
    expect(text).not.toMatch(/<[^>]*\s(on\w+|style)=/);
  });

  it("says its language and begins with a way past the top", () => {
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

  it("states the cautions", () => {
    const read = textOf(text);
    expect(read).toContain("an estimate, not tax or legal advice");
    expect(read).toContain("Check the current official text");
    expect(read).toContain("licensed preparer's judgment decides");
  });
});

describe("the pages of the help", () => {
  it("bear different titles", () => {
    const titles = all.map(({ text }) => /<title>(.*?)<\/title>/.exec(text)?.[1]);
    expect(new Set(titles).size).toBe(all.length);
  });

  it("follow one another from the first to the last and back", () => {
    const next = (name: string) => /href="(\w+\.html)" rel="next"/.exec(page(name))?.[1];
    const back = (name: string) => /href="(\w+\.html)" rel="prev"/.exec(page(name))?.[1];
    const first = all.filter(({ name }) => name !== "index.html" && back(name) === undefined);
    expect(first).toHaveLength(1);
    const walked: string[] = [];
    for (let at = first[0]?.name; at !== undefined && !walked.includes(at); at = next(at)) {
      expect(back(at)).toBe(walked.at(-1));
      walked.push(at);
    }
    expect(walked).toHaveLength(all.length - 1);
  });
});
