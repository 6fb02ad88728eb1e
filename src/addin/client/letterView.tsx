import { useRef, useState } from "preact/hooks";
import { clientLetter, letterSheet, letterText, type ClientLetter } from "./clientLetter";
import type { ClientRow } from "../list/clientRow";
import { copyText } from "../copyText";
import { EntryField } from "../formFields";
import type { PaneSettings } from "../list/rosterAnswers";
import { NotDone, type WorkbookHost } from "../workbook/workbookHost";

/** What {@link LetterView} works on. */
interface LetterViewProps {
  readonly client: ClientRow;
  readonly name: string;
  readonly settings: PaneSettings;
  readonly workbook: WorkbookHost;
  readonly run: (work: () => Promise<string>) => void;
}

/** What the list has in a column "Still needed". */
function stillNeededOf({ list, index }: ClientRow): string {
  const column = list.headings.findIndex(
    (heading) => typeof heading === "string" && /^still needed$/i.test(heading.trim())
  );
  const cell = list.rows[index]?.[column];
  return typeof cell === "string" ? cell : "";
}

function letterOr(work: () => ClientLetter): ClientLetter | string {
  try {
    return work();
  } catch (thrown) {
    if (thrown instanceof NotDone) return thrown.message;
    throw thrown;
  }
}

/** The letter to the client: its version by the record, paragraphs, copy, and a sheet that prints on one page. */
export function LetterView({ client, name, settings, workbook, run }: LetterViewProps) {
  const [greeting, setGreeting] = useState("");
  const [needed, setNeeded] = useState(() => stillNeededOf(client));
  const text = useRef<HTMLTextAreaElement>(null);
  const letter = letterOr(() => clientLetter(client, settings, needed));
  if (typeof letter === "string") return <p class="panel error">{letter}</p>;
  const copy = async (): Promise<string> => {
    if (await copyText(letterText(greeting, letter))) return `Copied the letter to ${name}.`;
    text.current?.select();
    return "The pane is not allowed to copy. The letter is selected, so press Ctrl+C or Cmd+C.";
  };
  const addSheet = async (): Promise<string> => {
    const sheet = letterSheet(name, settings.asOf, greeting, letter);
    return `Added the sheet ${await workbook.addSheet(sheet)}.`;
  };
  return (
    <section class="panel" aria-label="Letter">
      <p>
        <strong>Letter:</strong> {letter.version}. Read it before you send it.
      </p>
      <div class="fields">
        <EntryField
          id="greeting"
          label="Name in the greeting"
          value={greeting}
          enter={setGreeting}
        />
        <EntryField
          id="still-needed"
          label="Still needed from the client"
          value={needed}
          enter={setNeeded}
        />
      </div>
      <label for="letter-text">Text</label>
      <textarea
        id="letter-text"
        class="letter"
        ref={text}
        readOnly
        rows={16}
        value={letterText(greeting, letter)}
      />
      {letter.leftOut !== "" && <p>{letter.leftOut}</p>}
      <div class="buttons">
        <fluent-button
          onClick={() => {
            run(copy);
          }}
        >
          Copy the letter
        </fluent-button>
        <fluent-button
          onClick={() => {
            run(addSheet);
          }}
        >
          Put it into a sheet
        </fluent-button>
      </div>
    </section>
  );
}
