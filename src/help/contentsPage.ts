import { TASKS } from "../functions/catalog";
import type { Help } from "./helpModel";
import { html, type Markup } from "./markup";
import { pageFrame } from "./pageFrame";
import { topics } from "./topics";

function taskSection(task: string, { functions }: Help): Markup {
  return html`<h3>${task}</h3>
    <dl>
      ${functions
        .filter((one) => one.task === task)
        .map(
          ({ name, purpose }) =>
            html`<dt><a href="${name}.html">${name}</a></dt>
              <dd>${purpose}</dd>`
        )}
    </dl> `;
}

/**
 * The page that lists every function by task, and the other pages.
 *
 * @param help - The whole help.
 * @returns The text of the file.
 */
export function contentsPage(help: Help): string {
  return pageFrame({
    title: "Help: Extension Season",
    heading: "Help",
    body: html`<p>
        Extension Season ${help.version} adds worksheet functions for extensions of time to file
        (Form 4868). Type <code>=EXT.</code> in a cell to see them. Each function has a page with
        examples, arguments, errors and the law behind it.
      </p>
      <section aria-labelledby="functions">
        <h2 id="functions">Functions by task</h2>
        ${TASKS.map(({ title }) => taskSection(title, help))}
      </section>
      <section aria-labelledby="topics">
        <h2 id="topics">Other pages</h2>
        <dl>
          ${topics(help).map(
            ({ file, title, summary }) =>
              html`<dt><a href="${file}">${title}</a></dt>
                <dd>${summary}</dd>`
          )}
        </dl>
      </section>`,
    footer: html`<p><a href="#main">Back to the top</a></p>`,
  });
}
