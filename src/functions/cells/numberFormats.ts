/** How a number with a format goes back to the host. */
export type FormattedNumbers = "double" | "formatted number" | "plain";

interface RequirementSets {
  isSetSupported(name: string, minimumVersion: string): boolean;
}

let decided: FormattedNumbers | undefined;

/**
 * What the host takes, asked once, before the first answer: a number with a format of its own (ExcelApi 1.19), the older
 * formatted number (CustomFunctionsRuntime 1.4), or a plain number where there is neither, or no such host at all.
 *
 * @returns The kind for this session.
 */
export function formattedNumbers(): FormattedNumbers {
  if (decided !== undefined) return decided;
  const host = globalThis as { Office?: { context?: { requirements?: RequirementSets } } };
  const sets = host.Office?.context?.requirements;
  if (!sets) decided = "plain";
  else if (sets.isSetSupported("ExcelApi", "1.19")) decided = "double";
  else if (sets.isSetSupported("CustomFunctionsRuntime", "1.4")) decided = "formatted number";
  else decided = "plain";
  return decided;
}

/** What work returns if numbers go back as one kind, whatever the host takes. A page that shows the answers itself uses it. */
export function withFormattedNumbers<Result>(kind: FormattedNumbers, work: () => Result): Result {
  const before = decided;
  decided = kind;
  try {
    return work();
  } finally {
    decided = before;
  }
}
