import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { declaredFunctions } from "../functions/worksheetFunctions";
import { metadata, runBundle } from "./builtAddIn";

const { functions } = metadata;
const sentence = /^\S[^\n\r\t]*\S$/;

describe("the functions the host is told of", () => {
  const ids = functions.map(({ id }) => id).toSorted();

  it("are those the built bundle associates, each once", () => {
    expect([...runBundle().keys()].toSorted()).toEqual(ids);
  });

  // The metadata generator finds a name given twice only within one file.
  it("are those the sources declare, no name given twice", () => {
    expect(declaredFunctions.map(({ id }) => id).toSorted()).toEqual(ids);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it("come from files that are all in webpack's list", () => {
    const text = readFileSync(new URL("../../webpack.config.js", import.meta.url), "utf8");
    const listed = /const wrapperFiles = \[([^\]]*)\]/.exec(text)?.[1]?.match(/\w+/g) ?? [];
    const families = new Set(declaredFunctions.map(({ family }) => family));
    expect(listed.toSorted()).toEqual([...families].toSorted());
  });

  it.each(functions)("go by one word, id and name alike: $id", ({ id, name }) => {
    expect(name).toBe(id);
    expect(id).toMatch(/^[A-Z]{3,}$/);
  });

  it.each(functions)("are described in a line, and so is each argument: $id", (told) => {
    for (const { description } of [told, ...told.parameters]) {
      expect(description).toMatch(sentence);
      expect(description).toMatch(/[.)]$/);
    }
  });

  it.each(functions)("take and give cells of any kind: $id", ({ parameters, result }) => {
    for (const { type } of parameters) expect(type).toBe("any");
    expect([{ dimensionality: "matrix" }, {}]).toContainEqual(result);
  });

  // An optional argument before a required one cannot be left out in a formula.
  it.each(functions)("take what may be left out last: $id", ({ parameters }) => {
    const optional = parameters.map((parameter) => parameter.optional === true);
    expect(optional).toEqual(optional.toSorted((one, other) => Number(one) - Number(other)));
    expect(new Set(parameters.map(({ name }) => name)).size).toBe(parameters.length);
  });

  it("may be given error cells and formatted numbers", () => {
    expect(metadata.allowErrorForDataTypeAny).toBe(true);
    expect(metadata.allowCustomDataForDataTypeAny).toBe(true);
  });
});
