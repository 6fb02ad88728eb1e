import { readFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { ChangedRules } from "./changedRules";
import { ruleFigures } from "./ruleFigures";
import { unheldFigures } from "./unheldFigures";

/** Figures that no test holds, by table and place, with the reason. */
type Known = Readonly<Record<string, Readonly<Record<string, string>>>>;

const known = JSON.parse(
  readFileSync(new URL("unheldFigures.json", import.meta.url), "utf8")
) as Known;
const { values: asked, positionals } = parseArgs({
  allowPositionals: true,
  options: { every: { type: "string", default: "1" } },
});
const every = Number(asked.every);
if (!Number.isInteger(every) || every < 1)
  throw new RangeError("--every: give a whole number of figures, such as 50 for each fiftieth");

function say(line: string): void {
  process.stdout.write(`${line}\n`);
}

const rules = await ChangedRules.begin();
let count = 0;
let faults = 0;
try {
  const names = rules.tables.filter(
    (name) => positionals.length === 0 || positionals.includes(name)
  );
  for (const name of names) {
    const figures = ruleFigures(rules.table(name)).filter(() => count++ % every === 0);
    const unheld = await unheldFigures(rules, name, figures);
    const reasons = known[name] ?? {};
    for (const { place, was, becomes } of unheld) {
      const reason = reasons[place];
      if (reason === undefined) faults++;
      say(`${name} ${place} ${String(was)} → ${String(becomes)}: ${reason ?? "NO TEST HOLDS IT"}`);
    }
    for (const { place } of figures)
      if (place in reasons && !unheld.some((figure) => figure.place === place)) {
        faults++;
        say(`${name} ${place}: a test holds it now, take it off the list`);
      }
    say(`${name}: ${String(figures.length)} changed, ${String(unheld.length)} not noticed`);
  }
} finally {
  await rules.end();
}
process.exitCode = faults > 0 ? 1 : 0;
