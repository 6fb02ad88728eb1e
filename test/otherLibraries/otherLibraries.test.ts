import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { recalculateFile } from "../../src/demo/workbook/workbook";
import { unpackedParts } from "../../src/demo/workbook/unpackedParts";
import { newFolder } from "../demo/workbookFixture";
import { fixtureHost } from "../host/fixtureAddIn";
import { changedParts, packageFaults } from "./packageFaults";
import { readWithOpenpyxl, runPython } from "./python";

const SHEET = /^xl\/worksheets\/sheet\d+\.xml$/;
/** The parts that change when results have number formats or fill several cells. */
const MAY_CHANGE = [
  "xl/styles.xml",
  "xl/metadata.xml",
  "xl/_rels/workbook.xml.rels",
  "[Content_Types].xml",
];

/** A cell that an older array formula fills, whose value is part of the result. */
const FILLED = "G2";

const folder = newFolder();
const made = runPython("makeWorkbooks.py", folder) as string[];

describe.each(made)("%s", (name) => {
  const path = join(folder, name);
  const written = join(folder, `written-${name}`);
  const { bytes, report } = recalculateFile(path, fixtureHost());
  writeFileSync(written, bytes);
  const before = unpackedParts(readFileSync(path));
  const after = unpackedParts(bytes);

  it("comes back with its answers, as openpyxl reads them", () => {
    const { error, values } = readWithOpenpyxl(written);
    expect(error).toBeNull();
    expect(report.notCalculated).toEqual([]);
    // The fixture add-in doubles 21.
    expect([values["Sheet"]?.["B1"], values["Sheet"]?.["C1"]]).toEqual([42, 43]);
  });

  it("comes back with every other cell as it was", () => {
    const first = readWithOpenpyxl(path).contents;
    const second = readWithOpenpyxl(written).contents;
    for (const [sheet, cells] of Object.entries(first)) {
      const others = Object.entries(cells).filter(([address]) => address !== FILLED);
      expect(second[sheet]).toMatchObject(Object.fromEntries(others));
    }
  });

  it("comes back with every other part byte for byte, and with no damage", () => {
    const changed = changedParts(before, after);
    const isAnswer = (part: string): boolean => SHEET.test(part) || MAY_CHANGE.includes(part);
    expect(changed.filter((part) => !isAnswer(part))).toEqual([]);
    expect(changed.filter((part) => SHEET.test(part))).toHaveLength(1);
    expect(packageFaults(after)).toEqual(packageFaults(before));
  });
});

it("results that fill several cells are written for other libraries", () => {
  const path = join(folder, "xlsxwriter-arrays.xlsx");
  const written = join(folder, "written-arrays.xlsx");
  writeFileSync(written, recalculateFile(path, fixtureHost()).bytes);
  const { values } = readWithOpenpyxl(written);
  const cells = ["E1", "E2", "G1", "G2"].map((cell) => values["Sheet"]?.[cell]);
  expect(cells).toEqual([42, 8, 42, 8]);
});
