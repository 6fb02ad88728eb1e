import type { AnswerShape, FunctionHelp } from "./helpModel";
import { html, prose, type Content, type Markup } from "./markup";

/** What to do about the errors that carry a sentence. */
const REMEDIES: Readonly<Record<string, string>> = {
  "#VALUE!":
    "Select the cell and open the sign beside it: the sentence there names the argument, says what came and what is wanted.",
  "#N/A":
    "The sentence behind the sign names the table and the days for which it is known. Last year's figure is never shown as this year's: wait for a newer edition, or work the figure out by hand.",
};

const ASSUMED_RATE = " For interest an assumed rate may be given.";

interface ErrorRow {
  readonly code: string;
  readonly when: string;
  readonly remedy: string;
}

const ANY_OTHER = "Any other error";

const SPILLING: Readonly<Record<AnswerShape, string | undefined>> = {
  row: "where columns are given and cells below are not empty, or the formula stands inside an Excel table",
  table: "where cells the answer needs are not empty, or the formula stands inside an Excel table",
  cell: undefined,
};

/** Errors that the spreadsheet itself shows before a function is asked. */
const FROM_HOST: readonly ErrorRow[] = [
  {
    code: "#BUSY!",
    when: "while the add-in is still starting",
    remedy: "Wait a little. If it stays, open the function guide once and press Ctrl+Alt+F9.",
  },
  {
    code: "#NAME?",
    when: "where the name is mistyped, or the add-in is not loaded on this machine",
    remedy: "Check the name, load the add-in, open the function guide once and press Ctrl+Alt+F9.",
  },
  {
    code: ANY_OTHER,
    when: "where a cell among the arguments holds it",
    remedy: "Mend that cell; its error is passed through.",
  },
];

function errorRows({ refusals, shape, arguments: given }: FunctionHelp): readonly ErrorRow[] {
  const takesRate = given.some(({ kind }) => kind === "assumed-rate");
  const own = refusals.map(({ code, when }) => ({
    code,
    when,
    remedy: (REMEDIES[code] ?? "") + (code === "#N/A" && takesRate ? ASSUMED_RATE : ""),
  }));
  const fromHost = FROM_HOST.filter(({ code }) => code !== ANY_OTHER || given.length > 0);
  const spills = SPILLING[shape];
  const remedy = "Empty those cells, or move the formula.";
  const spill = spills === undefined ? [] : [{ code: "#SPILL!", when: spills, remedy }];
  return [...own, ...spill, ...fromHost];
}

function codeOf(code: string): Content {
  return code.startsWith("#") ? html`<code>${code}</code>` : code;
}

/**
 * The errors a function may show, when, and what to do.
 *
 * @param help - The function.
 * @returns A section.
 */
export function errorsSection(help: FunctionHelp): Markup {
  const rows = errorRows(help).map(
    ({ code, when, remedy }) =>
      html`<dt>${codeOf(code)} ${prose(when)}</dt>
        <dd>${remedy}</dd>`
  );
  return html`<section aria-labelledby="errors">
    <h2 id="errors">When the answer is an error</h2>
    <dl>${rows}</dl>
  </section>`;
}
