import { knownThroughText } from "../addin/renderTables";
import type { RuleTableSummary } from "../rules/ruleTables";
import type { FunctionHelp, Help } from "./helpModel";
import { html, type Content, type Markup } from "./markup";

function tableRow({ id, title, knownThrough }: RuleTableSummary, isLinked: boolean): Markup {
  const name = isLinked ? html`<a href="index.html#table-${id}">${title}</a>` : title;
  return html`<tr id="table-${id}">
    <th scope="row">${name} <code>${id}</code></th>
    <td>${knownThroughText(knownThrough)}</td>
  </tr>`;
}

function tableOf(tables: readonly RuleTableSummary[], isLinked: boolean): Markup {
  return html`<table class="tables">
    <thead>
      <tr>
        <th scope="col">Table of the rules</th>
        <th scope="col">Known through</th>
      </tr>
    </thead>
    <tbody>
      ${tables.map((table) => tableRow(table, isLinked))}
    </tbody>
  </table>`;
}

function tablesOf({ tables, everyTable }: FunctionHelp, version: string): Content {
  if (everyTable)
    return html`<p>
      It looks into every table of the rules: <a href="index.html#tables">all of them</a>.
    </p>`;
  if (tables.length === 0) return html`<p>It uses no table of figures.</p>`;
  return html`<p>
      It may use these tables, in the edition of version ${version}. Beyond the day shown it answers
      <code>#N/A</code> rather than an old figure.
      <a href="RULETABLES.html"><code>EXT.RULETABLES</code></a> lists every table in a sheet,
      <a href="SOURCE.html"><code>EXT.SOURCE</code></a> says where a figure comes from.
    </p>
    ${tableOf(tables, true)}`;
}

/**
 * The law behind a function and the tables it uses.
 *
 * @param help - The function.
 * @param version - Of the add-in.
 * @returns Two sections; the law is left out where the function is no matter of law.
 */
export function rulesSection(help: FunctionHelp, version: string): Markup {
  const law =
    help.law.length === 0
      ? ""
      : html`<section aria-labelledby="law">
          <h2 id="law">Law and official text</h2>
          <ul>
            ${help.law.map((citation) => html`<li>${citation}</li>`)}
          </ul>
        </section>`;
  return html`${law}
    <section aria-labelledby="rules">
      <h2 id="rules">Rules it rests on</h2>
      ${tablesOf(help, version)}
    </section>`;
}

/**
 * Every table of the rules, for the contents page.
 *
 * @param help - The whole of the help.
 * @returns A section whose rows the pages link to.
 */
export function everyTableSection(help: Help): Markup {
  return html`<section aria-labelledby="tables">
    <h2 id="tables">Rules in force</h2>
    <p>
      The tables of version ${help.version}. Figures are known through the day shown; a function
      that needs a later one answers <code>#N/A</code> rather than an old figure, unless an assumed
      rate is given. Postponements are those announced by the day shown.
    </p>
    ${tableOf(help.tables, false)}
  </section>`;
}
