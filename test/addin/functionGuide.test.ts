import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { functionGuide } from "../../src/addin/functionGuide";

interface Metadata {
  readonly functions: readonly {
    readonly id: string;
    readonly parameters: readonly { readonly name: string; readonly optional?: boolean }[];
  }[];
}

const built = new URL("../../dist/functions.json", import.meta.url);
const metadata = JSON.parse(readFileSync(built, "utf8")) as Metadata;

const byName = (one: readonly [string, ...unknown[]], other: readonly [string, ...unknown[]]) =>
  one[0].localeCompare(other[0]);

describe("the function guide", () => {
  it("names exactly the functions the add-in gives the host, with the same arguments in the same order", () => {
    const given = metadata.functions.map(
      ({ id, parameters }) =>
        [id, parameters.map(({ name, optional }) => (optional ? `[${name}]` : name))] as const
    );
    const explained = functionGuide.map(
      (entry) =>
        [
          entry.name,
          entry.arguments.map(({ name, optional }) => (optional ? `[${name}]` : name)),
        ] as const
    );
    expect(explained.toSorted(byName)).toEqual(given.toSorted(byName));
  });

  it("keeps the functions of a task together", () => {
    const tasks = functionGuide.map(({ task }) => task);
    const changes = tasks.filter((task, index) => task !== tasks[index - 1]);
    expect(changes).toEqual([...new Set(tasks)]);
  });

  it.each(functionGuide)("explains $name and each of its arguments in a sentence", (entry) => {
    for (const text of [entry.purpose, ...entry.arguments.map(({ meaning }) => meaning)]) {
      expect(text).toMatch(/^\S.+\.$/);
    }
  });
});
