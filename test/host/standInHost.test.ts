import { describe, expect, it } from "vitest";
import { OMITTED } from "../../src/host/cellValues";
import { sealedHost } from "../../src/host/sealedHost";
import { type StandInHost } from "../../src/host/standInHost";
import { FIXTURE_BUNDLE, fixtureHost, fixtureMetadata } from "./fixtureAddIn";

function arrived(host: StandInHost, ...given: Parameters<StandInHost["call"]>[1]): unknown {
  const text = host.call("ECHO", given)[0]?.[0]?.value;
  return JSON.parse(String(text));
}

describe("loading the add-in", () => {
  it("lets the bundle reach only what a page has", () => {
    const [[cell] = []] = fixtureHost().call("SURROUNDINGS", []);
    expect(cell).toEqual({ value: "undefined undefined object sealed" });
  });

  it("records what the bundle writes to its console", () => {
    expect(fixtureHost().remarks).toEqual(["log: loaded"]);
  });

  it("rejects metadata that lists a function the bundle does not associate", () => {
    const metadata = fixtureMetadata().replaceAll('"DAY"', '"NIGHT"');
    expect(() => sealedHost({ bundle: FIXTURE_BUNDLE, metadata })).toThrow(/NIGHT/);
  });

  it("rejects functions that it cannot call as Excel does", () => {
    const metadata = fixtureMetadata().replace(
      '"id":"DAY"',
      '"options":{"stream":true},"id":"DAY"'
    );
    expect(() => sealedHost({ bundle: FIXTURE_BUNDLE, metadata })).toThrow(/stream/);
  });
});

describe("arguments", () => {
  it("arrive as null when omitted in the middle or at the end", () => {
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
  ] as const)("arrive as %s when blank in a build of that kind", (habit, blank) => {
    const host = fixtureHost(habit);
    expect(arrived(host, [[null, 7]], null)).toEqual([[[blank, 7]], [[blank]], null]);
  });

  it("pass errors as objects when the metadata allows it", () => {
    const given = arrived(fixtureHost(), [[{ error: "#N/A" }]]);
    const error = {
      type: "Error",
      basicType: "Error",
      basicValue: "#N/A",
      errorType: "NotAvailable",
    };
    expect(given).toEqual([[[error]], null, null]);
  });

  it("decide the answer when one is an error and the metadata does not allow it", () => {
    const host = fixtureHost("null", false);
    expect(host.call("ECHO", [[[1, { error: "#DIV/0!" }]]])).toEqual([[{ error: "#DIV/0!" }]]);
  });

  it("are counted before the function is called", () => {
    expect(fixtureHost().call("ADD", [])).toEqual([
      [
        {
          error: "#VALUE!",
          message: "EXT.ADD takes 1 to 2 arguments. The formula has 0.",
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

  it("make one call per cell where a range is given for a single value", () => {
    const answer = fixtureHost().call("ADD", [[[1], [2]], [[10, 20]]]);
    expect(answer).toEqual([
      [{ value: 11 }, { value: 21 }],
      [{ value: 12 }, { value: 22 }],
    ]);
  });

  it("form one list for a repeating parameter", () => {
    expect(fixtureHost().call("COUNT", [1, [[2]], 3])).toEqual([[{ value: 3 }]]);
  });
});

describe("answers", () => {
  it("keep the number format of a formatted number", () => {
    const day = { value: 46001, numberFormat: "yyyy-mm-dd" };
    expect(fixtureHost().call("DAY", [46000])).toEqual([[day]]);
  });

  it("show an error beside valid rows", () => {
    const message = 'amount: "x" is not a number. Enter a number such as 4.';
    expect(fixtureHost().call("DOUBLE", [[[1], ["x"]]])).toEqual([
      [{ value: 2 }],
      [{ error: "#VALUE!", message }],
    ]);
  });

  it("show the message of an error only for the two errors that can have one", () => {
    const message = "The table has no figure for that date.";
    expect(fixtureHost().call("REFUSE", [])).toEqual([[{ error: "#N/A", message }]]);
    expect(fixtureHost().call("DIVIDE", [])).toEqual([[{ error: "#DIV/0!" }]]);
  });

  it.each([
    ["BREAK", [{ error: "#VALUE!" }], "an exception"],
    ["ENDLESS", [{ error: "#NUM!" }, { error: "#NUM!" }], "Infinity"],
    ["NOTHING", [{ value: 0 }, { value: "" }], "null"],
    ["RAGGED", [{ error: "#VALUE!" }], "rectangle"],
  ])("record a fault when %s returns what no function may return", (name, row, fault) => {
    const host = fixtureHost();
    expect(host.call(name, [])).toEqual([row]);
    expect(host.faults[0]).toMatchObject({ functionName: name });
    expect(host.faults[0]?.fault).toContain(fault);
  });

  it("record no fault for valid answers and errors", () => {
    const host = fixtureHost();
    host.call("REFUSE", []);
    host.call("DOUBLE", [[["x"], ["y"]]]);
    expect(host.faults).toEqual([]);
  });

  it("are #NAME? for a function the metadata does not list", () => {
    expect(fixtureHost().call("UNHEARD", [])).toEqual([[{ error: "#NAME?" }]]);
  });
});
