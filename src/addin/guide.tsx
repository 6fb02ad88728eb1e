import { useEffect, useState } from "preact/hooks";
import { answerLook } from "./answerLook";
import { Deadlines } from "./deadlines";
import type { Diagnosis } from "./diagnosis";
import { DiagnosisTool } from "./diagnosisTool";
import { excelErrorSentence } from "./excelErrors";
import { FunctionList } from "./functionList";
import type { FunctionText } from "./functionText";
import { guideTexts } from "./guideTexts";
import { RuleTableList } from "./ruleTableList";
import { version } from "../rules/version";
import { NotDone, type Inserted, type WorkbookHost } from "./workbookHost";
import { RECALCULATE, WorkbookTools } from "./workbookTools";

/** Where the guide is shown, and the workbook that it works on. */
export interface GuideProps {
  /** The folder of functions.json and the help, with a slash at the end; empty if they are beside the page. */
  readonly folder: string;
  /** What to know of the host; empty if a workbook is open. */
  readonly note?: string;
  /** `undefined` if no workbook is open. */
  readonly workbook?: WorkbookHost | undefined;
  /** The as-of date of a new client list, such as 2026-04-01. */
  readonly today: () => string;
  /** What to copy for whoever helps with a problem; `undefined` outside the add-in. */
  readonly diagnosis?: Diagnosis;
}

/** Says that the answers in the workbook are those of another version. */
function newVersion(last: string): string {
  return `This workbook was last used with version ${last} of the add-in, and this is version ${version}. Select "${RECALCULATE}" to update its results.`;
}

function insertedText({ address, isWideEnough }: Inserted): string {
  const done = `Inserted the formula in cell ${address}.`;
  return isWideEnough
    ? done
    : `${done} The sheet does not allow a change of its columns. If a cell shows ########, widen the column.`;
}

/** The guide: tools if a workbook is open, functions, deadlines and rule tables. */
export function Guide({ folder, note = "", workbook, today, diagnosis }: GuideProps) {
  const [texts, setTexts] = useState<ReadonlyMap<string, FunctionText>>();
  const [status, setStatus] = useState("");
  useEffect(() => {
    void guideTexts(folder).then(setTexts);
  }, [folder]);
  useEffect(() => {
    workbook?.lastVersion?.().then(
      (last) => {
        if (last !== undefined && last !== version) setStatus(newVersion(last));
      },
      // A workbook that cannot be read now is read with the next button.
      () => undefined
    );
  }, [workbook]);
  const run = (work: () => Promise<string>): void => {
    setStatus("Please wait …");
    work().then(setStatus, (thrown: unknown) => {
      const isExplained = thrown instanceof NotDone;
      if (!isExplained) diagnosis?.noteError(thrown);
      const sentence = isExplained ? thrown.message : excelErrorSentence(thrown);
      setStatus(sentence ?? "The change could not be made.");
      if (sentence === undefined) throw thrown;
    });
  };
  const insert = workbook
    ? (formula: string): void => {
        run(async () => insertedText(await workbook.putFormula(formula, answerLook(formula))));
      }
    : undefined;
  return (
    <>
      {note !== "" && (
        <p id="outside" class="note" role="status">
          {note}
        </p>
      )}
      <section id="tools" aria-labelledby="tools-title">
        <h2 id="tools-title">Tools for this workbook</h2>
        {workbook ? (
          <WorkbookTools workbook={workbook} today={today} diagnosis={diagnosis} run={run} />
        ) : (
          <p class="note">
            Open this page from the Home tab of a workbook to add a client list, to insert an
            example in a cell, or to show how a result is calculated.
          </p>
        )}
        <p role="status">{status}</p>
        {diagnosis && <DiagnosisTool diagnosis={diagnosis} />}
      </section>
      <section id="functions" aria-labelledby="functions-title" tabIndex={-1}>
        <h2 id="functions-title">Functions by task</h2>
        <p>
          <a href={`${folder}help/index.html`} target="_blank" rel="noopener">
            Help for all functions
          </a>
        </p>
        <p>
          Open a function to see its arguments and examples. Arguments in square brackets are
          optional. An argument that cannot be read returns <code>#VALUE!</code>. A date that the
          rule tables do not cover returns <code>#N/A</code>. The error message says what to do.
        </p>
        {texts && <FunctionList texts={texts} folder={folder} insert={insert} />}
      </section>
      <section id="calendar" aria-labelledby="calendar-title">
        <h2 id="calendar-title">Deadlines for a tax year</h2>
        <Deadlines />
      </section>
      <section id="tables" aria-labelledby="tables-title">
        <h2 id="tables-title">Rule tables</h2>
        <p>
          The functions take their figures from these tables. For a date after the last one covered,
          they return <code>#N/A</code>, unless you enter an assumed interest rate. Check for
          disaster postponements announced later. An unverified entry was not read in a published
          text: check it against the official text.
        </p>
        <RuleTableList />
      </section>
    </>
  );
}
