import { argumentKinds, type KindName } from "./argumentKinds";
import type { FunctionHelp, HelpArgument } from "./helpModel";
import { html, prose, type Content, type Markup } from "./markup";

function argumentEntry({ name, meaning, optional, kind }: HelpArgument): Markup {
  const title = kind ? html`<a href="#kind-${kind}">${argumentKinds[kind].title}</a>` : "";
  return html`<dt>
      <code>${name}</code> ${title} ${optional ? html`<span>may be left out</span>` : ""}
    </dt>
    <dd>${meaning}</dd>`;
}

function written(word: string, forms: readonly string[]): Content {
  if (forms.length === 0) return "";
  const codes = forms.map((form, index) => [index > 0 ? ", " : "", html`<code>${form}</code>`]);
  return html`<p>${word}: ${codes}</p>`;
}

function kindEntry(kind: KindName): Markup {
  const { title, told, taken, refused } = argumentKinds[kind];
  return html`<h3 id="kind-${kind}">${title}</h3>
    <p>${prose(told)}</p>
    ${written("Taken", taken)} ${written("Refused", refused)}`;
}

/**
 * The arguments of a function, and how those of each kind are given.
 *
 * @param help - The function.
 * @returns Two sections; one sentence where it has no arguments.
 */
export function argumentsSection(help: FunctionHelp): Markup {
  if (help.arguments.length === 0)
    return html`<section aria-labelledby="arguments">
      <h2 id="arguments">Arguments</h2>
      <p>None.</p>
    </section>`;
  const kinds = new Set(help.arguments.flatMap(({ kind }) => kind ?? []));
  return html`<section aria-labelledby="arguments">
      <h2 id="arguments">Arguments</h2>
      <dl>${help.arguments.map(argumentEntry)}</dl>
    </section>
    <section aria-labelledby="kinds">
      <h2 id="kinds">How they are given</h2>
      <p>
        As a cell, or written into the formula as below. An argument left out in the middle keeps
        its comma.
      </p>
      ${[...kinds].map(kindEntry)}
    </section>`;
}
