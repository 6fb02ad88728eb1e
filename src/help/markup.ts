/** Text of a page that is safe to stand in it as it is. */
export interface Markup {
  readonly markup: string;
}

/** What may stand in a page: text, which is escaped, markup, which is not, and lists of both. */
export type Content = string | number | Markup | readonly Content[];

const ESCAPES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

function written(content: Content): string {
  if (typeof content === "string")
    return content.replace(/[&<>"']/g, (sign) => ESCAPES[sign] ?? "");
  if (typeof content === "number") return String(content);
  return "markup" in content ? content.markup : content.map(written).join("");
}

/**
 * Markup from a template: what stands in the template is taken as it is, what is put into it is escaped.
 *
 * @param template - The markup, as source text.
 * @param contents - What goes between.
 * @returns The whole.
 */
export function html(template: TemplateStringsArray, ...contents: readonly Content[]): Markup {
  const pieces = template.map((piece, index) => piece + written(contents[index] ?? ""));
  return { markup: pieces.join("") };
}

/** A sentence in which what stands between backticks is code. */
export function prose(sentence: string): Content {
  return sentence
    .split("`")
    .map((piece, index) => (index % 2 === 1 ? html`<code>${piece}</code>` : piece));
}

/** A formula as code that breaks after its commas where a line is too short for it. */
export function formulaCode(formula: string): Markup {
  const pieces = formula.split(/(?<=[,;])/);
  const breaking = pieces.map((piece, index) => [index > 0 ? html`<wbr />` : "", piece]);
  return html`<code>${breaking}</code>`;
}
