import { errorsOf, type ErrorHelp } from "./errorHelp";
import type { FunctionHelp } from "./helpModel";
import { html, prose, type Markup } from "./markup";

/** Errors with their cause and remedy, as a list of definitions. */
function errorList(errors: readonly ErrorHelp[]): Markup {
  const entries = errors.map(
    ({ code, cause, remedy }) =>
      html`<dt>${prose(code)} ${cause}</dt>
        <dd>${prose(remedy)}</dd>`
  );
  return html`<dl>${entries}</dl>`;
}

/**
 * The errors that a function may show.
 *
 * @param help - The function.
 * @returns A section.
 */
export function errorsSection(help: FunctionHelp): Markup {
  return html`<section aria-labelledby="errors">
    <h2 id="errors">Errors</h2>
    ${errorList(errorsOf(help))}
  </section>`;
}
