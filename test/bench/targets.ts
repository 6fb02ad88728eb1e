import { execFileSync } from "node:child_process";
import { readFileSync, statSync } from "node:fs";
import { fileURLToPath } from "node:url";
import vm from "node:vm";
import { associated } from "../customFunctionsRuntime";
import { calendarDate } from "../../src/calendar/calendarDate";
import { ratePeriods } from "../../src/calculation/penalty/ratePeriods";
import { rulebook } from "../../src/rules/rulebook";
import { runsInBrowser } from "../browser/browser";
import { say } from "../soak/say";
import { browserTimes } from "./browserTimes";
import { clientColumns, clientList, payments } from "./columns";
import { hasLibreOffice, libreOfficeSeconds } from "./libreOffice";

const ROWS = 10_000;
const TRIES = 7;
const DUE = 46_127; // 2026-04-15
const bundle = fileURLToPath(new URL("../../dist/functions.js", import.meta.url));

// The built functions are measured: the compiler of this script makes those of the source slower.
vm.runInThisContext(readFileSync(bundle, "utf8"));
const answer = (name: string, ...cells: readonly unknown[]): unknown =>
  associated.get(name)?.(...cells);

/** The least user time of a few tries, in milliseconds. */
function milliseconds(work: () => unknown): number {
  const times = Array.from({ length: TRIES }, () => {
    const begun = process.cpuUsage();
    work();
    return process.cpuUsage(begun).user / 1000;
  });
  return Math.min(...times);
}

/** The least user time in which a fresh process runs a script after the bundle, in milliseconds. */
function inFreshProcess(script: string): number {
  const code = `const { readFileSync } = require("node:fs");
    const functions = {};
    globalThis.CustomFunctions = { associate: (id, of) => { functions[id] = of; } };
    const text = readFileSync(${JSON.stringify(bundle)}, "utf8");
    const begun = process.cpuUsage();
    new Function(text)();
    ${script}
    console.log(process.cpuUsage(begun).user / 1000);`;
  const times = Array.from({ length: TRIES }, () =>
    Number(execFileSync(process.execPath, ["-e", code], { encoding: "utf8" }))
  );
  return Math.min(...times);
}

const history = (count: number): number =>
  milliseconds(() => answer("LEDGER", 2025, 40_000, payments(count), "2026-11-20", "yes", "CA"));

const columns = clientColumns(ROWS);
const { taxYear, totalTax, paidOnTime, paidOn, filedOn, validExtension, state } = columns;
const firstRows = JSON.stringify(Object.values(clientColumns(1_000)));
const list = clientList(5_000);
const perRow = (work: () => unknown): number => (milliseconds(work) / ROWS) * 1000;

/** Interest on a row as an ordinary formula: the growth of each rate period to the power of its days. */
function ordinaryFormulas(rows: number): readonly string[] {
  const periods = ratePeriods(calendarDate("2026-04-15"), calendarDate("2026-12-31"), {
    table: rulebook.underpaymentRate,
  });
  return Array.from({ length: rows }, (_, row) => {
    const paid = DUE + 1 + (row % 250);
    const growth = periods.map(
      ({ from, to, rate, divisor }) =>
        `(1+${rate.toString()}/${String(divisor)})^MAX(0;MIN(${String(to)};${String(paid)})-${String(from)})`
    );
    return `${String(1_000 + row * 3.11)}*(${growth.join("*")}-1)`;
  });
}

const ofTwoHundred = history(200);
type Measured = readonly [what: string, figure: number, target: number | undefined, unit: string];
const measured: readonly Measured[] = [
  [
    "CHARGES, a row of 10,000",
    perRow(() =>
      answer("CHARGES", taxYear, totalTax, paidOnTime, paidOn, filedOn, validExtension, state)
    ),
    25,
    "µs",
  ],
  [
    "INTEREST, a row of 10,000",
    perRow(() => answer("INTEREST", totalTax, [[DUE]], paidOn)),
    16,
    "µs",
  ],
  ["LEDGER, 200 payments", ofTwoHundred, 10, "ms"],
  ["LEDGER, 400 payments for 200", history(400) / ofTwoHundred, 2.5, "times"],
  [
    "ROSTER, 5,000 clients",
    milliseconds(() => answer("ROSTER", list, 2025, "2026-05-01", "latest")),
    350,
    "ms",
  ],
  ["functions.js, loading", inFreshProcess(""), 20, "ms"],
  [
    "functions.js and the first 1,000 rows of CHARGES",
    inFreshProcess(`functions.CHARGES(...${firstRows});`),
    250,
    "ms",
  ],
  ["functions.js, size", statSync(bundle).size / 1000, 468, "kB"],
];

function print(kind: string, figures: readonly Measured[]): void {
  say(`| figure (${kind}) | measured | target |`);
  say("| --- | --- | --- |");
  for (const [what, figure, target, unit] of figures)
    say(
      `| ${what} | ${figure.toFixed(1)} ${unit} | ${target === undefined ? "" : `${String(target)} ${unit}`} |`
    );
}

print("least user time", measured);
if (hasLibreOffice) {
  const seconds =
    libreOfficeSeconds(ordinaryFormulas(ROWS)) - libreOfficeSeconds(ordinaryFormulas(10));
  const micros = (seconds / ROWS) * 1e6;
  say(
    `| interest alone, an ordinary formula per row in LibreOffice | ${micros.toFixed(1)} µs a row | |`
  );
} else say("LibreOffice is not installed, so its time for an ordinary formula is left out.");
if (runsInBrowser) {
  const { opened, demoOpened, followed, charges: perCharge, loading } = await browserTimes();
  say("");
  print("median in Chromium", [
    [
      "the pane, from its page's request to the selected client, with Microsoft's script",
      opened,
      1_000,
      "ms",
    ],
    ["the demo sheet, from its page's request to its pane", demoOpened, undefined, "ms"],
    ["the pane, from another selected row to that client's four figures", followed, 100, "ms"],
    ["CHARGES, a row of 10,000, by the clock", perCharge, 18, "µs"],
    ["functions.js, loading, processor time", loading, 45, "ms"],
  ]);
} else
  say("No Chromium is installed, so its times are left out. Install it, or set CHROMIUM_PATH.");
