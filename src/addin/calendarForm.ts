import { FILER_TYPES } from "../calculation/filerType";
import { STATES } from "../calculation/state";
import { element } from "./element";
import { liveAnswer } from "./liveAnswer";
import { renderAnswer } from "./renderAnswer";

function choice(
  id: string,
  label: string,
  words: readonly string[]
): [HTMLElement, HTMLSelectElement] {
  const select = element(
    "select",
    ...words.map((word) => {
      const option = element("option", word === "" ? "any other" : word);
      option.value = word;
      return option;
    })
  );
  select.id = id;
  const caption = element("label", label);
  caption.htmlFor = id;
  return [element("div", caption, select), select];
}

/**
 * The deadlines for a tax year, a state of residence and a filer type, as CALENDAR returns them.
 *
 * @param latestYear - The tax year shown first.
 * @returns The form with the table below it.
 */
export function calendarForm(latestYear: number): HTMLElement {
  const year = element("input");
  year.type = "number";
  year.id = "calendar-year";
  year.value = String(latestYear);
  const yearLabel = element("label", "Tax year");
  yearLabel.htmlFor = year.id;
  const [stateField, state] = choice("calendar-state", "State of residence", ["", ...STATES]);
  const [filerField, filerType] = choice("calendar-filer", "Filer type", FILER_TYPES);
  const table = element("div");
  table.setAttribute("aria-live", "polite");
  const show = (): void => {
    // If the answer fails, no table of another year stays on the page.
    table.replaceChildren();
    const formula = `=EXT.CALENDAR(${String(Math.trunc(Number(year.value)))},"${state.value}","${filerType.value}")`;
    table.replaceChildren(
      renderAnswer(liveAnswer(formula), `Deadlines for tax year ${year.value}`)
    );
  };
  for (const field of [year, state, filerType]) field.addEventListener("change", show);
  show();
  const fields = element("div", element("div", yearLabel, year), stateField, filerField);
  fields.className = "fields";
  return element("div", fields, table);
}
