import { functionTexts, type FunctionText, type Metadata } from "./functionText";

/** A formula of a function's documentation, and what its author says it answers. */
export interface Example {
  readonly formula: string;
  readonly says: string;
}

/** What the guide shows of the functions. */
export interface GuideContent {
  readonly texts: ReadonlyMap<string, FunctionText>;
  readonly examples: ReadonlyMap<string, readonly Example[]>;
}

/**
 * Reads what the guide shows from the files that lie beside the page.
 *
 * @param folder - Where they lie, with a closing slash; empty for beside the page.
 * @returns The functions' texts and examples.
 * @throws TypeError when a file cannot be read.
 */
export async function guideContent(folder: string): Promise<GuideContent> {
  const [metadata, examples] = await Promise.all([
    fetch(`${folder}functions.json`).then((answer) => answer.json() as Promise<unknown>),
    fetch(`${folder}help/examples.json`).then((answer) => answer.json() as Promise<unknown>),
  ]);
  return {
    texts: functionTexts(metadata as Metadata),
    examples: new Map(Object.entries(examples as Readonly<Record<string, readonly Example[]>>)),
  };
}
