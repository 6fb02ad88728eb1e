import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { functionGuide } from "../../src/addin/functionGuide";

const built = new URL("../../dist/functions.json", import.meta.url);
const metadata = JSON.parse(readFileSync(built, "utf8")) as {
  readonly functions: readonly { readonly id: string }[];
};

describe("the function guide", () => {
  it("names exactly the functions the add-in gives the host", () => {
    const given = metadata.functions.map(({ id }) => id);
    expect(functionGuide.map(({ name }) => name).toSorted()).toEqual(given.toSorted());
  });

  it("keeps the functions of a task together", () => {
    const tasks = functionGuide.map(({ task }) => task);
    const changes = tasks.filter((task, index) => task !== tasks[index - 1]);
    expect(changes).toEqual([...new Set(tasks)]);
  });
});
