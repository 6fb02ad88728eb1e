/** A fictional client list of the given length, as the columns that a preparer would give to CHARGES. */
export function clientColumns(rows: number) {
  const column = (cell: (row: number) => unknown): unknown[][] =>
    Array.from({ length: rows }, (_, row) => [cell(row)]);
  const dueSerial = 46127; // 2026-04-15
  return {
    taxYear: column(() => 2025),
    totalTax: column((row) => 4_000 + row * 1.37),
    paidOnTime: column((row) => 2_500 + row * 0.91),
    paidOn: column((row) => dueSerial + (row % 250)),
    filedOn: column((row) => dueSerial + ((row * 7) % 250)),
    validExtension: column((row) => (row % 2 === 0 ? "yes" : "no")),
    state: column((row) => ["ME", "CA", "NY", "TX"][row % 4]),
  };
}

/** One row of the columns, each cell as a range of its own, as the host passes it. */
export function singleRow(
  columns: Readonly<Record<string, unknown[][]>>,
  row: number
): unknown[][][] {
  return Object.values(columns).map((cells) => [cells[row] ?? []]);
}

/** The same clients as a list with headings, as ROSTER takes it. */
export function clientList(rows: number): unknown[][] {
  const { taxYear, totalTax, paidOnTime, state, filedOn } = clientColumns(rows);
  const header = [
    "Client",
    "Tax year",
    "Total tax",
    "Payments",
    "State",
    "Planned filing date",
    "Requested on",
  ];
  const columns = [taxYear, totalTax, paidOnTime, state, filedOn];
  const client = (row: number): unknown[] => [
    `client ${String(row)}`,
    ...columns.map((column) => column[row]?.[0]),
    "",
  ];
  return [header, ...Array.from({ length: rows }, (_, row) => client(row))];
}

/** Payments of fictional amounts over the same 200 days, however many; some tax of 40,000 remains unpaid after the last one. */
export const payments = (count: number): unknown[][] =>
  Array.from({ length: count }, (_, row) => [
    46_107 + Math.floor((row * 200) / count),
    90 + (row % 7),
  ]);
