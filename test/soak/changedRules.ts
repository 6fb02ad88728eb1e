import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { format, resolveConfig } from "prettier";
import { createVitest, type Vitest } from "vitest/node";
import { copyProject, project } from "../projectCopy";

const COPIED = ["src", "rules", "test", "package.json", "tsconfig.json"];
/** The tests that a change of the rules is tried on, by their folders. */
export const TRIED = [
  "test/rules",
  "test/calendar",
  "test/calculation",
  "test/functions",
  "test/secondOpinion",
];
/** Tests of the built add-in, which would need a build for each change. */
const OF_THE_BUILD = /builtAddIn/;
const OF_RANDOM_CASES = /fast-check/;
const FIRST_FEW = 5;

async function tests(root: string, bail: number): Promise<Vitest> {
  const config = path.join(root, "test", "soak", "vitest.rules.ts");
  const quiet = { watch: false, maxWorkers: 1, globalSetup: [], reporters: [{}] };
  const find = /^fast-check$/;
  const replacement = path.join(root, "test", "soak", "withoutRandomCases.ts");
  const vitest = await createVitest(
    "test",
    { root, config, bail, ...quiet },
    { resolve: { alias: [{ find, replacement }] } }
  );
  await vitest.standalone();
  return vitest;
}

async function failingFiles(
  vitest: Vitest,
  folders: readonly string[],
  isRun: (file: string) => boolean
): Promise<readonly string[]> {
  const all = await vitest.globTestSpecifications(folders.map((part) => `${part}/`));
  // it keeps what earlier runs found, and would tell it again
  vitest.state.filesMap.clear();
  const { testModules, unhandledErrors } = await vitest.runTestSpecifications(
    all.filter(({ moduleId }) => isRun(moduleId))
  );
  if (testModules.length === 0)
    throw new RangeError(`No test was run: ${String(unhandledErrors[0])}`);
  return testModules.filter((file) => file.state() === "failed").map(({ moduleId }) => moduleId);
}

/** A copy of the project in a temporary folder, whose rules are changed and whose tests are run. */
export class ChangedRules {
  private constructor(
    private readonly folder: string,
    private readonly folders: readonly string[],
    private readonly whole: Vitest,
    private readonly untilOneFails: Vitest
  ) {}

  private leftOut: readonly string[] = [];

  /**
   * Copies the project, and leaves out the tests that fail for want of their random cases.
   *
   * @param folders - Those of the tests that may hold a figure.
   */
  static async begin(folders: readonly string[]): Promise<ChangedRules> {
    const folder = mkdtempSync(path.join(tmpdir(), "changed-rules-"));
    copyProject(COPIED, folder);
    const whole = await tests(folder, 0);
    const rules = new ChangedRules(folder, folders, whole, await tests(folder, 1));
    for (const name of rules.tables) await rules.write(name, rules.table(name));
    const failing = await rules.failing();
    const wrong = failing.filter((file) => !OF_RANDOM_CASES.test(readFileSync(file, "utf8")));
    if (wrong.length > 0)
      throw new Error(`Tests fail before anything is changed: ${wrong.join(", ")}`);
    rules.leftOut = failing;
    return rules;
  }

  /** The tables, by the names of their files. */
  get tables(): readonly string[] {
    return readdirSync(path.join(this.folder, "rules"))
      .filter((name) => name.endsWith(".json") && name !== "sources.json")
      .sort();
  }

  /** The content of a table as the project has it. */
  table(name: string): unknown {
    return JSON.parse(readFileSync(path.join(project, "rules", name), "utf8"));
  }

  /** Writes a table into the copy. */
  async write(name: string, content: unknown): Promise<void> {
    const file = path.join(this.folder, "rules", name);
    const style = await resolveConfig(file);
    writeFileSync(
      file,
      await format(JSON.stringify(content, null, 2), { ...style, filepath: file })
    );
    for (const vitest of [this.whole, this.untilOneFails]) vitest.invalidateFile(file);
  }

  /** Runs every test, and answers the files in which one fails. */
  failing(): Promise<readonly string[]> {
    return failingFiles(
      this.whole,
      this.folders,
      (file) => !this.leftOut.includes(file) && !OF_THE_BUILD.test(readFileSync(file, "utf8"))
    );
  }

  /** Runs the tests of some files until one fails, the first few by themselves before the others, and answers its file. */
  async firstFailing(files: readonly string[]): Promise<string | undefined> {
    for (const part of [files.slice(0, 1), files.slice(1, FIRST_FEW), files.slice(FIRST_FEW)]) {
      if (part.length === 0) continue;
      const isOfPart = (file: string): boolean => part.includes(file);
      const [failing] = await failingFiles(this.untilOneFails, this.folders, isOfPart);
      if (failing !== undefined) return failing;
    }
    return undefined;
  }

  /** Ends the runs and takes the copy away. */
  async end(): Promise<void> {
    await Promise.all([this.whole.close(), this.untilOneFails.close()]);
    rmSync(this.folder, { recursive: true, force: true });
  }
}
