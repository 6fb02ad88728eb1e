import { describe, expect, it } from "vitest";
import { calendarTaxYear } from "../../../src/calculation/taxYear";
import { formulaCall } from "../../../src/addin/answers/formulaCall";
import { readArgument, type ArgumentKind } from "../../../src/functions/arguments/argumentKind";
import { catalog } from "../../../src/functions/catalog";
import { InputError } from "../../../src/functions/cells/inputError";

/** Every kind of an argument of the catalog, with the argument's name. */
const uses = Object.values(catalog).flatMap(({ arguments: list }) => Object.entries(list));
/** The kinds as the help shows them: each id once, at its first use. */
const kinds = [
  ...new Map(uses.toReversed().map(([name, kind]) => [kind.id, { name, kind }])).values(),
].map((use) => ({ id: use.kind.id, ...use }));

/** The value of an argument as it is written in a formula. */
const valueOf = (written: string): unknown => formulaCall(`=EXT.KIND(${written})`).values[0];

const read = (kind: ArgumentKind<unknown>, name: string, written: string): unknown =>
  readArgument(kind, name, valueOf(written), { taxYear: calendarTaxYear(2025) });

const values = (which: "accepted" | "notAccepted") =>
  kinds.flatMap(({ id, name, kind }) =>
    kind[which].map((written) => ({ id, name, kind, written }))
  );

describe("what the help says of a kind of argument", () => {
  it.each(values("accepted"))("$id accepts $written", ({ name, kind, written }) => {
    expect(() => read(kind, name, written)).not.toThrow();
  });

  it.each(values("notAccepted"))("$id does not accept $written", ({ name, kind, written }) => {
    expect(() => read(kind, name, written)).toThrow(InputError);
  });

  it.each(kinds)("is in sentences: $id", ({ kind: { title, description } }) => {
    expect(title).toMatch(/^[A-Z]/);
    expect(description).toMatch(/\.$/);
    expect(description.split("`").length % 2).toBe(1);
  });

  it.each(kinds)("is the same wherever the kind is used: $id", ({ id, kind }) => {
    const { title, description, accepted, notAccepted } = kind;
    for (const [, other] of uses.filter(([, { id: used }]) => used === id))
      expect(other).toMatchObject({ title, description, accepted, notAccepted });
  });
});
