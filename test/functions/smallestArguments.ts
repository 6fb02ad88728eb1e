type Arguments = readonly unknown[];

function rowsOf(argument: unknown): readonly unknown[] | undefined {
  try {
    return Array.isArray(argument) ? [...(argument as readonly unknown[])] : undefined;
  } catch {
    return undefined;
  }
}

/** The arguments with only one row of each column, row by row: columns that go together stay of one length. */
function rowByRow(given: Arguments): Arguments[] {
  const columns = given.map(rowsOf);
  const length = Math.max(0, ...columns.map((rows) => rows?.length ?? 0));
  if (length < 2) return [];
  return Array.from({ length }, (_row, index) =>
    given.map((argument, place) => {
      const rows = columns[place];
      return rows && rows.length > 1 ? rows.slice(index, index + 1) : argument;
    })
  );
}

/** What an argument may be made smaller to: nothing, fewer rows, one cell. */
function smaller(argument: unknown): unknown[] {
  const rows = rowsOf(argument);
  if (!rows) return argument === null ? [] : [null];
  const fewer = rows.length > 1 ? rows.map((_row, left) => rows.toSpliced(left, 1)) : [];
  const cells = rows.length === 1 ? (rowsOf(rows[0]) ?? []) : [];
  return [null, ...fewer, ...(cells.length > 1 ? cells.map((cell) => [[cell]]) : [])];
}

/**
 * The smallest list of arguments that still fails: a single row of a column where that is enough, then one argument after another
 * left out, else made of fewer rows and cells.
 *
 * @param given - Arguments that fail.
 * @param fails - Whether some arguments fail.
 * @returns Arguments that fail and of which none can be left out.
 */
export function smallestArguments(
  given: Arguments,
  fails: (tried: Arguments) => boolean
): Arguments {
  let smallest = rowByRow(given).find(fails) ?? given;
  for (let index = 0; index < smallest.length;) {
    const found = smaller(smallest[index])
      .map((tried) => smallest.with(index, tried))
      .find(fails);
    if (found) smallest = found;
    else index += 1;
  }
  return smallest;
}
