import { html, prose, type Content } from "./markup";
import { pageFrame } from "./pageFrame";
import type { Block, Topic } from "./topics";

function blockContent(block: Block): Content {
  if (typeof block === "string") return html`<p>${prose(block)}</p>`;
  if ("items" in block)
    return html`<ul>
      ${block.items.map((item) => html`<li>${prose(item)}</li>`)}
    </ul>`;
  const entries = block.terms.map(({ id, term, text }) => [
    id === undefined ? html`<dt>${prose(term)}</dt>` : html`<dt id="${id}">${prose(term)}</dt>`,
    html`<dd>${prose(text)}</dd>`,
  ]);
  const heading = block.title === undefined ? "" : html`<h2>${block.title}</h2>`;
  return html`${heading}
    <dl>${entries}</dl>`;
}

/**
 * The page of a subject that concerns several functions.
 *
 * @param topic - The subject.
 * @returns The text of the file.
 */
export function topicPage({ title, blocks }: Topic): string {
  return pageFrame({
    title: `${title}: Extension Season`,
    heading: title,
    body: html`<p class="task"><a href="index.html#topics">Help</a></p>
      ${blocks.map(blockContent)}`,
    footer: html`<p><a href="index.html">All functions</a></p>`,
  });
}
