import { answerUnits } from "./answerUnits";
import type { FunctionHelp } from "./helpModel";
import { formulaCode, html, listed, prose, type Content, type Markup } from "./markup";
import { calledOnList } from "./signature";

function rowForm(help: FunctionHelp): Markup {
  return html`<p>
      Each argument can be one cell, a column or a row of cells. Ranges used together must have the
      same number of cells, and a single cell applies to every client. For a client list with its
      headings in row 1, you can enter:
    </p>
    <ul>
      <li>one formula per client, filled down: ${formulaCode(calledOnList(help, "first row"))}</li>
      <li>
        one formula for the whole list, which fills the cells below:
        ${formulaCode(calledOnList(help, "whole list"))}
      </li>
    </ul>
    <p>
      A row that cannot be calculated shows its own error, and the other rows are still calculated.
      For a blank row, the answer is blank. Inside an Excel table, use one formula per client.
    </p>`;
}

function rangeArguments({ arguments: given }: FunctionHelp): Content {
  const ranges = given
    .filter(({ isRange }) => isRange)
    .map(({ name }) => html`<code>${name}</code>`);
  if (given.length === 0) return "";
  if (ranges.length === 0)
    return html`<p>Each argument is one cell: the function answers for one client at a time.</p>`;
  return html`<p>
    ${listed(ranges)} ${ranges.length > 1 ? "are ranges" : "is a range"} of cells. Every other
    argument is one cell.
  </p>`;
}

function form(help: FunctionHelp): Content {
  switch (help.form) {
    case "row":
      return rowForm(help);
    case "table":
      return html`<p>
          The answer is a table that fills cells to the right of the formula and below it. Leave
          those cells empty, and do not put the formula inside an Excel table.
        </p>
        ${rangeArguments(help)}`;
    case "cell":
      return html`<p>The answer is one cell, so the formula also works inside an Excel table.</p>
        ${rangeArguments(help)}`;
  }
}

/**
 * What a function returns: its note, the units and the rounding, and how many cells it takes and fills.
 *
 * @param help - The function.
 * @returns A section.
 */
export function answerSection(help: FunctionHelp): Markup {
  return html`<section aria-labelledby="answer">
    <h2 id="answer">Answer</h2>
    ${help.note === undefined ? "" : html`<p>${prose(help.note)}</p>`}
    ${answerUnits(help.examples).map((sentence) => html`<p>${sentence}</p>`)} ${form(help)}
  </section>`;
}
