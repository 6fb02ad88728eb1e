import { shown, cellValue } from "../cells/cellValue";
import { filledCells } from "../cells/columns";
import { InputError } from "../cells/inputError";
import { plainText, type RangeKind } from "./argumentKind";
import { nearName } from "./closestName";

/**
 * The answers of a list that the user wants, by their headings, in the order of the cells.
 *
 * @param headings - The headings that can be chosen.
 * @param usual - The headings if none is chosen.
 */
export function answerColumns<Heading extends string>(
  headings: readonly Heading[],
  usual: readonly Heading[]
): RangeKind<readonly Heading[]> {
  const known = new Map(headings.map((heading) => [plainText(heading), heading]));
  return {
    id: "answer-columns",
    title: "Answer columns",
    description: `One cell or a range with the headings of the answers you want, in their order: ${headings.join(", ")}. If it is left out, the answers are ${usual.join(", ")}.`,
    accepted: ['{"Client","Status","Next deadline"}', '"Balance due"'],
    notAccepted: ['"Refund"'],
    takes: "range",
    whenBlank: { means: usual },
    read: (range, name) => {
      const chosen = filledCells(name, range).map((cell) => {
        const text = String(cellValue(cell));
        const heading = known.get(plainText(text));
        if (heading !== undefined) return heading;
        const near = known.get(nearName(plainText(text), [...known.keys()]) ?? "");
        const closest =
          near === undefined
            ? `Enter a heading such as "${usual[0] ?? ""}".`
            : `The closest is "${near}".`;
        throw new InputError(name, `${shown(text)} is not an answer of this function. ${closest}`);
      });
      return chosen;
    },
  };
}
