import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { hostOfBuiltAddIn } from "../../../src/host/builtAddIn";
import type { BlankHabit } from "../../../src/host/argumentMarshalling";
import type { AnswerCell } from "../../../src/host/cellValues";
import { metadata } from "../../contract/builtAddIn";
import { openBrowser } from "../browser";
import {
  cellsOf,
  column,
  CONTRACT_CALLS,
  EXAMPLES,
  NOT_ACCEPTED,
  sentCall,
  withEachArgument,
  type Call,
  type ErrorShape,
} from "./functionCalls";
import { ERRORS_CALL, openInExcel, RICH_CALL, type InExcel } from "./inExcel";

const MANY = 5_000;

let browser: Browser;
let excel: InExcel;
beforeAll(async () => {
  browser = await openBrowser();
  excel = await openInExcel(browser);
});
afterAll(async () => {
  await browser.close();
});

/** The answers that come back through Microsoft's script, by what was called. */
async function answers(
  calls: readonly Call[],
  blankHabit: BlankHabit = "null",
  shape: ErrorShape = "rich"
): Promise<Record<string, AnswerCell[][]>> {
  const sent = calls.map((call) => sentCall(call, blankHabit, shape));
  const results = await excel.call(sent, shape === "rich" ? RICH_CALL : ERRORS_CALL);
  return Object.fromEntries(
    calls.map(({ about }, index) => [about, cellsOf(results[index] as never)])
  );
}

/** The answers of the stand-in host, by what was called. */
function standInAnswers(
  calls: readonly Call[],
  blankHabit: BlankHabit = "null"
): Record<string, AnswerCell[][]> {
  const host = hostOfBuiltAddIn(blankHabit);
  return Object.fromEntries(calls.map(({ id, given, about }) => [about, host.call(id, given)]));
}

const errorsIn = (all: Readonly<Record<string, AnswerCell[][]>>): AnswerCell[] =>
  Object.values(all)
    .flat(2)
    .filter(({ error }) => error !== undefined);

describe("the functions in Microsoft's script excel-web-16.00.js", () => {
  it("are all associated, once each", async () => {
    const known = await excel.addin.evaluate(() => {
      const { _association } = CustomFunctions as unknown as {
        _association: { mappings: Record<string, unknown> };
      };
      return Object.keys(_association.mappings);
    });
    expect(known.toSorted()).toEqual(metadata.functions.map(({ id }) => id).toSorted());
  });

  it("return errors of Microsoft's own class", async () => {
    const isOfMicrosoft = await excel.addin.evaluate(() => {
      const { Error: HostError, ErrorCode } = CustomFunctions;
      return "toJSON" in new HostError(ErrorCode.invalidValue, "A sentence.");
    });
    expect(isOfMicrosoft).toBe(true);
  });

  it("answer every example as the stand-in host does, without an error", async () => {
    const all = await answers(EXAMPLES);
    expect(all).toEqual(standInAnswers(EXAMPLES));
    expect(errorsIn(all)).toEqual([]);
  });

  it("answer the calls of the other tests as the stand-in host does", async () => {
    expect(await answers(CONTRACT_CALLS)).toEqual(standInAnswers(CONTRACT_CALLS));
  });

  it("say why a value is not accepted, for every value of every argument", async () => {
    const all = await answers(NOT_ACCEPTED);
    expect(NOT_ACCEPTED.length).toBeGreaterThan(metadata.functions.length);
    expect(all).toEqual(standInAnswers(NOT_ACCEPTED));
    const withoutSentence = errorsIn(all).filter(
      ({ message = "" }) => !/^[^ ].* .*\.$/.test(message)
    );
    expect(withoutSentence).toEqual([]);
  });

  it.each(["rich", "older"] as const)("pass on an error cell of the %s shape", async (shape) => {
    const calls = withEachArgument({ error: "#DIV/0!" });
    const all = await answers(calls, "null", shape);
    expect(all).toEqual(standInAnswers(calls));
    const isPassedOn = (rows: AnswerCell[][]): boolean =>
      rows.flat().some(({ error }) => error !== undefined);
    expect(Object.keys(all).filter((about) => !isPassedOn(all[about] ?? []))).toEqual([]);
  });

  it.each(["null", "empty text", "zero"] as const)(
    "answer a blank cell that arrives as %s as the stand-in host does",
    async (blankHabit) => {
      const calls = withEachArgument(null);
      expect(await answers(calls, blankHabit)).toEqual(standInAnswers(calls, blankHabit));
    }
  );

  it("answer an unknown name with an error", async () => {
    const [result] = await excel.call([["NOSUCHFUNCTION", []]]);
    expect(result?.[1]).toBe(false);
  });

  it("answer a column of 5,000 cells in one call", async () => {
    const years = column(Array.from({ length: MANY }, (_one, row) => 2010 + (row % 17)));
    const calls: Call[] = [
      { id: "DUE", given: [years], about: "DUE" },
      { id: "EXTENDED", given: [years], about: "EXTENDED" },
    ];
    const all = await answers(calls);
    expect(all["DUE"]).toHaveLength(MANY);
    expect(all).toEqual(standInAnswers(calls));
  });

  it("answer 5,000 calls in one message", async () => {
    const calls = Array.from({ length: MANY }, (_one, index): Call => {
      const example = EXAMPLES[index % EXAMPLES.length] as Call;
      return { ...example, about: `${String(index)} ${example.about}` };
    });
    expect(await answers(calls)).toEqual(standInAnswers(calls));
  });

  it("cause no error in the page and ask for nothing that its policy blocks", () => {
    expect(excel.seen.errors).toEqual([]);
    expect(excel.seen.refused).toEqual([]);
  });
});

describe("the kinds of Excel", () => {
  it.each([
    ["Excel|Web|16.00", "excel-web-16.00.js"],
    ["Excel|Win32|16.01", "excel-win32-16.01.js"],
    ["Excel|Mac|16.00", "excel-mac-16.00.js"],
  ])("%s loads its own script, and every function is associated", async (host, script) => {
    const other = await openInExcel(browser, { host });
    await expect.poll(() => other.seen.asked.map((one) => one.split("/").at(-1))).toContain(script);
    await expect
      .poll(() => other.addin.evaluate(() => typeof CustomFunctions.Error))
      .toBe("function");
    const known = await other.addin.evaluate(() => {
      const { _association } = CustomFunctions as unknown as {
        _association: { mappings: Record<string, unknown> };
      };
      return Object.keys(_association.mappings).length;
    });
    expect(known).toBe(metadata.functions.length);
    expect(other.seen.refused).toEqual([]);
    await other.close();
  });

  it.each([
    [{ ExcelApi: "1.20", CustomFunctionsRuntime: "1.5" }, "Double"],
    [{ ExcelApi: "1.16", CustomFunctionsRuntime: "1.4" }, "FormattedNumber"],
    [{ ExcelApi: "1.12", CustomFunctionsRuntime: "1.3" }, undefined],
  ])("with %j gets numbers of the type %s", async (sets, type) => {
    const other = await openInExcel(browser, { sets: { CustomFunctions: "1.12", ...sets } });
    const [result] = await other.call([["SHORTFALL", [[[18250]], [[15000]]]]]);
    const [[number] = []] = result?.[2] as unknown[][];
    expect((number as { type?: string }).type).toBe(type);
    expect(
      typeof number === "number" ? number : (number as { basicValue: number }).basicValue
    ).toBe(3250);
    await other.close();
  });
});
