import { describe, expect, it } from "vitest";
import { built } from "./builtAddIn";
import { beyond, BROUGHT_ALONG, REACHES, type Allowance } from "./reachOfScripts";

const guide = built("addin.js");

/** What the script of the page does beyond the functions, with the reason for each. */
const OF_THE_PAGE: readonly Allowance[] = [
  {
    where: /\bfetch\(`\$\{\w+\}functions\.json`\)/g,
    times: 1,
    why: "reads functions.json beside the page",
  },
  {
    where: /const (\w+)=document\.createElement\(\w+\);return \1\.append\(/g,
    times: 1,
    why: "makes the elements of the guide, which test/browser/privacy.test.ts names",
  },
  {
    where: /document\.getElementById\("outside"\)/g,
    times: 1,
    why: "says in the note how matters are with Excel",
  },
  {
    where: /"loading"===document\.readyState\?document\.addEventListener\("DOMContentLoaded",/g,
    times: 1,
    why: "waits until the page is loaded",
  },
  {
    where: /\{const (\w+)=new Date,\w+=String\(\1\.getMonth\(\)\+1\)/g,
    times: 1,
    why: "reads today's date of the user for a new client list, where it can be changed",
  },
  {
    where: /setTimeout\(\(\)=>\{\w+\("late"\)\},15e3\)/g,
    times: 1,
    why: "says after fifteen seconds that Excel has not answered",
  },
];
const ALLOWED = [...BROUGHT_ALONG, ...OF_THE_PAGE];

describe("the built script of the page", () => {
  it.each(ALLOWED)("does so only in the known place: $why", ({ where, times }) => {
    expect(guide.match(where)).toHaveLength(times);
  });

  it.each(REACHES)("does not otherwise contain $pattern: $why", ({ pattern }) => {
    expect(pattern.exec(beyond(guide, ALLOWED))).toBeNull();
  });

  it.each(REACHES)("fails the search with $sample added", ({ pattern, sample }) => {
    expect(beyond(guide.replace("class", `${sample};class`), ALLOWED)).toMatch(pattern);
  });

  it("uses the host only to see what it supports and to change the workbook", () => {
    const members = [
      ...guide.matchAll(/(?:(?<!["'\w ])|(?<=\breturn ))(Office|Excel)\??\.(\w+)(\??\.\w+)?/g),
    ];
    const used = members.map(([whole]) => whole.replaceAll("?", "").replace(/\(.*/, ""));
    expect([...new Set(used)].toSorted()).toEqual(["Excel.run", "Office.context.requirements"]);
  });
});

describe("the script for a page without a host", () => {
  it.each(REACHES)("does not contain $pattern: $why", ({ pattern }) => {
    expect(pattern.exec(built("outside.js"))).toBeNull();
  });
});
