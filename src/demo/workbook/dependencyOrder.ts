/** The order in which formulas can be calculated, and the circular references among them. */
export interface DependencyOrder {
  /** Every formula, each after those it depends on. */
  readonly order: readonly number[];
  /** Formulas that depend on themselves, grouped by circular reference. */
  readonly circles: readonly (readonly number[])[];
}

interface Visit {
  readonly node: number;
  readonly rest: Iterator<number>;
}

/**
 * Orders formulas by dependency and finds every circular reference: strongly connected components by Tarjan's method, without
 * recursion, because a chain of formulas may be many thousands long.
 */
export function dependencyOrder(
  count: number,
  restsOn: (formula: number) => Iterable<number>
): DependencyOrder {
  const index = new Array<number>(count).fill(-1);
  const lowest = new Array<number>(count).fill(-1);
  const isOpen = new Array<boolean>(count).fill(false);
  const isOwnCause = new Array<boolean>(count).fill(false);
  const open: number[] = [];
  const order: number[] = [];
  const circles: number[][] = [];
  let next = 0;

  function enter(node: number): Visit {
    index[node] = next;
    lowest[node] = next;
    next += 1;
    open.push(node);
    isOpen[node] = true;
    return { node, rest: restsOn(node)[Symbol.iterator]() };
  }

  function lower(node: number, value: number): void {
    lowest[node] = Math.min(lowest[node] ?? value, value);
  }

  function close(root: number): void {
    const component: number[] = [];
    let node: number | undefined;
    do {
      node = open.pop();
      if (node === undefined) break;
      isOpen[node] = false;
      component.push(node);
    } while (node !== root);
    component.reverse();
    order.push(...component);
    if (component.length > 1 || isOwnCause[root] === true) circles.push(component);
  }

  for (let start = 0; start < count; start += 1) {
    if (index[start] !== -1) continue;
    const path: Visit[] = [enter(start)];
    for (let visit = path.at(-1); visit !== undefined; visit = path.at(-1)) {
      const step = visit.rest.next();
      if (step.done !== true) {
        const target = step.value;
        if (target === visit.node) isOwnCause[target] = true;
        if (index[target] === -1) path.push(enter(target));
        else if (isOpen[target] === true) lower(visit.node, index[target] ?? 0);
        continue;
      }
      path.pop();
      const above = path.at(-1);
      if (above !== undefined) lower(above.node, lowest[visit.node] ?? 0);
      if (lowest[visit.node] === index[visit.node]) close(visit.node);
    }
  }
  return { order, circles };
}

/**
 * Carries a mark from formulas to those that depend on them. A spill can make a formula depend on one later in the order, so this repeats
 * until nothing is marked.
 */
export function spreadMarks(
  order: readonly number[],
  restsOn: (formula: number) => Iterable<number>,
  isMarked: (formula: number) => boolean,
  mark: (formula: number, cause: number) => void
): void {
  for (let isChanged = order.some(isMarked); isChanged;) {
    isChanged = false;
    for (const formula of order) {
      if (isMarked(formula)) continue;
      for (const cause of restsOn(formula)) {
        if (!isMarked(cause)) continue;
        mark(formula, cause);
        isChanged = true;
        break;
      }
    }
  }
}
