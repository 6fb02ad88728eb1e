import "../customFunctionsRuntime";
import { due } from "../../src/functions/dueDate/returnDates";
import { incomeTax } from "../../src/functions/liability/incomeTaxes";
import { charges } from "../../src/functions/penalty/charges";
import { interest } from "../../src/functions/penalty/interest";
import { shortfall } from "../../src/functions/request/balanceDue";
import { roster } from "../../src/functions/season/roster";
import { bytesHeld } from "../functions/bytesHeld";
import { clientColumns, clientList } from "../bench/columns";
import { say } from "./say";

const ROWS = [1_000, 5_000, 10_000, 50_000];
const TRIES = 3;
/** How many times longer a row may take among the most rows than among 5,000, on an idle machine. */
const MOST_GROWTH = 2;
const MEGABYTE = 2 ** 20;

/** The measured calls, each for a list of clients. */
function callsOver(rows: number): Readonly<Record<string, () => unknown>> {
  const { taxYear, totalTax, paidOnTime, paidOn, filedOn, validExtension, state } =
    clientColumns(rows);
  const from = taxYear.map(() => ["2025-04-15"]);
  const status = taxYear.map(() => ["single"]);
  const list = clientList(rows);
  return {
    DUE: () => due(taxYear, state),
    SHORTFALL: () => shortfall(totalTax, paidOnTime),
    INTEREST: () => interest(totalTax, from, paidOn),
    INCOMETAX: () => incomeTax(taxYear, status, totalTax),
    CHARGES: () => charges(taxYear, totalTax, paidOnTime, paidOn, filedOn, validExtension, state),
    ROSTER: () => roster(list, 2025, "2026-05-01", "latest"),
  };
}

/** The shortest of a few tries, in milliseconds, and the memory of the result and of caches, in bytes. */
function measured(call: () => unknown): { readonly time: number; readonly held: number } {
  const times: number[] = [];
  const before = bytesHeld();
  let answer: unknown;
  for (let count = 0; count < TRIES; count++) {
    const begun = performance.now();
    answer = call();
    times.push(performance.now() - begun);
  }
  const held = bytesHeld() - before;
  if (answer === undefined) throw new RangeError("The call returned nothing.");
  return { time: Math.min(...times), held };
}

for (const call of Object.values(callsOver(ROWS[0] ?? 0))) measured(call);
const perRow = new Map<string, number[]>();
const cells = new Map<string, string[]>();
for (const rows of ROWS)
  for (const [name, call] of Object.entries(callsOver(rows))) {
    const { time, held } = measured(call);
    const micros = (time / rows) * 1000;
    perRow.set(name, [...(perRow.get(name) ?? []), micros]);
    const cell = `${time.toFixed(0)} ms, ${micros.toFixed(1)} µs a row, ${(held / MEGABYTE).toFixed(1)} MB`;
    cells.set(name, [...(cells.get(name) ?? []), cell]);
  }

say(`| function | ${ROWS.map((rows) => `${rows.toLocaleString("en-US")} rows`).join(" | ")} |`);
say(`| --- |${" --- |".repeat(ROWS.length)}`);
for (const [name, line] of cells) say(`| \`${name}\` | ${line.join(" | ")} |`);
say(`Most memory of the process: ${(process.resourceUsage().maxRSS / 1024).toFixed(0)} MB.`);

for (const [name, micros] of perRow) {
  const growth = (micros.at(-1) ?? 0) / (micros[1] ?? 1);
  if (growth > MOST_GROWTH) {
    say(`${name}: a row takes ${growth.toFixed(1)} times as long among the most rows.`);
    process.exitCode = 1;
  }
}
