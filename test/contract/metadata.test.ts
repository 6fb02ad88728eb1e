import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { metadata, runBundle } from "./builtAddIn";

const { functions } = metadata;
/** Ids in the comments of src/functions. */
function declaredIds(): string[] {
  const folder = new URL("../../src/functions/", import.meta.url);
  return readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts"))
    .map((file) => readFileSync(new URL(file, folder), "utf8"))
    .flatMap((text) => [...text.matchAll(/^ \* @customfunction (\w+)$/gm)])
    .map(([, id = ""]) => id);
}

const sentence = /^\S[^\n\r\t]*\S$/;

describe("the functions in functions.json", () => {
  const ids = functions.map(({ id }) => id).toSorted();

  it("are the functions that the built bundle associates", () => {
    expect([...runBundle().keys()].toSorted()).toEqual(ids);
  });

  // The metadata generator reports a repeated name only within one file.
  it("are the functions that the source declares, each with a name of its own", () => {
    expect(declaredIds().toSorted()).toEqual(ids);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it.each(functions)("have one word as id and name: $id", ({ id, name }) => {
    expect(name).toBe(id);
    expect(id).toMatch(/^[A-Z]{3,}$/);
  });

  it.each(functions)(
    "have a description of one line, and so has each argument: $id",
    (described) => {
      for (const { description } of [described, ...described.parameters]) {
        expect(description).toMatch(sentence);
        expect(description).toMatch(/[.)]$/);
      }
    }
  );

  it.each(functions)("take and return cells of any kind: $id", ({ parameters, result }) => {
    for (const { type } of parameters) expect(type).toBe("any");
    expect([{ dimensionality: "matrix" }, {}]).toContainEqual(result);
  });

  // A formula cannot leave out an optional argument that comes before a required one.
  it.each(functions)("take optional arguments last: $id", ({ parameters }) => {
    const optional = parameters.map((parameter) => parameter.optional === true);
    expect(optional).toEqual(optional.toSorted((one, other) => Number(one) - Number(other)));
    expect(new Set(parameters.map(({ name }) => name)).size).toBe(parameters.length);
  });

  it("accept error cells and formatted numbers", () => {
    expect(metadata.allowErrorForDataTypeAny).toBe(true);
    expect(metadata.allowCustomDataForDataTypeAny).toBe(true);
  });
});
