import { describe, expect, it } from "vitest";
import { built } from "./builtAddIn";
import { beyond, LATER, PAGE, REACHES, type Allowance } from "./reachOfScripts";

const guide = built("addin.js");

/** Where the script of the page and its libraries reach beyond the page itself, with the reason for each place. */
const ALLOWED: readonly Allowance[] = [
  {
    where: /\bfetch\(`\$\{\w+\}functions\.json`\)/g,
    times: 1,
    why: "reads functions.json beside the page",
  },
  {
    where: /\{const (\w+)=new Date,\w+=String\(\1\.getMonth\(\)\+1\)/g,
    times: 1,
    why: "reads today's date of the user, to begin with as the as-of date, where it can be changed",
  },
  {
    where: /await navigator\.clipboard\.writeText\(/g,
    times: 1,
    why: "copies the diagnosis, a letter or an address, when its button is clicked",
  },
  {
    where: /"http:\/\/www\.w3\.org\/[\w/]+"/g,
    times: 6,
    why: "preact: the names of the languages of drawings and formulas, which are not opened",
  },
  {
    where: /const\{userAgent:(\w+)\}=navigator,\w+=[^,;]+\.test\(\1\)/g,
    times: 1,
    why: "@fluentui/web-components: whether the browser is of a kind that needs a detour",
  },
  {
    where: /`fast-\$\{Math\.random\(\)/g,
    times: 1,
    why: "@microsoft/fast-element: a mark in its templates",
  },
];
/** A page draws itself, and may do so later. What it draws is held by the page's policy and by test/browser/privacy.test.ts. */
const BEYOND_THE_PAGE = REACHES.filter(({ why }) => why !== PAGE && why !== LATER);

describe("the built script of the page", () => {
  it.each(ALLOWED)("does so only in the known place: $why", ({ where, times }) => {
    expect(guide.match(where)).toHaveLength(times);
  });

  it.each(BEYOND_THE_PAGE)("does not otherwise contain $pattern: $why", ({ pattern }) => {
    expect(pattern.exec(beyond(guide, ALLOWED))).toBeNull();
  });

  it.each(BEYOND_THE_PAGE)("fails the search with $sample added", ({ pattern, sample }) => {
    expect(beyond(guide.replace("class", `${sample};class`), ALLOWED)).toMatch(pattern);
  });

  it("uses the host only to see what it supports and to change the workbook", () => {
    const members = [
      ...guide.matchAll(/(?:(?<!["'\w ])|(?<=\breturn ))(Office|Excel)\??\.(\w+)(\??\.\w+)?/g),
    ];
    const used = members.map(([whole]) => whole.replaceAll("?", "").replace(/\(.*/, ""));
    expect([...new Set(used)].toSorted()).toEqual([
      "Excel.run",
      "Office.context.diagnostics",
      "Office.context.officeTheme",
      "Office.context.requirements",
    ]);
  });
});

describe("the script for a page without a host", () => {
  it.each(REACHES)("does not contain $pattern: $why", ({ pattern }) => {
    expect(pattern.exec(built("outside.js"))).toBeNull();
  });
});
