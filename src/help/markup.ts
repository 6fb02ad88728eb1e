/** Markup that goes into a page unescaped. */
export interface Markup {
  readonly markup: string;
}

/** Content of a page: text, which is escaped, markup, which is not, and lists of both. */
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
 * Markup from a template. The template is used as it is; text put into it is escaped.
 *
 * @param template - The markup, as source text.
 * @param contents - What goes between its pieces.
 */
export function html(template: TemplateStringsArray, ...contents: readonly Content[]): Markup {
  const pieces = template.map((piece, index) => piece + written(contents[index] ?? ""));
  return { markup: pieces.join("") };
}

/** A text with the parts between backticks as code. */
export function prose(sentence: string): Content {
  return sentence
    .split("`")
    .map((piece, index) => (index % 2 === 1 ? html`<code>${piece}</code>` : piece));
}

/** A formula as code. A line can break after its commas. */
export function formulaCode(formula: string): Markup {
  const pieces = formula.split(/(?<=[,;])/);
  const breaking = pieces.map((piece, index) => [index > 0 ? html`<wbr />` : "", piece]);
  return html`<code>${breaking}</code>`;
}

/** Items in one line: "a, b and c", or with commas only. */
export function listed(items: readonly Content[], lastSeparator: " and" | "," = " and"): Content {
  return items.map((item, index) => [
    index === 0 ? "" : index === items.length - 1 ? `${lastSeparator} ` : ", ",
    item,
  ]);
}
