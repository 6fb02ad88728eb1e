import { columnLetters } from "../host/cellAddress";
import type { AnswerCell } from "../host/cellValues";
import { fillsSeveralCells, type AnsweredExample } from "./answeredExample";
import type { FunctionHelp } from "./helpModel";
import { formulaCode, html, prose, type Content, type Markup } from "./markup";
import { shownCell } from "./shownAnswer";

/** Rows of a table that a page shows. */
const MOST_ROWS = 15;

function tableCell(cell: AnswerCell): Markup {
  const { text, isNumber } = shownCell(cell);
  return isNumber ? html`<td class="number">${text}</td>` : html`<td>${text}</td>`;
}

function oneCellExamples(examples: readonly AnsweredExample[]): Content {
  if (examples.length === 0) return "";
  const hasRemarks = examples.some(({ remark }) => remark !== undefined);
  const rows = examples.map(
    ({ formula, cells, remark = "" }) =>
      html`<tr>
        <th scope="row">${formulaCode(formula)}</th>
        <td>${shownCell(cells[0]?.[0] ?? {}).text}</td>
        ${hasRemarks ? html`<td>${prose(remark)}</td>` : ""}
      </tr>`
  );
  return html`<table class="examples">
    <thead>
      <tr>
        <th scope="col">Formula</th>
        <th scope="col">Answer</th>
        ${hasRemarks ? html`<th scope="col">Remark</th>` : ""}
      </tr>
    </thead>
    <tbody>
      ${rows}
    </tbody>
  </table>`;
}

function tableExample({ formula, answer, remark, cells }: AnsweredExample): Markup {
  const letters = (cells[0] ?? []).map((_cell, index) => columnLetters(index + 1));
  const rows = cells.slice(0, MOST_ROWS).map(
    (row, index) =>
      html`<tr>
        <th scope="row">${index + 1}</th>
        ${row.map(tableCell)}
      </tr>`
  );
  const left = cells.length - MOST_ROWS;
  const more =
    left > 0 ? html`<p>${left} more ${left === 1 ? "row follows" : "rows follow"}.</p>` : "";
  return html`<p class="formula">${formulaCode(formula)}</p>
    ${remark === undefined ? "" : html`<p>${answer}: ${prose(remark)}.</p>`}
    <div class="sheet" role="region" aria-label="Answer of ${formula}" tabindex="0">
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
 * @param version - Version of the add-in that answered.
 * @returns A section.
 */
export function examplesSection({ examples }: FunctionHelp, version: string): Markup {
  const tables = examples.filter(fillsSeveralCells);
  return html`<section aria-labelledby="examples">
    <h2 id="examples">Examples</h2>
    ${oneCellExamples(examples.filter((example) => !fillsSeveralCells(example)))}
    ${tables.map(tableExample)}
    <p class="quiet">
      Calculated by version ${version} of the add-in. Figures change from year to year.
    </p>
  </section>`;
}
