import { render } from "preact";
import { Guide } from "../../addin/guide";
import { followTheme } from "../../addin/theme";
import type { WorkbookHost } from "../../addin/workbook/workbookHost";
import { SAMPLE_DATE } from "../season/assumptionsSheet";

/**
 * Shows the guide of the add-in beside the grid. Its buttons work on the workbook in the grid. It is in a shadow tree, which the styles
 * of the page of the add-in apply to, and those of the grid do not.
 *
 * @param place - The element to fill.
 * @param workbook - The workbook that the buttons work on.
 */
export function showGuide(place: HTMLElement, workbook: WorkbookHost): void {
  followTheme(undefined);
  render(
    <>
      <link rel="stylesheet" href="addin.css" />
      <div class="pane">
        <Guide folder="" workbook={workbook} today={() => SAMPLE_DATE} />
      </div>
    </>,
    place.attachShadow({ mode: "open" })
  );
}
