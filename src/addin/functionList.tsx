import { useState } from "preact/hooks";
import { TASKS } from "../functions/catalog";
import { FunctionEntry, type InsertFormula } from "./functionEntry";
import type { FunctionText } from "./functionText";
import { searchFunctions } from "./searchFunctions";

/** What {@link FunctionList} shows. */
interface FunctionListProps {
  readonly texts: ReadonlyMap<string, FunctionText>;
  /** The folder of the help, with a slash at the end; empty if it is beside the page. */
  readonly folder: string;
  readonly insert: InsertFormula;
}

/** The functions by task, with a search box that hides those not found. */
export function FunctionList({ texts, folder, insert }: FunctionListProps) {
  const [search, setSearch] = useState("");
  const found = searchFunctions(texts, search);
  return (
    <>
      <label for="search">Search functions</label>
      <input
        id="search"
        type="search"
        value={search}
        onInput={({ currentTarget }) => {
          setSearch(currentTarget.value);
        }}
      />
      <p role="status">{search.trim() === "" ? "" : `${found.size} of ${texts.size} functions`}</p>
      {TASKS.map(({ title, functions }) => (
        <section class="task" hidden={!Object.keys(functions).some((name) => found.has(name))}>
          <h3>{title}</h3>
          {Object.entries(functions).map(([name, definition]) => {
            const text = texts.get(name);
            return (
              text && (
                <FunctionEntry
                  key={name}
                  text={text}
                  definition={definition}
                  folder={folder}
                  insert={insert}
                  hidden={!found.has(name)}
                />
              )
            );
          })}
        </section>
      ))}
    </>
  );
}
