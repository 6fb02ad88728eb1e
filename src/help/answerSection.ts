import { answerUnits } from "./answerUnits";
import type { FunctionHelp } from "./helpModel";
import { formulaCode, html, prose, type Content, type Markup } from "./markup";
import { calledOnList } from "./signature";

function rowShape(help: FunctionHelp): Markup {
  return html`<p>
      Each argument takes one cell, a column or a row of cells. Columns of equal length go together,
      single cells repeat, and a column in gives a column out. On a client list with its headings in
      row 1:
    </p>
    <ul>
      <li>row by row, filled down: ${formulaCode(calledOnList(help, "first row"))}</li>
      <li>
        the whole list in one call, which spills: ${formulaCode(calledOnList(help, "whole list"))}
      </li>
    </ul>
    <p>
      A row that cannot be answered shows its own error and the others stand; an empty row shows
      empty text. Inside an Excel table use the first way, since nothing can spill there.
    </p>`;
}

function named(names: readonly string[]): Content {
  return names.map((name, index) => [
    index === 0 ? "" : index === names.length - 1 ? " and " : ", ",
    html`<code>${name}</code>`,
  ]);
}

function blocks({ arguments: given }: FunctionHelp): Content {
  const ranges = given.filter(({ isRange }) => isRange).map(({ name }) => name);
  if (given.length === 0) return "";
  if (ranges.length === 0)
    return html`<p>Each argument takes one cell: it answers for one client at a time.</p>`;
  return html`<p>
    ${named(ranges)} ${ranges.length > 1 ? "take" : "takes"} a block of cells, every other argument
    one cell.
  </p>`;
}

function shape(help: FunctionHelp): Content {
  switch (help.shape) {
    case "row":
      return rowShape(help);
    case "table":
      return html`<p>
          The answer is a table that spills to the right of the formula and below it. Leave those
          cells empty, and put the formula outside Excel tables.
        </p>
        ${blocks(help)}`;
    case "cell":
      return html`<p>
          The answer is one cell. It does not spill, so it can stand inside an Excel table.
        </p>
        ${blocks(help)}`;
  }
}

/**
 * What a function answers, in which unit and rounding, and how far it reaches over a sheet.
 *
 * @param help - The function.
 * @returns Two sections.
 */
export function answerSection(help: FunctionHelp): Markup {
  return html`<section aria-labelledby="answer">
      <h2 id="answer">Answer</h2>
      <p>${prose(help.answer)}</p>
      ${answerUnits(help.examples).map((told) => html`<p>${told}</p>`)}
    </section>
    <section aria-labelledby="reach">
      <h2 id="reach">A cell or a column</h2>
      ${shape(help)}
    </section>`;
}
