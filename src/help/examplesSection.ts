import type { Example } from "./example";
import type { FunctionHelp } from "./helpModel";
import { formulaCode, html, type Content, type Markup } from "./markup";
import { remarkOf, shownCell } from "./shownAnswer";
import { columnLetters } from "../host/cellAddress";
import type { AnswerCell } from "../host/cellValues";

/** Rows of a spilled table that a page shows. */
const MOST_ROWS = 15;

function cell(given: AnswerCell): Markup {
  const { text, isNumber } = shownCell(given);
  return isNumber ? html`<td class="number">${text}</td>` : html`<td>${text}</td>`;
}

const isTable = ({ answer }: Example): boolean => answer.length > 1 || (answer[0]?.length ?? 0) > 1;

function oneCellExamples(examples: readonly Example[]): Content {
  if (examples.length === 0) return "";
  const remarks = examples.map(({ words }) => remarkOf(words));
  const remarked = remarks.some((remark) => remark !== "");
  const rows = examples.map(
    ({ formula, answer }, index) =>
      html`<tr>
        <th scope="row">${formulaCode(formula)}</th>
        <td>${shownCell(answer[0]?.[0] ?? {}).text}</td>
        ${remarked ? html`<td>${remarks[index] ?? ""}</td>` : ""}
      </tr>`
  );
  return html`<table class="examples">
    <thead>
      <tr>
        <th scope="col">Formula</th>
        <th scope="col">The cell shows</th>
        ${remarked ? html`<th scope="col">Remark</th>` : ""}
      </tr>
    </thead>
    <tbody>
      ${rows}
    </tbody>
  </table>`;
}

/** What the words say of a table, which they describe. */
function sentence(words: string): string {
  const end = words.endsWith(".") ? "" : ".";
  return words.charAt(0).toUpperCase() + words.slice(1) + end;
}

function spilledExample({ formula, words, answer }: Example): Markup {
  const letters = (answer[0] ?? []).map((_cell, index) => columnLetters(index + 1));
  const rows = answer.slice(0, MOST_ROWS).map(
    (row, index) =>
      html`<tr>
        <th scope="row">${index + 1}</th>
        ${row.map(cell)}
      </tr>`
  );
  const left = answer.length - MOST_ROWS;
  const more =
    left > 0 ? html`<p>${left} more ${left === 1 ? "row follows" : "rows follow"}.</p>` : "";
  return html`<p class="formula">${formulaCode(formula)}</p>
    <p>${sentence(words)}</p>
    <div class="sheet" role="region" aria-label="What ${formula} spills" tabindex="0">
      <table>
        <thead>
          <tr>
            <td></td>
            ${letters.map((letter) => html`<th scope="col">${letter}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${rows}
        </tbody>
      </table>
    </div>
    ${more}`;
}

/**
 * The examples of a function with the answers of the built add-in, as a sheet shows them.
 *
 * @param help - The function.
 * @param version - Of the add-in that answered.
 * @returns A section.
 */
export function examplesSection(help: FunctionHelp, version: string): Markup {
  const { examples } = help;
  return html`<section aria-labelledby="examples">
    <h2 id="examples">Examples</h2>
    ${oneCellExamples(examples.filter((example) => !isTable(example)))}
    ${examples.filter(isTable).map(spilledExample)}
    <p class="quiet">
      Answered by version ${version} of the add-in. For another year or day ask the function:
      figures change from year to year.
    </p>
  </section>`;
}
