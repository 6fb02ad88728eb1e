import { useMemo, useState } from "preact/hooks";
import { catalog, TASKS } from "../../functions/catalog";
import { FunctionEntry, type InsertFormula } from "./functionEntry";
import type { FunctionText } from "./functionText";
import { searchFunctions, type Found } from "./searchFunctions";

/** What {@link FunctionList} shows. */
interface FunctionListProps {
  readonly texts: ReadonlyMap<string, FunctionText>;
  /** The folder of the help, with a slash at the end; empty if it is beside the page. */
  readonly folder: string;
  readonly insert: InsertFormula;
}

/** What a search found, in words. */
export function foundText({ names, isNear }: Found, all: number): string {
  if (names.length === 0)
    return "No function found. Try a word such as penalty, mailing address or due date.";
  return isNear
    ? "No function has all of these words. The closest:"
    : `${names.length} of ${all} functions`;
}

/** The functions by task, or those that a search finds, the best match first. */
export function FunctionList({ texts, folder, insert }: FunctionListProps) {
  const [search, setSearch] = useState("");
  const find = useMemo(() => searchFunctions(texts), [texts]);
  const found = useMemo(() => find(search), [find, search]);
  const isBlank = search.trim() === "";
  const entries = (names: readonly string[]) =>
    names.map((name) => {
      const [text, definition] = [texts.get(name), catalog[name]];
      return (
        text &&
        definition && (
          <FunctionEntry
            key={name}
            text={text}
            definition={definition}
            folder={folder}
            insert={insert}
          />
        )
      );
    });
  return (
    <>
      <label for="search">Search by task, form or state</label>
      <input
        id="search"
        type="search"
        value={search}
        onInput={({ currentTarget }) => {
          setSearch(currentTarget.value);
        }}
      />
      <p role="status">{isBlank ? "" : foundText(found, texts.size)}</p>
      {isBlank
        ? TASKS.map(({ title, functions }) => (
            <section class="task">
              <h3>{title}</h3>
              {entries(Object.keys(functions))}
            </section>
          ))
        : entries(found.names)}
    </>
  );
}
