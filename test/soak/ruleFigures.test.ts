import { describe, expect, it } from "vitest";
import { rulesFiles } from "../rules/rulesFiles";
import { ruleFigures, withChanges } from "./ruleFigures";

const changesOf = (content: unknown) =>
  ruleFigures(content).map(({ place, was, becomes }) => [place, was, becomes]);

describe("the figures of a rules file", () => {
  it("are each changed a little", () => {
    const file = {
      knownThrough: "2026-12-31",
      values: [
        { from: "2024-02-28", rate: "0.005", least: "525", most: "9", month: 12, isKept: true },
        {
          dueDay: "12-31",
          postponementEnds: "2024-02-28",
          share: "0.99",
          acts: ["return", "payment"],
        },
        { acts: ["payment"], name: "Arbor Day" },
      ],
    };
    expect(changesOf(file)).toEqual([
      ["knownThrough", "2026-12-31", "2026-12-30"],
      ["values[0].from", "2024-02-28", "2024-02-29"],
      ["values[0].rate", "0.005", "0.006"],
      ["values[0].least", "525", "526"],
      ["values[0].most", "9", "10"],
      ["values[0].month", 12, 11],
      ["values[0].isKept", true, false],
      ["values[1].dueDay", "12-31", "01-01"],
      ["values[1].postponementEnds", "2024-02-28", "2024-02-29"],
      ["values[1].share", "0.99", "1.00"],
      ["values[1].acts[0]", "return", "payment"],
      ["values[1].acts[1]", "payment", "return"],
      ["values[2].acts[0]", "payment", "return"],
      ["values[2].name", "Arbor Day", "Arbor Day x"],
    ]);
  });

  it("are found in lists and in objects by filing status", () => {
    const brackets = { single: [{ upTo: "10275", rate: "0.1" }, { rate: "0.37" }] };
    const threshold = { joint: "250000", others: "200000" };
    expect(changesOf({ values: [{ brackets, threshold, months: ["4", "6"] }] })).toEqual([
      ["values[0].brackets.single[0].upTo", "10275", "10276"],
      ["values[0].brackets.single[0].rate", "0.1", "0.2"],
      ["values[0].brackets.single[1].rate", "0.37", "0.38"],
      ["values[0].threshold.joint", "250000", "250001"],
      ["values[0].threshold.others", "200000", "200001"],
      ["values[0].months[0]", "4", "5"],
      ["values[0].months[1]", "6", "7"],
    ]);
  });

  it("are not what is said of them, nor a sentence for the reader, nor an end that is none", () => {
    const source = { document: "usc-26", at: "6651" };
    const note = "Check it";
    expect(
      changesOf({
        id: "a",
        knownThrough: "9999-12-31",
        title: "b",
        units: { rate: "c" },
        values: [{ source, note, text: note }],
      })
    ).toEqual([]);
  });

  it("are changed one at a time, or all at once, and the file itself stays", () => {
    const file = { values: [{ rate: "0.05" }, { rate: "0.06" }] };
    const figures = ruleFigures(file);
    expect(figures.map((figure) => withChanges(file, [figure]))).toEqual([
      { values: [{ rate: "0.06" }, { rate: "0.06" }] },
      { values: [{ rate: "0.05" }, { rate: "0.07" }] },
    ]);
    expect(withChanges(file, figures)).toEqual({ values: [{ rate: "0.06" }, { rate: "0.07" }] });
    expect(file).toEqual({ values: [{ rate: "0.05" }, { rate: "0.06" }] });
  });

  it.each(rulesFiles.filter(({ name }) => name !== "sources.json"))(
    "are found in $name",
    ({ content }) => {
      expect(ruleFigures(content).length).toBeGreaterThan(1);
    }
  );
});
