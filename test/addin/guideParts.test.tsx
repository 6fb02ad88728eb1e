import type { VNode } from "preact";
import { renderToStaticMarkup } from "preact-render-to-string";
import { describe, expect, it } from "vitest";
import { AnswerView } from "../../src/addin/answers/answerView";
import { Deadlines, DeadlineTable } from "../../src/addin/guide/deadlines";
import { formulaOf } from "../../src/addin/guide/functionEntry";
import type { FunctionText } from "../../src/addin/guide/functionText";
import { liveAnswer } from "../../src/addin/answers/liveAnswer";
import { RuleTableList } from "../../src/addin/guide/ruleTableList";
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
  it("are a row each: title, last date covered, and in words what is unverified", () => {
    const markup = markupOf(<RuleTableList />);
    const rows = textsIn(markup, "tr").map((row) =>
      [...row.matchAll(/<t[hd][^>]*>(.*?)<\/t[hd]>/g)].map(([, text]) => text)
    );
    expect(rows).toHaveLength(ruleTables().size + 1);
    expect(rows[0]).toEqual(["Rule table", "Covers through"]);
    const titleOf = (id: string) => ruleTables().get(id)?.title ?? id;
    const rowOf = (id: string) => rows.find(([title]) => title?.startsWith(titleOf(id)));
    expect(rowOf("failure-to-pay")).toEqual([titleOf("failure-to-pay"), "no end date"]);
    expect(rowOf("underpayment-rate")?.[1]).toBe("12/31/2026");
    expect(rowOf("state-extensions")?.[0]).toContain(
      "<small>Unverified: 5 of 51 entries. Confirm first.</small>"
    );
  });
});

describe("the deadlines on the page", () => {
  const formula = '=EXT.CALENDAR(2023,"ME","resident")';
  const markup = markupOf(<DeadlineTable rows={liveAnswer(formula)} caption="Deadlines" />);

  it("have the date beside the deadline, with the weekday", () => {
    // Maine, tax year 2023: April 17, 2024, after Patriots' Day and Emancipation Day (IRS Publication 509 for 2024).
    expect(markup).toMatch(
      /<th scope="row">File or request an extension.*?<\/th><td>4\/17\/2024<small>Wednesday<\/small><\/td>/
    );
    expect(textsIn(markup, "thead")).toEqual([
      '<tr><th scope="col">Deadline</th><th scope="col">Date</th></tr>',
    ]);
  });

  it("say why a date moved, what it is without the extension, and the source", () => {
    expect(markup).toMatch(/Moved from 4\/15\/2024: [^.]+\./);
    expect(markup).toContain("<small>Without the extension: 4/17/2024.</small>");
    expect(markup).toContain("<small>IRC section 6081(a); Regulations section 1.6081-4(a)</small>");
  });

  it("are chosen by the names of the states", () => {
    const form = markupOf(<Deadlines />);
    expect(form).toContain('<option value="NY">New York</option>');
    expect(form).toContain('<option value="foreign">outside the United States</option>');
    expect(form).toContain("out of the country (line 8)</option>");
  });
});
