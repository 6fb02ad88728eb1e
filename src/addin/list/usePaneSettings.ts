import { useMemo, useState } from "preact/hooks";
import { parseCalendarDate } from "../../calendar/calendarDate";
import { usualTaxYear } from "./newClientList";
import type { PaneSettings } from "./rosterAnswers";

/** The as-of date and the assumed rate of the pane, which every part of it uses. */
export interface TypedPaneSettings {
  /** Such as 2026-04-01; another text while the date is not complete. */
  readonly asOf: string;
  readonly setAsOf: (asOf: string) => void;
  readonly assumedRate: string;
  readonly setAssumedRate: (assumedRate: string) => void;
  /** `undefined` while the date is not complete. */
  readonly settings: PaneSettings | undefined;
}

/** Says that the as-of date at the top of the pane is needed. */
export const NO_AS_OF_DATE = "The as-of date is not complete. Enter month, day and year.";

/** The settings, or `undefined` while the date is not complete. The season of a date is that of the tax year before. */
function settingsOf(asOfText: string, assumedRate: string): PaneSettings | undefined {
  const asOf = parseCalendarDate(asOfText);
  return asOf && { asOf, taxYear: usualTaxYear(asOf), assumedRate };
}

/** The as-of date and the assumed rate, as the user changes them. */
export function usePaneSettings(today: () => string): TypedPaneSettings {
  const [asOf, setAsOf] = useState(today);
  const [assumedRate, setAssumedRate] = useState("");
  const settings = useMemo(() => settingsOf(asOf, assumedRate), [asOf, assumedRate]);
  return { asOf, setAsOf, assumedRate, setAssumedRate, settings };
}
