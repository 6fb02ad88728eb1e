import type { ComponentChildren } from "preact";
import { useEffect, useState } from "preact/hooks";
import { answerLook } from "./answers/answerLook";
import { ClientPane } from "./client/clientPane";
import { Deadlines } from "./guide/deadlines";
import type { Diagnosis } from "./tools/diagnosis";
import { DiagnosisTool } from "./tools/diagnosisTool";
import { FunctionList } from "./guide/functionList";
import type { FunctionText } from "./guide/functionText";
import { guideTexts } from "./guide/guideTexts";
import { useNotices } from "./notice";
import { RuleTableList } from "./guide/ruleTableList";
import { usePaneSettings } from "./list/usePaneSettings";
import { version } from "../rules/version";
import type { Inserted, WorkbookHost } from "./workbook/workbookHost";
import { RECALCULATE, WorkbookTools } from "./tools/workbookTools";

/** Where the guide is shown, and the workbook that it works on. */
export interface GuideProps {
  /** The folder of functions.json and the help, with a slash at the end; empty if they are beside the page. */
  readonly folder: string;
  /** What to know of the host; empty if a workbook is open. */
  readonly note?: string;
  /** `undefined` if no workbook is open. */
  readonly workbook?: WorkbookHost | undefined;
  /** Today's date, such as 2026-04-01: the as-of date to begin with, and the date on what is made. */
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

/** A part of the guide that is folded until it is opened. */
function Fold({
  id,
  title,
  children,
}: {
  readonly id: string;
  readonly title: string;
  readonly children: ComponentChildren;
}) {
  return (
    <details id={id} class="fold" tabIndex={-1}>
      <summary>
        <h2>{title}</h2>
      </summary>
      {children}
    </details>
  );
}

/** The guide: the client and the practice first; then, folded, tools, functions, deadlines and rule tables. */
export function Guide({ folder, note = "", workbook, today, diagnosis }: GuideProps) {
  const [texts, setTexts] = useState<ReadonlyMap<string, FunctionText>>();
  const notices = useNotices(diagnosis);
  const { run, say } = notices;
  const pane = usePaneSettings(today);
  useEffect(() => {
    void guideTexts(folder).then(setTexts);
  }, [folder]);
  useEffect(() => {
    workbook?.lastVersion?.().then(
      (last) => {
        if (last !== undefined && last !== version) say(newVersion(last));
      },
      // A workbook that cannot be read now is read with the next button.
      () => undefined
    );
  }, [workbook]);
  const insert = workbook
    ? (formula: string): void => {
        run(async () => insertedText(await workbook.putFormula(formula, answerLook(formula))));
      }
    : undefined;
  return (
    <div class="guide">
      {note !== "" && (
        <p id="outside" class="note" role="status">
          {note}
        </p>
      )}
      <ClientPane workbook={workbook} pane={pane} notices={notices} />
      <Fold id="tools" title="Tools for this workbook">
        {workbook ? (
          <WorkbookTools
            workbook={workbook}
            today={today}
            settings={pane.settings}
            diagnosis={diagnosis}
            run={run}
          />
        ) : (
          <p class="note">
            Open this page from the Home tab of a workbook to see a selected client, to add a client
            list, to insert an example in a cell, or to show how a result is calculated.
          </p>
        )}
        {diagnosis && <DiagnosisTool diagnosis={diagnosis} />}
      </Fold>
      <Fold id="functions" title="Functions by task">
        <p>
          <a href={`${folder}help/index.html`} target="_blank" rel="noopener">
            Help for all functions
          </a>
        </p>
        <p>
          Type <code>=EXT.</code> in a cell, or open a function to see its arguments and examples.
          Arguments in square brackets are optional. An argument that is one value can also be a
          column; the answers then fill the rows below. An argument that cannot be read returns{" "}
          <code>#VALUE!</code>. A date that the rule tables do not cover returns <code>#N/A</code>.
          The error message says what to do.
        </p>
        {texts && <FunctionList texts={texts} folder={folder} insert={insert} />}
      </Fold>
      <Fold id="calendar" title="Deadlines for a tax year">
        <Deadlines />
      </Fold>
      <Fold id="tables" title="Rule tables">
        <p>
          The functions take their figures from these tables. For a date after the last one covered,
          they return <code>#N/A</code>, unless you enter an assumed interest rate. Check for
          disaster postponements announced later. An unverified entry was not read in a published
          text: check it against the official text.
        </p>
        <RuleTableList />
      </Fold>
      <p id="said" role="status">
        {notices.notice.text}
      </p>
    </div>
  );
}
