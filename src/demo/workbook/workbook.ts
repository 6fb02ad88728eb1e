import type { Workbook } from "@cj-tech-master/excelts";
import { cellAddress, readAddress } from "../../host/cellAddress";
import { fileFormulas } from "./fileFormulas";
import { type Recalculation, recalculate } from "./recalculation";
import type { RecalculationReport, UncalculatedFormula } from "./recalculationReport";
import type { StandInHost } from "../../host/standInHost";
import { writeBack } from "./writeBack";

/** A recalculated workbook as a file. */
export interface RecalculatedWorkbook {
  readonly bytes: Uint8Array;
  readonly report: RecalculationReport;
}

function missedFormulas(file: Uint8Array, recalculation: Recalculation): UncalculatedFormula[] {
  const { loaded } = recalculation;
  const seen = new Set(
    [...loaded.formulas, ...loaded.unreachable].map(
      ({ sheet, row, column }) => `${sheet}!${cellAddress(row, column)}`
    )
  );
  return [...fileFormulas(file)].flatMap(([sheet, cells]) =>
    cells.flatMap((address) => {
      const place = readAddress(address);
      if (place === undefined || seen.has(`${sheet}!${address}`)) return [];
      const reason = "the workbook library did not read it from the file";
      return [{ sheet, row: place.top, column: place.left, text: "", reason }];
    })
  );
}

/** Calculates every formula of a workbook and returns the file to write. */
export async function recalculateWorkbook(
  workbook: Workbook,
  host: StandInHost,
  file?: Uint8Array
): Promise<RecalculatedWorkbook> {
  const recalculation = recalculate(workbook, host);
  const missed = file === undefined ? [] : missedFormulas(file, recalculation);
  writeBack(workbook, recalculation);
  const written = await workbook.xlsx.writeBuffer();
  const { report } = recalculation;
  return {
    bytes: new Uint8Array(written as unknown as ArrayBufferLike),
    report: {
      ...report,
      formulas: report.formulas + missed.length,
      notCalculated: [...report.notCalculated, ...missed],
    },
  };
}
