import type { KindHelp } from "../functions/arguments/argumentKind";
import { kindsOf, type FunctionHelp, type HelpArgument } from "./helpModel";
import { html, listed, prose, type Content, type Markup } from "./markup";

function argumentEntry({ name, description, optional, kind }: HelpArgument): Markup {
  return html`<dt>
      <code>${name}</code> <a href="#kind-${kind.id}">${kind.title}</a>
      ${optional ? html`<span>optional</span>` : ""}
    </dt>
    <dd>${description}</dd>`;
}

function examplesOf(label: string, values: readonly string[]): Content {
  if (values.length === 0) return "";
  const codes = values.map((value) => html`<code>${value}</code>`);
  return html`<p>${label}: ${listed(codes, ",")}</p>`;
}

/** The page with the words that a kind accepts. */
const PAGE_OF_KIND: Readonly<Record<string, readonly [file: string, title: string]>> = {
  "item-rows": ["labels.html", "Return item labels"],
  "payment-item-rows": ["labels.html", "Return item labels"],
  "change-rows": ["labels.html", "Return item labels"],
  "client-list": ["headings.html", "Client list headings"],
  "table-name": ["tables.html", "Dates covered by the rule tables"],
};

function linkToPage(kind: string): Content {
  const [file, title] = PAGE_OF_KIND[kind] ?? [];
  return file === undefined || title === undefined
    ? ""
    : html`<p>See <a href="${file}">${title}</a>.</p>`;
}

function kindEntry({ id, title, description, accepted, notAccepted }: KindHelp): Markup {
  return html`<h3 id="kind-${id}">${title}</h3>
    <p>${prose(description)}</p>
    ${examplesOf("Accepted", accepted)} ${examplesOf("Not accepted", notAccepted)} ${linkToPage(id)}`;
}

/**
 * The arguments of a function, and how to enter those of each kind.
 *
 * @param help - The function.
 * @returns Two sections; one sentence where it has no arguments.
 */
export function argumentsSection(help: FunctionHelp): Markup {
  if (help.arguments.length === 0)
    return html`<section aria-labelledby="arguments">
      <h2 id="arguments">Arguments</h2>
      <p>None. Type the parentheses with nothing between them.</p>
    </section>`;
  return html`<section aria-labelledby="arguments">
      <h2 id="arguments">Arguments</h2>
      <dl>${help.arguments.map(argumentEntry)}</dl>
    </section>
    <section aria-labelledby="kinds">
      <h2 id="kinds">How to enter them</h2>
      <p>
        Refer to a cell, or type the value into the formula as shown below. To skip an optional
        argument, keep its comma.
      </p>
      ${kindsOf(help.arguments).map(kindEntry)}
    </section>`;
}
