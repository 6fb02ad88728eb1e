import { useMemo, useState } from "preact/hooks";
import type { CatalogFunction } from "../../functions/catalog";
import { AnswerView } from "../answers/answerView";
import type { FunctionText } from "./functionText";
import { liveAnswer } from "../answers/liveAnswer";

/** What the button beside an example does; `undefined` if no workbook is open. */
export type InsertFormula = ((formula: string) => void) | undefined;

/** What {@link FunctionEntry} shows. */
interface FunctionEntryProps {
  readonly text: FunctionText;
  readonly definition: CatalogFunction;
  /** The folder of the help, with a slash at the end; empty if it is beside the page. */
  readonly folder: string;
  readonly insert: InsertFormula;
}

/**
 * How a function is written in a cell, with optional arguments in square brackets.
 *
 * @example
 * formulaOf(due) //=> "=EXT.DUE(taxYear, [state], [filerType])"
 */
export function formulaOf({ name, parameters }: FunctionText): string {
  const names = parameters.map((one) => (one.optional ? `[${one.name}]` : one.name));
  return `=EXT.${name}(${names.join(", ")})`;
}

function ArgumentList({ name, parameters }: FunctionText) {
  if (parameters.length === 0) return null;
  return (
    <details>
      <summary>Arguments of {name}</summary>
      <dl>
        {parameters.map((one) => (
          <>
            <dt>
              <code>{one.name}</code>
              {one.optional ? " (optional)" : ""}
            </dt>
            <dd>{one.description}</dd>
          </>
        ))}
      </dl>
    </details>
  );
}

/** An answered example. The page is drawn again at every letter of a search, but the answer stays the same. */
function ExampleView({
  formula,
  insert,
}: {
  readonly formula: string;
  readonly insert: InsertFormula;
}) {
  const rows = useMemo(() => liveAnswer(formula), [formula]);
  return (
    <div class="example">
      <p>
        <code>{formula}</code>
      </p>
      <AnswerView rows={rows} caption={`Answer of ${formula}`} />
      {insert && (
        <fluent-button
          size="small"
          onClick={() => {
            insert(formula);
          }}
        >
          Insert in selected cell
        </fluent-button>
      )}
    </div>
  );
}

/** A function with its arguments and its answered examples, folded. */
export function FunctionEntry({ text, definition, folder, insert }: FunctionEntryProps) {
  // The examples are answered when the entry is first opened, so that the page appears at once.
  const [wasOpened, setWasOpened] = useState(false);
  return (
    <details
      id={text.name}
      class="function"
      onToggle={() => {
        setWasOpened(true);
      }}
    >
      <summary>
        <strong>{text.name}</strong> {text.description}
      </summary>
      {wasOpened && (
        <>
          <p>
            <code>{formulaOf(text)}</code>
          </p>
          <ArgumentList {...text} />
          {definition.examples.map(({ formula }) => (
            <ExampleView formula={formula} insert={insert} />
          ))}
          <p>
            <a href={`${folder}help/${text.name}.html`} target="_blank" rel="noopener">
              Help for this function
            </a>
          </p>
        </>
      )}
    </details>
  );
}
