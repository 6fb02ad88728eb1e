import { useMemo, useState } from "preact/hooks";
import { FILER_TYPES } from "../../calculation/filerType";
import { ClientCurve } from "./clientCurve";
import { clientFacts } from "./clientFacts";
import { ClientFigures, ClientProblems, WaitingCosts } from "./clientFigures";
import { clientRow } from "../list/clientRow";
import { ChoiceField, EntryField, FILER_OPTIONS, STATE_OPTIONS } from "../formFields";
import type { PaneSettings } from "../list/rosterAnswers";
import type { SelectedList } from "../workbook/workbookHost";

/** What the user types for a client who is in no list, as text. */
export interface TypedClient {
  readonly taxYear: string;
  readonly state: string;
  readonly filerType: string;
  readonly totalTax: string;
  readonly payments: string;
}

/**
 * A list of one row for a client who is in no list.
 *
 * @param typed - What the user typed.
 */
function typedList({ taxYear, state, filerType, totalTax, payments }: TypedClient): SelectedList {
  const year = /^\d{1,4}$/.test(taxYear.trim()) ? Number(taxYear) : taxYear;
  return {
    sheet: "",
    headingRow: 0,
    firstColumn: 1,
    headings: ["Tax year", "State", "Filer type", "Estimated total tax", "Total payments"],
    rows: [[year, state, filerType, totalTax, payments]],
    formulas: [["", "", "", "", ""]],
    selectedRow: 0,
  };
}

/** The sentences about what was typed, without the addresses of cells that do not exist. */
function withoutCells(sentence: string): string {
  return sentence.replace(/^Cell [A-Z]+\d+ \(([^)]*)\): /, "$1: ");
}

/** The year, state and filer type of a client who is in no list, and the dates that follow at once. Amounts are optional. */
export function TypedClientView({ settings }: { readonly settings: PaneSettings }) {
  const [typed, setTyped] = useState<TypedClient>({
    taxYear: String(settings.taxYear),
    state: "",
    filerType: FILER_TYPES[0],
    totalTax: "",
    payments: "",
  });
  const answered = useMemo(() => {
    const client = clientRow(typedList(typed), 0, settings.taxYear);
    if (!client) return undefined;
    const { problems, ...found } = clientFacts(client, settings);
    const isGiven = typed.totalTax !== "" && typed.payments !== "";
    const said = problems.map(withoutCells);
    // An amount that is not typed yet is no fault.
    const shown = isGiven ? said : said.filter((one) => !one.includes("blank"));
    return { client, facts: { ...found, problems: shown } };
  }, [typed, settings]);
  const entering = (name: keyof TypedClient, label: string) => ({
    id: `typed-${name}`,
    label,
    value: typed[name],
    enter: (value: string): void => {
      setTyped({ ...typed, [name]: value });
    },
  });
  return (
    <>
      <div class="fields typed">
        <EntryField {...entering("taxYear", "Tax year")} />
        <ChoiceField {...entering("state", "State")} options={STATE_OPTIONS} />
        <ChoiceField {...entering("filerType", "Filer type")} options={FILER_OPTIONS} />
        <EntryField {...entering("totalTax", "Estimated total tax (optional)")} />
        <EntryField {...entering("payments", "Total payments (optional)")} />
      </div>
      <div aria-live="polite">
        {answered && (
          <>
            <ClientFigures facts={answered.facts} isTyped />
            <ClientProblems facts={answered.facts} />
            {answered.facts.answers["Balance due"].text !== "" && (
              <>
                <WaitingCosts facts={answered.facts} isTyped />
                <ClientCurve client={answered.client} settings={settings} />
              </>
            )}
          </>
        )}
      </div>
    </>
  );
}
