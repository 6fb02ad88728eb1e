/** How many random cases belong to each special case of the law. A run that has none of a kind has not tested it. */
export class Corners<Case> {
  private readonly reached: Map<string, number>;

  /** @param tests - Whether a case is of a kind, by the name of the kind. */
  constructor(private readonly tests: Readonly<Record<string, (one: Case) => boolean>>) {
    this.reached = new Map(Object.keys(tests).map((name) => [name, 0]));
  }

  /** Counts a case under each kind that it belongs to. */
  look(one: Case): void {
    for (const [name, test] of Object.entries(this.tests))
      if (test(one)) this.reached.set(name, (this.reached.get(name) ?? 0) + 1);
  }

  /** Kinds with fewer cases than this. */
  missed(least = 1): readonly string[] {
    return [...this.reached].filter(([, count]) => count < least).map(([name]) => name);
  }

  /** A line for each kind. */
  lines(): readonly string[] {
    return [...this.reached].map(([name, count]) => `${String(count).padStart(9)}  ${name}`);
  }
}
