/**
 * A value calculated when it is first asked for. A call that throws is made again, with the same error.
 *
 * @param work - A function whose result never changes.
 * @returns The same function, calculated at most once.
 *
 * @example
 * const tableOf = once(() => readTable(file));
 */
export function once<Value>(work: () => Value): () => Value {
  let known: { readonly value: Value } | undefined;
  return () => (known ??= { value: work() }).value;
}
