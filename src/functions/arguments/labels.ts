import { shown } from "../cells/cellValue";
import { InputError } from "../cells/inputError";
import { closestName } from "./closestName";

/** A label as it is compared: lower case, with a space for everything but letters and digits. */
function plainLabel(label: string): string {
  return label
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, " ")
    .trim();
}

/**
 * A reader of the labels that a preparer can enter, in any case and with any spacing or punctuation.
 *
 * @param labels - The labels of each name. Error messages use the first one.
 * @returns A function of the place and the text of a label that returns its name, and throws an InputError with the closest label
 * where none is recognized.
 */
export function labelReader<Name extends string>(
  labels: Readonly<Record<Name, readonly string[]>>
): (place: string, text: string) => Name {
  const names = new Map<string, { readonly name: Name; readonly first: string }>();
  for (const [name, all] of Object.entries<readonly string[]>(labels))
    for (const label of all)
      names.set(plainLabel(label), { name: name as Name, first: all[0] ?? name });
  const known = [...names.keys()];
  return (place, text) => {
    const label = plainLabel(text);
    const found = names.get(label);
    if (found) return found.name;
    const nearest = names.get(closestName(label, known));
    throw new InputError(
      place,
      `${shown(text)} is not a recognized label. The closest label is "${nearest?.first ?? ""}".`
    );
  };
}
