import { readFileSync } from "node:fs";
import { say } from "./say";

interface Place {
  readonly line: number;
  readonly column: number;
}

/** A change of the code in the report of the mutation-testing library. */
interface Mutant {
  readonly mutatorName: string;
  readonly replacement?: string;
  readonly status: string;
  readonly location: { readonly start: Place; readonly end: Place };
}

interface Report {
  readonly files: Readonly<
    Record<string, { readonly source: string; readonly mutants: readonly Mutant[] }>
  >;
}

/** A change that no test notices, as `survivors.json` lists it. */
interface Survivor {
  readonly file: string;
  readonly was: string;
  readonly becomes: string;
  readonly reason: string;
}

const UNNOTICED = ["Survived", "NoCoverage"];

const readJson = (url: URL): unknown => JSON.parse(readFileSync(url, "utf8"));

/** The changed lines of the source before and after the change, each joined into one line. */
function written(source: string, { location: { start, end }, replacement = "" }: Mutant) {
  const lines = source.split("\n").slice(start.line - 1, end.line);
  const before = lines[0]?.slice(0, start.column - 1) ?? "";
  const after = lines.at(-1)?.slice(end.column - 1) ?? "";
  const oneLine = (text: string): string => text.replace(/\s+/g, " ").trim();
  return { was: oneLine(lines.join("\n")), becomes: oneLine(before + replacement + after) };
}

const report = readJson(new URL("../../dist/mutation.json", import.meta.url)) as Report;
const known = readJson(new URL("survivors.json", import.meta.url)) as readonly Survivor[];
const unused = new Set(known);
let tried = 0;
let unexplained = 0;
for (const [file, { source, mutants }] of Object.entries(report.files))
  for (const mutant of mutants) {
    if (mutant.status === "Ignored") continue;
    tried++;
    if (!UNNOTICED.includes(mutant.status)) continue;
    const { was, becomes } = written(source, mutant);
    const found = known.find(
      (each) => each.file === file && each.was === was && each.becomes === becomes
    );
    if (found) unused.delete(found);
    else {
      unexplained++;
      say(`${file}:${String(mutant.location.start.line)} (${mutant.status})`);
      say(`  ${was}\n  ${becomes}`);
    }
  }
for (const { file, was, becomes } of unused)
  if (file in report.files)
    say(`${file}: a test now notices this change, or the code is gone: ${was} → ${becomes}`);
say(
  `${String(tried)} changes tried, ${String(known.length - unused.size)} survive for a reason, ${String(unexplained)} without one.`
);
process.exitCode = unexplained > 0 ? 1 : 0;
