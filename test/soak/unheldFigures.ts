import type { ChangedRules } from "./changedRules";
import { type RuleFigure, withAllChanges } from "./ruleFigures";

async function notHeldBy(
  tests: readonly string[],
  rules: ChangedRules,
  name: string,
  figures: readonly RuleFigure[]
): Promise<readonly RuleFigure[]> {
  const unheld: RuleFigure[] = [];
  for (const figure of figures) {
    await rules.write(name, figure.changed);
    if (await rules.passes(tests)) unheld.push(figure);
  }
  return unheld;
}

/**
 * The figures of a table that no test holds: each may be changed a little, and every test passes. All that are left are changed at
 * once; a test that fails then is tried on each alone. When none fails, no test holds any of them.
 *
 * @param rules - The copy in which they are changed.
 * @param name - The file of the table.
 * @param figures - Its changes.
 * @returns Those that no test notices.
 */
export async function unheldFigures(
  rules: ChangedRules,
  name: string,
  figures: readonly RuleFigure[]
): Promise<readonly RuleFigure[]> {
  const content = rules.table(name);
  const alone: RuleFigure[] = [];
  let left = figures;
  while (left.length > 0) {
    await rules.write(name, withAllChanges(content, left));
    const failing = await rules.failing();
    if (failing.length === 0) break;
    const still = await notHeldBy(failing, rules, name, left);
    if (still.length < left.length) left = still;
    else {
      // together they fail what none fails alone: the first is tried by itself on everything
      const [first, ...rest] = left;
      if (!first) break;
      await rules.write(name, first.changed);
      if ((await rules.failing()).length === 0) alone.push(first);
      left = rest;
    }
  }
  await rules.write(name, content);
  return [...alone, ...left];
}
