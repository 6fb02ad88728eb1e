import { describe, expect, it } from "vitest";
import { built } from "./builtAddIn";
import { beyond, BROUGHT_ALONG, REACHES, type Allowance } from "./reachOfScripts";

const guide = built("addin.js");

/** What the page around the functions does beyond them, each thing once and for one reason. */
const OF_THE_PAGE: readonly Allowance[] = [
  {
    where: /\bfetch\(`\$\{\w+\}functions\.json`\)/g,
    times: 1,
    why: "reads beside the page what the host is told of the functions",
  },
  {
    where: /\bfetch\(`\$\{\w+\}help\/examples\.json`\)/g,
    times: 1,
    why: "reads beside the page the examples of the help",
  },
  {
    where: /const (\w+)=document\.createElement\(\w+\);return \1\.append\(/g,
    times: 1,
    why: "makes the elements of the guide, which test/browser/privacy.test.ts names",
  },
  {
    where: /document\.getElementById\("outside"\)\?\.remove\(\)/g,
    times: 1,
    why: "takes away the note that there is no workbook",
  },
  {
    where: /"loading"===document\.readyState\?document\.addEventListener\("DOMContentLoaded",/g,
    times: 1,
    why: "waits until the page is drawn",
  },
  {
    where: /\{const (\w+)=new Date,\w+=String\(\1\.getMonth\(\)\+1\)/g,
    times: 1,
    why: "the reader's own day, put into a new client list as a date to be changed",
  },
  {
    where: /setTimeout\(\(\)=>\{\w+\(!1\)\},3e3\)/g,
    times: 1,
    why: "waits three seconds for a host that may not be there",
  },
];
const ALLOWED = [...BROUGHT_ALONG, ...OF_THE_PAGE];

describe("the built script of the page", () => {
  it.each(ALLOWED)("has, once: $why", ({ where, times }) => {
    expect(guide.match(where)).toHaveLength(times);
  });

  it.each(REACHES)("has beyond that no $pattern: $why", ({ pattern }) => {
    expect(pattern.exec(beyond(guide, ALLOWED))).toBeNull();
  });

  it.each(REACHES)("would be found out: $sample", ({ pattern, sample }) => {
    expect(beyond(guide.replace("class", `${sample};class`), ALLOWED)).toMatch(pattern);
  });

  it("asks of the host whether it is there, what it can do, and work in the workbook", () => {
    const members = [...guide.matchAll(/(?<!["'\w ])(Office|Excel)\??\.(\w+)(\??\.\w+)?/g)];
    const used = members.map(([whole]) => whole.replaceAll("?", "").replace(/\(.*/, ""));
    expect([...new Set(used)].toSorted()).toEqual(["Excel.run", "Office.context.requirements"]);
  });
});

describe("the script for a page without a host", () => {
  it.each(REACHES)("has no $pattern: $why", ({ pattern }) => {
    expect(pattern.exec(built("outside.js"))).toBeNull();
  });
});
