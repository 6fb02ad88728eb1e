import { coverageDateText } from "../addin/guide/coverageDate";
import type { RuleTableSummary } from "../rules/ruleTables";
import type { FunctionHelp } from "./helpModel";
import { html, type Content, type Markup } from "./markup";

function tablesOf({ name, tables }: FunctionHelp): Content {
  const all = html`<a href="tables.html">All rule tables</a>`;
  if (tables.length === 0)
    return ["SOURCE", "KNOWNTHROUGH", "RULETABLES"].includes(name)
      ? html`<p>It looks up the rule tables themselves. ${all}</p>`
      : html`<p>It uses no rule table. ${all}</p>`;
  const row = ({ id, title, knownThrough }: RuleTableSummary): Markup =>
    html`<tr>
      <th scope="row"><a href="tables.html#table-${id}">${title}</a></th>
      <td>${coverageDateText(knownThrough)}</td>
    </tr>`;
  return html`<table class="tables">
      <thead>
        <tr>
          <th scope="col">Rule table</th>
          <th scope="col">Covers through</th>
        </tr>
      </thead>
      <tbody>
        ${tables.map(row)}
      </tbody>
    </table>
    <p>
      For a later date the function returns <code>#N/A</code>.
      <a href="SOURCE.html"><code>EXT.SOURCE</code></a> gives the citation for a figure. ${all}
    </p>`;
}

/**
 * The law behind a function and the rule tables it may use.
 *
 * @param help - The function.
 * @returns Two sections; the law is left out where the function states none.
 */
export function rulesSection(help: FunctionHelp): Markup {
  const law =
    help.law.length === 0
      ? ""
      : html`<section aria-labelledby="law">
          <h2 id="law">Law and official texts</h2>
          <ul>
            ${help.law.map((citation) => html`<li>${citation}</li>`)}
          </ul>
        </section>`;
  return html`${law}
    <section aria-labelledby="rules">
      <h2 id="rules">Rule tables</h2>
      ${tablesOf(help)}
    </section>`;
}
