import type { PastPenalty, PenaltyKind } from "../../calculation/penalty/pastPenalty";
import type { TaxYear } from "../../calculation/taxYear";
import { shortDate } from "../../calendar/writtenDate";
import { cellValue, isBlankOrZero, shown } from "../cells/cellValue";
import { rowsOf } from "../cells/columns";
import { InputError } from "../cells/inputError";
import { readRows } from "../cells/readRows";
import { readArgument, type RangeKind } from "./argumentKind";
import { taxYear } from "./taxYear";
import { wordReader } from "./wordReader";

/** Other words for each kind of penalty, beside the words themselves. */
const KIND_WORDS: Readonly<Record<PenaltyKind, readonly string[]>> = {
  "unreversed penalty": [
    "penalty",
    "unreversed",
    "failure-to-file penalty",
    "failure-to-pay penalty",
  ],
  "estimated tax penalty": ["estimated tax"],
  "reversed penalty": ["reversed", "reasonable cause"],
  "clean-history relief": ["first-time abatement", "automatic exemption", "fta", "aep"],
};

const wordOfKind = wordReader({
  words: KIND_WORDS,
  what: "a kind of penalty",
  enter:
    "Enter penalty, estimated tax penalty, reversed or clean-history relief, or leave the cell blank.",
});

function kindOf(place: string, cell: unknown): PenaltyKind {
  const value = cellValue(cell);
  return isBlankOrZero(value) ? "unreversed penalty" : wordOfKind(value, place);
}

/** The rows of a range, each with its cells and its place for an error message. */
function placedRows(
  name: string,
  range: unknown
): readonly { readonly place: string; readonly cells: readonly unknown[] }[] {
  return rowsOf(range).map((cells, index) => ({
    place: `${name} row ${String(index + 1)}`,
    cells,
  }));
}

const isBlankRow = (cells: readonly unknown[]): boolean =>
  cells.every((cell) => isBlankOrZero(cellValue(cell)));

/** Years with a penalty as rows of tax year and, optionally, kind of penalty. A blank range is no penalty. */
export const penaltyYears: RangeKind<readonly PastPenalty[]> = {
  id: "penalty-years",
  title: "Years with a penalty",
  description:
    "A range of one column, the earlier tax years with a penalty, or of two columns, tax year and kind of penalty. The kind is `penalty`, also if blank, for a penalty that was not reversed in full; `estimated tax penalty`; `reversed` for a penalty that was reversed in full, such as for reasonable cause; or `clean-history relief` for one that was removed by first-time abatement or the automatic exemption. Every year must be before the tax year. Blank rows are ignored. A blank range means no penalty. For a joint return, enter the penalties of both spouses.",
  accepted: ["2023", '{2022,"reversed";2023,"estimated tax penalty"}', '{2023;"2024"}', '""'],
  notAccepted: ["2025", '{2023,"accuracy"}', '{2022,"penalty",100}'],
  takes: "range",
  whenBlank: { means: [] },
  read: (range, name, { taxYear: penalized }) => {
    const rows = placedRows(name, range);
    const wide = rows.find(({ cells }) => cells.length > 2);
    if (wide)
      throw new InputError(
        name,
        `The range has ${String(wide.cells.length)} columns. Select one column of tax years, or two, tax year and kind of penalty.`
      );
    const filled = rows.filter(({ cells }) => !isBlankRow(cells));
    return readRows(name, filled, ({ place, cells: [first, second] }): PastPenalty => {
      const year = readArgument(taxYear, place, first);
      if (penalized !== undefined && year.lastDay >= penalized.firstDay)
        throw new InputError(
          place,
          `${shown(cellValue(first))} is not before the tax year, which begins on ${shortDate(penalized.firstDay)}. Enter earlier years only.`
        );
      return { taxYear: year, kind: kindOf(place, second) };
    });
  },
};

/** Other years that are late: every cell of the range that is not blank. A blank range is none. */
export const lateYears: RangeKind<readonly TaxYear[]> = {
  id: "late-years",
  title: "Other late years",
  description:
    "One cell or a range of tax years, before or after the tax year, for which relief is wanted as well. Blank cells are ignored. A blank range means none.",
  accepted: ["2024", "{2023;2026}", '""'],
  notAccepted: ["2025", '"late"'],
  takes: "range",
  whenBlank: { means: [] },
  read: (range, name, { taxYear: penalized }) => {
    const cells = placedRows(name, range).flatMap(({ place, cells: row }) =>
      row.filter((cell) => !isBlankRow([cell])).map((cell) => ({ place, cell }))
    );
    const years = readRows(name, cells, ({ place, cell }) => {
      const year = readArgument(taxYear, place, cell);
      if (year.lastDay === penalized?.lastDay)
        throw new InputError(
          place,
          `${shown(cellValue(cell))} is the tax year itself. Enter other years only.`
        );
      return year;
    });
    return [...new Map(years.map((year) => [year.lastDay, year])).values()];
  },
};
