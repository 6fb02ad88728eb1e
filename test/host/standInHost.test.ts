import { describe, expect, it } from "vitest";
import { OMITTED } from "../../src/host/cellValues";
import { sealedHost } from "../../src/host/sealedHost";
import { type StandInHost } from "../../src/host/standInHost";
import { FIXTURE_BUNDLE, fixtureHost, fixtureMetadata } from "../demo/fixtureAddIn";

function arrived(host: StandInHost, ...given: Parameters<StandInHost["call"]>[1]): unknown {
  const text = host.call("ECHO", given)[0]?.[0]?.value;
  return JSON.parse(String(text));
}

describe("loading the add-in", () => {
  it("gives the bundle nothing but what a page has", () => {
    const [[cell] = []] = fixtureHost().call("SURROUNDINGS", []);
    expect(cell).toEqual({ value: "undefined undefined object sealed" });
  });

  it("remembers what the bundle writes to its console", () => {
    expect(fixtureHost().remarks).toEqual(["log: loaded"]);
  });

  it("refuses metadata that lists a function the bundle does not associate", () => {
    const metadata = fixtureMetadata().replaceAll('"DAY"', '"NIGHT"');
    expect(() => sealedHost({ bundle: FIXTURE_BUNDLE, metadata })).toThrow(/NIGHT/);
  });

  it("refuses functions it could not drive as the platform does", () => {
    const metadata = fixtureMetadata().replace(
      '"id":"DAY"',
      '"options":{"stream":true},"id":"DAY"'
    );
    expect(() => sealedHost({ bundle: FIXTURE_BUNDLE, metadata })).toThrow(/stream/);
  });
});

describe("arguments", () => {
  it("arrive as null when left out in the middle or at the end", () => {
    expect(arrived(fixtureHost(), 1, OMITTED, "x")).toEqual([[[1]], null, [["x"]]]);
    expect(arrived(fixtureHost(), 1)).toEqual([[[1]], null, null]);
  });

  it("arrive as rows even when a single cell is given", () => {
    expect(arrived(fixtureHost(), true, "text")).toEqual([[[true]], [["text"]], null]);
  });

  it("arrive row by row from a range", () => {
    const rows = [
      [1, "a"],
      [2, "b"],
    ];
    expect(arrived(fixtureHost(), rows)).toEqual([rows, null, null]);
  });

  it.each([
    ["zero", 0],
    ["null", null],
    ["empty text", ""],
  ] as const)("arrive blank in the habit %s", (habit, blank) => {
    const host = fixtureHost(habit);
    expect(arrived(host, [[null, 7]], null)).toEqual([[[blank, 7]], [[blank]], null]);
  });

  it("carry errors as objects when the metadata allows it", () => {
    const given = arrived(fixtureHost(), [[{ error: "#N/A" }]]);
    const error = {
      type: "Error",
      basicType: "Error",
      basicValue: "#N/A",
      errorType: "NotAvailable",
    };
    expect(given).toEqual([[[error]], null, null]);
  });

  it("answer for the function when they hold an error and the metadata does not allow it", () => {
    const host = fixtureHost("null", false);
    expect(host.call("ECHO", [[[1, { error: "#DIV/0!" }]]])).toEqual([[{ error: "#DIV/0!" }]]);
  });

  it("are counted before the function is called", () => {
    expect(fixtureHost().call("ADD", [])).toEqual([
      [
        {
          error: "#VALUE!",
          message: "EXT.ADD takes 1 to 2 arguments; the formula gives 0.",
        },
      ],
    ]);
    expect(fixtureHost().call("DAY", [1, 2])[0]?.[0]?.message).toContain("takes 1 arguments");
  });

  it("are converted where the metadata declares a number", () => {
    const host = fixtureHost();
    expect(host.call("ADD", ["2", null])).toEqual([[{ value: 2 }]]);
    expect(host.call("ADD", [2])).toEqual([[{ value: 102 }]]);
    expect(host.call("ADD", ["two"])).toEqual([[{ error: "#VALUE!" }]]);
  });

  it("make one call a cell where a range meets a single value", () => {
    const answer = fixtureHost().call("ADD", [[[1], [2]], [[10, 20]]]);
    expect(answer).toEqual([
      [{ value: 11 }, { value: 21 }],
      [{ value: 12 }, { value: 22 }],
    ]);
  });

  it("gather in one list for a repeating parameter", () => {
    expect(fixtureHost().call("COUNT", [1, [[2]], 3])).toEqual([[{ value: 3 }]]);
  });
});

describe("answers", () => {
  it("keep the number format of a formatted number", () => {
    const day = { value: 46001, numberFormat: "yyyy-mm-dd" };
    expect(fixtureHost().call("DAY", [46000])).toEqual([[day]]);
  });

  it("carry an error beside good rows", () => {
    const message = 'amount is "x"; give a number.';
    expect(fixtureHost().call("DOUBLE", [[[1], ["x"]]])).toEqual([
      [{ value: 2 }],
      [{ error: "#VALUE!", message }],
    ]);
  });

  it("show the sentence of a refusal, but only with the two errors that can carry one", () => {
    const message = "No figure is held for that day.";
    expect(fixtureHost().call("REFUSE", [])).toEqual([[{ error: "#N/A", message }]]);
    expect(fixtureHost().call("DIVIDE", [])).toEqual([[{ error: "#DIV/0!" }]]);
  });

  it.each([
    ["BREAK", [{ error: "#VALUE!" }], "an exception"],
    ["ENDLESS", [{ error: "#NUM!" }, { error: "#NUM!" }], "Infinity"],
    ["NOTHING", [{ value: 0 }, { value: "" }], "null"],
    ["RAGGED", [{ error: "#VALUE!" }], "rectangle"],
  ])("record a fault when %s answers as no function should", (name, row, fault) => {
    const host = fixtureHost();
    expect(host.call(name, [])).toEqual([row]);
    expect(host.faults[0]).toMatchObject({ functionName: name });
    expect(host.faults[0]?.fault).toContain(fault);
  });

  it("record no fault for answers and refusals in good order", () => {
    const host = fixtureHost();
    host.call("REFUSE", []);
    host.call("DOUBLE", [[["x"], ["y"]]]);
    expect(host.faults).toEqual([]);
  });

  it("are #NAME? for a function the metadata does not list", () => {
    expect(fixtureHost().call("UNHEARD", [])).toEqual([[{ error: "#NAME?" }]]);
  });
});
