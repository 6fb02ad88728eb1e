import { useEffect, useMemo } from "preact/hooks";
import { AnswerChoice } from "./answerChoice";
import { HeadingTable } from "./headingTable";
import { answerColumnsOf } from "./listColumns";
import { listCheck, type ListCheck } from "./listFaults";
import { FaultList, TotalsLine } from "./faultList";
import { listReading, withMeaning } from "./listReading";
import { headingsBeyond, meaningsIn, usersOwn } from "./ownList";
import type { PaneSettings } from "./rosterAnswers";
import type { UsedList } from "./useUsedList";
import {
  NotDone,
  type FilledColumns,
  type SelectedList,
  type WorkbookHost,
} from "../workbook/workbookHost";

/** What {@link ListPanel} shows. */
interface ListPanelProps {
  readonly used: UsedList;
  readonly list: SelectedList;
  readonly settings: PaneSettings;
  readonly workbook: WorkbookHost;
  /** Does the work and says what was done or why not. */
  readonly run: (work: () => Promise<string>) => void;
}

/** Cells that are marked; a list with more faults has a cause that the first ones show. */
const MOST_MARKED = 200;

/** The button that writes the answers. */
const WRITE_ANSWERS = "Write the answers";

const counted = (count: number, one: string): string => `${count} ${one}${count === 1 ? "" : "s"}`;

/** What was written, in a sentence or two. */
function filledText({ address, updated, undoSteps }: FilledColumns, columns: number): string {
  const added = columns - updated;
  const parts = [
    ...(added > 0 ? [`added ${counted(added, "column")}`] : []),
    ...(updated > 0 ? [`updated ${counted(updated, "column")}`] : []),
  ].join(" and ");
  const done = `${parts.charAt(0).toUpperCase()}${parts.slice(1)} in ${address}.`;
  if (undoSteps === undefined) return done;
  return `${done} ${undoSteps === 1 ? "One Undo takes this back." : `Select Undo ${undoSteps} times to take this back.`}`;
}

/** The check of a list; a sentence if its settings or headings cannot be read. */
function checkOf(work: () => ListCheck): ListCheck | string {
  try {
    return work();
  } catch (thrown) {
    if (thrown instanceof NotDone) return thrown.message;
    throw thrown;
  }
}

/** What is known of the user's list: how its headings are read, its totals, its unreadable cells, and the answers to choose. */
export function ListPanel({ used, list, settings, workbook, run }: ListPanelProps) {
  const { answers } = used;
  const mine = useMemo(() => usersOwn(list), [list]);
  const own = useMemo(() => meaningsIn(mine, used.own), [mine, used.own]);
  const reading = useMemo(
    () => listReading(mine, settings.taxYear, own),
    [mine, settings.taxYear, own]
  );
  const { taxYear, asOf, assumedRate } = settings;
  const check = useMemo(
    () => (reading.problem === "" ? checkOf(() => listCheck(mine, settings, own)) : undefined),
    [mine, reading, taxYear, asOf, assumedRate, own]
  );
  const faults = typeof check === "object" ? check.faults : [];
  const places = faults
    .slice(0, MOST_MARKED)
    .map(({ address }) => address)
    .join();
  useEffect(() => {
    const addresses = places === "" ? [] : places.split(",");
    workbook.markCells?.(list.sheet, addresses).catch(() => undefined);
  }, [places, list.sheet, workbook]);
  const beyond = headingsBeyond(list);
  const problem = reading.problem || (typeof check === "string" ? check : "");
  return (
    <section aria-label="Your list">
      <p>
        {list.table === undefined ? "List" : `Table ${list.table}`} on the sheet {list.sheet},
        headings in row {list.headingRow}, {counted(list.rows.length, "row")}.
      </p>
      <HeadingTable
        headings={reading.headings}
        choose={(heading, means) => {
          used.setOwn(withMeaning(own, heading, means));
        }}
      />
      {beyond.length > 0 && (
        <p>
          Not read, because it is to the right of the answers: {beyond.join(", ")}. Move it to their
          left.
        </p>
      )}
      {problem !== "" && (
        <p class="error" role="alert">
          {problem}
        </p>
      )}
      {typeof check === "object" && (
        <>
          <FaultList
            faults={check.faults}
            goTo={(address) => {
              run(async () => {
                await workbook.goTo?.({ sheet: list.sheet, address });
                return `Selected cell ${address}.`;
              });
            }}
          />
          <TotalsLine totals={check.totals} />
        </>
      )}
      <AnswerChoice chosen={answers} choose={used.setAnswers} />
      <div class="buttons">
        <fluent-button
          appearance="primary"
          disabled={problem !== "" || answers.length === 0}
          onClick={() => {
            if (problem !== "" || answers.length === 0) return;
            run(async () => {
              const columns = answerColumnsOf(list, settings, answers, own);
              const filled = await workbook.fillColumns?.(list, columns);
              await used.readAgain();
              return filled ? filledText(filled, columns.length) : "";
            });
          }}
        >
          {WRITE_ANSWERS}
        </fluent-button>
        <fluent-button
          onClick={() => {
            run(async () => {
              await workbook.markCells?.(list.sheet, []);
              used.close();
              return "";
            });
          }}
        >
          Close
        </fluent-button>
      </div>
    </section>
  );
}
