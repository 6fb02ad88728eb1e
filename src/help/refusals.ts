/** When a function answers with an error. */
export interface Refusal {
  readonly code: string;
  readonly when: string;
}

/**
 * The errors that a function's comment names.
 *
 * @param throws - Such as "`#VALUE!` for an argument that cannot be read; `#N/A` for a day without a rate."
 * @returns Each error with its case.
 */
export function refusalsOf(throws: string): readonly Refusal[] {
  return throws.split(/;\s+(?=`#)/).flatMap((one) => {
    const [, code, when] = /^`(#[^`]+)`\s+(.+?)\.?$/s.exec(one) ?? [];
    return code !== undefined && when !== undefined ? [{ code, when }] : [];
  });
}
