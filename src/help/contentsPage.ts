import type { FunctionHelp, Help } from "./helpModel";
import { html, type Markup } from "./markup";
import { pageFrame } from "./pageFrame";
import { everyTableSection } from "./rulesSection";

function taskSection(task: string, functions: readonly FunctionHelp[]): Markup {
  return html`<h3>${task}</h3>
    <dl>
      ${functions.map(
        ({ name, purpose }) =>
          html`<dt><a href="${name}.html">${name}</a></dt>
            <dd>${purpose}</dd>`
      )}
    </dl> `;
}

/**
 * The page that lists every function by task, and every table of the rules.
 *
 * @param help - The whole of the help.
 * @returns The text of the file.
 */
export function contentsPage(help: Help): string {
  const tasks = [...new Set(help.functions.map(({ task }) => task))];
  const sections = tasks.map((task) =>
    taskSection(
      task,
      help.functions.filter((one) => one.task === task)
    )
  );
  return pageFrame({
    title: "Function help: Extension Season",
    heading: "Function help",
    body: html`<p>
        Worksheet functions for the federal extension request (Form 4868), version ${help.version}.
        Type <code>=EXT.</code> in a cell to see them; each has a page here with examples,
        arguments, errors and the law behind it.
      </p>
      <section aria-labelledby="functions">
        <h2 id="functions">Functions by task</h2>
        ${sections}
      </section>
      ${everyTableSection(help)}`,
    footer: html`<p><a href="#main">Back to the top</a></p>`,
  });
}
