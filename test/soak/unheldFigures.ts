import type { ChangedRules } from "./changedRules";
import { type RuleFigure, withAllChanges } from "./ruleFigures";

/** A figure with the file of its table. */
export interface TableFigure extends RuleFigure {
  readonly table: string;
}

async function writeAll(rules: ChangedRules, figures: readonly TableFigure[]): Promise<void> {
  for (const table of new Set(figures.map((figure) => figure.table)))
    await rules.write(
      table,
      withAllChanges(
        rules.table(table),
        figures.filter((figure) => figure.table === table)
      )
    );
}

async function restore(rules: ChangedRules, figures: readonly TableFigure[]): Promise<void> {
  for (const table of new Set(figures.map((figure) => figure.table)))
    await rules.write(table, rules.table(table));
}

/** Those among some figures that none of some files of tests holds, each changed by itself. */
async function notHeldBy(
  tests: readonly string[],
  rules: ChangedRules,
  figures: readonly TableFigure[]
): Promise<readonly TableFigure[]> {
  const unheld: TableFigure[] = [];
  for (const figure of figures) {
    await rules.write(figure.table, figure.changed);
    if (await rules.passes(tests)) unheld.push(figure);
    await restore(rules, [figure]);
  }
  return unheld;
}

/**
 * The figures among some that the tests do not hold which fail when all of them are changed at once: most of those that no test holds.
 *
 * @param rules - The copy in which they are changed.
 * @param figures - Figures, best of one table.
 * @returns Those left, fewer unless none of the tests holds one by itself.
 */
export async function sifted(
  rules: ChangedRules,
  figures: readonly TableFigure[]
): Promise<readonly TableFigure[]> {
  await writeAll(rules, figures);
  const failing = await rules.failing();
  await restore(rules, figures);
  return failing.length === 0 ? figures : notHeldBy(failing, rules, figures);
}

/**
 * The figures among some that no test holds: each may be changed a little, and every test passes. All are changed at once and the
 * tests that fail are tried on each, until none fails: then no test holds any of those left.
 *
 * @param rules - The copy in which they are changed.
 * @param figures - What was left of them by `sifted`, of all tables.
 * @returns Those that no test notices.
 */
export async function unheldFigures(
  rules: ChangedRules,
  figures: readonly TableFigure[]
): Promise<readonly TableFigure[]> {
  const alone: TableFigure[] = [];
  let left = figures;
  while (left.length > 0) {
    await writeAll(rules, left);
    const failing = await rules.failing();
    await restore(rules, left);
    if (failing.length === 0) break;
    const still = await notHeldBy(failing, rules, left);
    if (still.length < left.length) left = still;
    else {
      // together they fail what none fails alone: the first is tried by itself on everything
      const [first, ...rest] = left;
      if (!first) break;
      await rules.write(first.table, first.changed);
      if ((await rules.failing()).length === 0) alone.push(first);
      await restore(rules, [first]);
      left = rest;
    }
  }
  return [...alone, ...left];
}
