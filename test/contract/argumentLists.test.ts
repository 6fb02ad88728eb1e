import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { formulaCall } from "../../src/addin/answers/formulaCall";
import { clientDates } from "../../src/calculation/dueDate/clientDates";
import { calendarTaxYear } from "../../src/calculation/taxYear";
import { readArgument, type ArgumentKind } from "../../src/functions/arguments/argumentKind";
import type * as ClientModule from "../../src/functions/arguments/client";
import { catalog, TASKS } from "../../src/functions/catalog";
import type * as CatalogModule from "../../src/functions/catalog";
import { InputError } from "../../src/functions/cells/inputError";
import type * as RulebookModule from "../../src/rules/rulebook";
import { inCell } from "../functions/sheet";
import { metadata } from "./builtAddIn";

const { functions } = metadata;
const taxYear = calendarTaxYear(2025);

/** Values that the kinds with a rule about the tax year read as far as that rule. */
const PROBES = ["4/15/2026", [["4/15/2026"]], [["4/15/2026", 1]]];

function readsTaxYear(kind: ArgumentKind<unknown>): boolean {
  const year = vi.fn(() => taxYear);
  for (const probe of PROBES)
    try {
      readArgument(kind, "probe", probe, Object.defineProperty({}, "taxYear", { get: year }));
    } catch (thrown) {
      if (!(thrown instanceof InputError)) throw thrown;
    }
  return year.mock.calls.length > 0;
}

describe("the list of arguments", () => {
  it("is in the catalog for every function in functions.json, each in one task", () => {
    const ids = functions.map(({ id }) => id).toSorted();
    expect(Object.keys(catalog).toSorted()).toEqual(ids);
    expect(TASKS.flatMap((task) => Object.keys(task.functions)).toSorted()).toEqual(ids);
  });

  it.each(functions)("has the names of the signature in its order: $id", ({ id, parameters }) => {
    expect(Object.keys(catalog[id]?.arguments ?? {})).toEqual(parameters.map(({ name }) => name));
  });

  it.each(functions)("has ranges where the host passes them: $id", ({ id, parameters, result }) => {
    const { form, arguments: list = {} } = catalog[id] ?? {};
    const takesRange = Object.values(list).map((kind) => form === "row" || kind.takes === "range");
    expect(takesRange).toEqual(parameters.map(({ dimensionality }) => dimensionality === "matrix"));
    expect(result.dimensionality === "matrix").toBe(form !== "cell");
  });

  it.each(functions)("reads a blank where the argument is optional: $id", ({ id, parameters }) => {
    for (const { name, optional = false } of parameters) {
      const kind = catalog[id]?.arguments[name];
      if (optional && kind) expect(() => readArgument(kind, name, null, { taxYear })).not.toThrow();
    }
  });

  // A client list has a tax year in every row, which is read before the other columns.
  it.each(Object.entries(catalog))(
    "has the tax year before a kind with a rule about it: %s",
    (_id, { arguments: list }) => {
      const names = Object.keys(list);
      const first = Object.values(list).findIndex(readsTaxYear);
      if (first >= 0) expect(names.slice(0, first)).toContain("taxYear");
    }
  );
});

describe("the rule tables of a function", () => {
  const read = new Set<string>();
  let recorded: typeof CatalogModule.catalog;

  // The functions are loaded anew with rules that record which tables are read, and with dates that are not kept between calls.
  beforeAll(async () => {
    vi.resetModules();
    vi.doMock("../../src/rules/rulebook", async (original) => {
      const { rulebook, ...others } = await original<typeof RulebookModule>();
      const get = (tables: typeof rulebook, name: string | symbol): unknown => {
        read.add(String(name));
        return Reflect.get(tables, name);
      };
      return { ...others, rulebook: new Proxy(rulebook, { get }) };
    });
    vi.doMock("../../src/functions/arguments/client", async (original) => {
      const client = await original<typeof ClientModule>();
      const { rulebook } = await import("../../src/rules/rulebook");
      const datesOf: typeof client.datesOf = (given) =>
        clientDates(given.taxYear, given.filerType, client.circumstancesOf(given), rulebook);
      return { ...client, datesOf };
    });
    ({ catalog: recorded } = await import("../../src/functions/catalog"));
    // The list of all tables is made once, when it is first asked for.
    const { ruleTables } = await import("../../src/rules/ruleTables");
    ruleTables();
  });
  afterAll(() => {
    vi.doUnmock("../../src/rules/rulebook");
    vi.doUnmock("../../src/functions/arguments/client");
    vi.resetModules();
  });

  it.each(Object.keys(catalog))("are all that its examples read: %s", (id) => {
    const { examples = [], tables = [], answer } = recorded[id] ?? {};
    read.clear();
    for (const { formula } of examples)
      inCell((...cells: unknown[]) => answer?.(cells), ...formulaCall(formula).values);
    expect([...read].filter((table) => !tables.includes(table as (typeof tables)[number]))).toEqual(
      []
    );
  });

  it("are recorded: the dates of a client come from the four tables of dates", () => {
    read.clear();
    recorded["DUE"]?.answer([[[2025]]]);
    recorded["EXTENDED"]?.answer([[[2025]]]);
    expect([...read].toSorted()).toEqual([
      "extensionOfTime",
      "legalHolidays",
      "nationwidePostponements",
      "returnDueDate",
    ]);
  });
});
