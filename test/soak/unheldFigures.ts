import type { ChangedRules } from "./changedRules";
import { type RuleFigure, withChanges } from "./ruleFigures";

/** A figure with the file of its table. */
export interface TableFigure extends RuleFigure {
  readonly table: string;
}

/** Changes some figures for as long as tests are run, and puts them back. */
async function whileChanged<Found>(
  rules: ChangedRules,
  figures: readonly TableFigure[],
  run: () => Promise<Found>
): Promise<Found> {
  const tables = new Set(figures.map(({ table }) => table));
  for (const table of tables) {
    const ofTable = figures.filter((figure) => figure.table === table);
    await rules.write(table, withChanges(rules.table(table), ofTable));
  }
  const found = await run();
  for (const table of tables) await rules.write(table, rules.table(table));
  return found;
}

const failingWith = (
  rules: ChangedRules,
  figures: readonly TableFigure[]
): Promise<readonly string[]> => whileChanged(rules, figures, () => rules.failing());

/** Those among some figures that none of some files of tests holds, each changed by itself. */
async function notHeldBy(
  tests: readonly string[],
  rules: ChangedRules,
  figures: readonly TableFigure[]
): Promise<readonly TableFigure[]> {
  const unheld: TableFigure[] = [];
  // neighbours are mostly held by the same file, so the one that failed last is tried first
  let ordered = tests;
  for (const figure of figures) {
    const failing = await whileChanged(rules, [figure], () => rules.firstFailing(ordered));
    if (failing === undefined) unheld.push(figure);
    else ordered = [failing, ...ordered.filter((file) => file !== failing)];
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
  const failing = await failingWith(rules, figures);
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
    const failing = await failingWith(rules, left);
    if (failing.length === 0) break;
    const still = await notHeldBy(failing, rules, left);
    if (still.length < left.length) left = still;
    else {
      // together they fail what none fails alone: the first is tried by itself on everything
      const [first, ...rest] = left;
      if (!first) break;
      if ((await failingWith(rules, [first])).length === 0) alone.push(first);
      left = rest;
    }
  }
  return [...alone, ...left];
}
