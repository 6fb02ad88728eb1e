import { bench, describe } from "vitest";
import { due } from "../../src/functions/dueDate/returnDates";
import { charges } from "../../src/functions/penalty/charges";
import { interest } from "../../src/functions/penalty/interest";
import { roster } from "../../src/functions/season/roster";
import { clientColumns, clientList, singleRow } from "./columns";

const ROWS = 10_000;
const columns = clientColumns(ROWS);
const rows = Array.from({ length: ROWS }, (_, row) => singleRow(columns, row));
const { taxYear, totalTax, paidOnTime, paidOn, filedOn, validExtension, state } = columns;

describe(`${String(ROWS)} clients`, () => {
  bench("CHARGES, one call for the column", () => {
    charges(taxYear, totalTax, paidOnTime, paidOn, filedOn, validExtension, state);
  });
  bench("CHARGES, one call per client", () => {
    for (const row of rows) charges(...(row as Parameters<typeof charges>));
  });
  bench("DUE, one call for the column", () => {
    due(taxYear, state);
  });
});

describe(`INTEREST, ${String(ROWS)} rows, by length of the span`, () => {
  const from = "1996-01-15";
  const spans = {
    quarter: "1996-04-10",
    year: "1997-01-15",
    "five years": "2001-01-15",
    "thirty years": "2026-01-15",
  };
  for (const [length, to] of Object.entries(spans)) {
    bench(`a ${length}`, () => {
      interest(totalTax, [[from]], [[to]]);
    });
  }
});

const LIST = 5_000;
const list = clientList(LIST);

describe(`ROSTER, ${String(LIST)} clients`, () => {
  bench("the whole list in one formula", () => {
    roster(list, 2025, "2026-05-01", "latest");
  });
});
