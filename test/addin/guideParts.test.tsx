import type { VNode } from "preact";
import { renderToStaticMarkup } from "preact-render-to-string";
import { describe, expect, it } from "vitest";
import { AnswerView } from "../../src/addin/answerView";
import { formulaOf } from "../../src/addin/functionEntry";
import type { FunctionText } from "../../src/addin/functionText";
import { RuleTableList } from "../../src/addin/ruleTableList";
import { ruleTables } from "../../src/rules/ruleTables";

const written: FunctionText = {
  name: "ONE",
  description: "One.",
  parameters: [
    { name: "amount", description: "How much." },
    { name: "date", description: "When.", optional: true },
  ],
};

/** The texts in the elements with a tag, in the order of the page. */
const textsIn = (markup: string, tag: string): string[] =>
  [...markup.matchAll(new RegExp(`<${tag}\\b[^>]*>(.*?)</${tag}>`, "g"))].map(
    ([, text = ""]) => text
  );
const markupOf = (part: VNode): string => renderToStaticMarkup(part);

describe("the functions on the page", () => {
  it("are written as in a cell, with optional arguments in square brackets", () => {
    expect(formulaOf(written)).toBe("=EXT.ONE(amount, [date])");
    expect(formulaOf({ ...written, parameters: [] })).toBe("=EXT.ONE()");
  });
});

describe("an answer on the page", () => {
  const one = { text: "4/15/2026", kind: "number" } as const;

  it("is a line if it is one value", () => {
    const markup = markupOf(<AnswerView rows={[[one]]} caption="Answer" />);
    expect(markup).toBe('<output class="number">4/15/2026</output>');
  });

  it("is a table with headings and a caption if it fills several cells", () => {
    const heading = { text: "Due", kind: "text" } as const;
    const markup = markupOf(<AnswerView rows={[[heading], [one]]} caption="Dates" />);
    expect(textsIn(markup, "caption")).toEqual(["Dates"]);
    expect(markup).toContain('<th scope="col" class="text">Due</th>');
    expect(textsIn(markup, "td")).toEqual(["4/15/2026"]);
  });
});

describe("the rule tables on the page", () => {
  it("are a row each: title, last date covered and unverified entries", () => {
    const markup = markupOf(<RuleTableList />);
    const rows = textsIn(markup, "tr").map((row) =>
      [...row.matchAll(/<t[hd][^>]*>(.*?)<\/t[hd]>/g)].map(([, text]) => text)
    );
    expect(rows).toHaveLength(ruleTables.size + 1);
    expect(rows[0]).toEqual(["Rule table", "Covers through", "Unverified entries"]);
    const rowOf = (id: string) => rows.find(([title]) => title === ruleTables.get(id)?.title);
    expect(rowOf("failure-to-pay")?.slice(1)).toEqual(["no end date", "none"]);
    expect(rowOf("underpayment-rate")?.slice(1)).toEqual(["12/31/2026", "none"]);
    expect(rowOf("state-extensions")?.[2]).toBe("5 of 51");
  });
});
