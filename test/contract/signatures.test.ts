import { describe, expect, it } from "vitest";
import { metadata } from "./builtAddIn";
import recorded from "./signatures.json";

/** Name, dimensionality and whether it is optional, for each argument. */
type Signature = readonly (readonly [name: string, dimensionality: string, optional: boolean])[];
type Signatures = Readonly<Record<string, Signature>>;

const current: Signatures = Object.fromEntries(
  metadata.functions.map(({ id, parameters }) => [
    id,
    parameters.map(
      ({ name, dimensionality = "scalar", optional = false }) =>
        [name, dimensionality, optional] as const
    ),
  ])
);

/**
 * Changes that would break workbooks with formulas of an earlier release. A host caches a signature, and a formula keeps the order of
 * its arguments. A function may be added, and an optional argument at the end. Nothing else may change.
 */
function breaks(before: Signatures, after: Signatures): string[] {
  return Object.entries(before).flatMap(([id, was]) => {
    const is = after[id];
    if (!is) return [`${id} is gone`];
    const changed = was.flatMap((argument, index) =>
      JSON.stringify(argument) === JSON.stringify(is[index])
        ? []
        : [`${id}: argument ${String(index + 1)} was ${argument[0]}`]
    );
    const added = is.slice(was.length).filter(([, , optional]) => !optional);
    return [...changed, ...added.map(([name]) => `${id}: ${name} is added and required`)];
  });
}

describe("the signatures", () => {
  const released = recorded as unknown as Signatures;

  it("accept every formula that the recorded signatures accept", () => {
    expect(breaks(released, current)).toEqual([]);
  });

  it("are all recorded in signatures.json", () => {
    expect(current).toEqual(released);
  });
});

describe("a signature", () => {
  const before: Signatures = {
    DUE: [
      ["taxYear", "matrix", false],
      ["state", "matrix", true],
    ],
  };
  const due = (...signature: Signature): Signatures => ({ DUE: signature });
  const [year, state] = before["DUE"] as [Signature[number], Signature[number]];

  it("may gain an optional argument at its end, and other functions may be added", () => {
    expect(breaks(before, due(year, state, ["filerType", "matrix", true]))).toEqual([]);
    expect(breaks(before, { ...before, DISASTERDATE: [["date", "matrix", false]] })).toEqual([]);
  });

  it.each([
    ["be gone", {}, "DUE is gone"],
    ["lose an argument", due(year), "DUE: argument 2 was state"],
    ["rename one", due(year, ["place", "matrix", true]), "DUE: argument 2 was state"],
    [
      "take one cell instead of a range",
      due(["taxYear", "scalar", false], state),
      "DUE: argument 1 was taxYear",
    ],
    [
      "require an optional argument",
      due(year, ["state", "matrix", false]),
      "DUE: argument 2 was state",
    ],
    [
      "gain a required argument",
      due(year, state, ["filerType", "matrix", false]),
      "DUE: filerType is added and required",
    ],
  ] as [string, Signatures, string][])("may not %s", (_what, after, complaint) => {
    expect(breaks(before, after)).toContain(complaint);
  });

  it("may not change its order", () => {
    expect(breaks(before, due(state, year))).toHaveLength(2);
  });
});
