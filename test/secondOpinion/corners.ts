/** How often random cases reached each corner of the law: a run that misses one has not looked there. */
export class Corners<Case> {
  private readonly reached: Map<string, number>;

  /** @param tests - Whether a case reaches a corner, by the corner's name. */
  constructor(private readonly tests: Readonly<Record<string, (one: Case) => boolean>>) {
    this.reached = new Map(Object.keys(tests).map((name) => [name, 0]));
  }

  /** Counts the corners that a case reaches. */
  look(one: Case): void {
    for (const [name, test] of Object.entries(this.tests))
      if (test(one)) this.reached.set(name, (this.reached.get(name) ?? 0) + 1);
  }

  /** Corners that fewer cases than these reached. */
  missed(least = 1): readonly string[] {
    return [...this.reached].filter(([, count]) => count < least).map(([name]) => name);
  }

  /** A line for each corner. */
  lines(): readonly string[] {
    return [...this.reached].map(([name, count]) => `${String(count).padStart(9)}  ${name}`);
  }
}
