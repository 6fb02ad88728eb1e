import { functionTexts, type FunctionText, type Metadata } from "./functionText";

/**
 * Reads the descriptions of the functions from functions.json.
 *
 * @param folder - Its folder, with a slash at the end; empty if it is beside the page.
 * @returns The descriptions by the name of the function.
 * @throws TypeError when the file cannot be read.
 */
export async function guideTexts(folder: string): Promise<ReadonlyMap<string, FunctionText>> {
  const answer = await fetch(`${folder}functions.json`);
  return functionTexts((await answer.json()) as Metadata);
}
